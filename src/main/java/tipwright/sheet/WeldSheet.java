// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Pose;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.drive.Assist;
import tipwright.design.drive.LineSpring;
import tipwright.design.joint.PinJoint;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.UnitSystem;

/** The weld sheet: places, distances to check by tape, holes, stops, and the side view with its dimensions. */
public final class WeldSheet {
    /** Springs whose ends have a row each. */
    private static final int SPRINGS = 3;

    private static final double MARGIN = 14;
    private static final double LINE = 4.5;
    private static final int FEW = 3;

    private final Design design;
    private final Design rounded;
    private final Marking drawn;
    private final Marking marking;
    private final Analysis analysis;
    private final UnitSystem units;
    private final Paper paper;
    private final Drawing.Board board = new Drawing.Board();
    private double y;

    private WeldSheet(Design design, UnitSystem units, Paper paper) throws CannotComputeException {
        this.design = design;
        this.units = units;
        this.paper = paper;
        rounded = design.withPivot(
                        design.pivot().movedTo(Lengths.rounded(design.pivot().at(), units)))
                .withDrive(design.drive().moved(p -> Lengths.rounded(p, units)));
        drawn = Marking.of(design);
        marking = Marking.of(rounded);
        analysis = Analyser.analyse(rounded);
    }

    /** The design with its pins on the nearest marks of a tape. */
    public static Design rounded(Design design, UnitSystem units) throws CannotComputeException {
        return new WeldSheet(design, units, Paper.A4).rounded;
    }

    /**
     * All pages: the sheet, the side view where it finds no room on it, then the template.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled
     */
    public static List<Drawing> pages(Design design, UnitSystem units, Paper paper) throws CannotComputeException {
        List<Drawing> pages = new ArrayList<>();
        WeldSheet sheet = new WeldSheet(design, units, paper);
        pages.add(sheet.first());
        if (!sheet.few()) {
            pages.add(sheet.view());
        }
        pages.addAll(Template.tiles(sheet.rounded, units, paper));
        return pages;
    }

    private Drawing first() throws CannotComputeException {
        double w = paper.width();
        y = paper.height() - MARGIN - 5;
        board.text(new Vec2(MARGIN, y), 6, -1, design.name() + ": weld sheet", Ink.TEXT);
        y -= 7;
        line("All places from the datum with the tank stowed: x towards the dump side, y up. Rounded to the nearest "
                + (units == UnitSystem.METRIC ? "1 mm." : "1/16 in."));
        if (few()) {
            Drawing view = SideView.of(analysis, units, w - 2 * MARGIN, paper.height() - 155 - LINE * springRows());
            Vec2 corner = new Vec2(w / 2 - view.width() / 2, y - view.height() + 4);
            board.add(view, corner.minus(view.low()));
            y -= view.height() + 2;
        }
        places();
        distances();
        holes();
        stops();
        effect();
        return board.on(design.name() + ": weld sheet", Vec2.ZERO, new Vec2(w, paper.height()));
    }

    /** Whether the drawing finds room above the lists. */
    private boolean few() {
        return marking.spots().size() <= FEW;
    }

    /** The drawing on a page of its own. */
    private Drawing view() {
        double w = paper.width();
        double h = paper.height();
        Drawing.Board page = new Drawing.Board();
        String title = design.name() + ": side view";
        page.text(new Vec2(MARGIN, h - MARGIN - 5), 6, -1, title, Ink.TEXT);
        Drawing view = SideView.of(analysis, units, w - 2 * MARGIN, h - 2 * MARGIN - 12);
        page.add(view, new Vec2(w / 2 - view.width() / 2, h - MARGIN - 10 - view.height()).minus(view.low()));
        return page.on(title, Vec2.ZERO, new Vec2(w, h));
    }

    private void heading(String text) {
        y -= 2.5;
        board.text(new Vec2(MARGIN, y), 4, -1, text, Ink.TEXT);
        board.line(
                new Vec2(MARGIN, y - 1.3), new Vec2(paper.width() - MARGIN, y - 1.3), Pen.line("rules", Ink.GREY, 0.2));
        y -= 5.6;
    }

    private void line(String text) {
        board.text(new Vec2(MARGIN, y), 3.1, -1, text, Ink.TEXT);
        y -= LINE;
    }

    private void row(double[] stops, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            board.text(new Vec2(MARGIN + stops[i], y), 3.1, i == 0 ? -1 : 1, cells[i], Ink.TEXT);
        }
        y -= LINE;
    }

    private void places() {
        heading("Places");
        double[] stops = {0, 65, 95, 135, 165};
        row(stops, "", "x", "y", "computed x", "computed y");
        for (int i = 0; i < marking.spots().size(); i++) {
            Marking.Spot spot = marking.spots().get(i);
            String name = spot.slide() ? spot.name() + ", middle of the carriage" : spot.name();
            place(stops, name + (spot.name().equals("tank pin") ? " (tank stowed)" : ""), spot.at(), computed(spot, i));
        }
        for (Assist spring : springs().subList(0, Math.min(SPRINGS, springs().size()))) {
            LineSpring line = (LineSpring) spring;
            place(
                    stops,
                    spring.name() + ", on " + line.from().body(),
                    line.from().at(),
                    line.from().at());
            place(
                    stops,
                    spring.name() + ", on " + line.to().body(),
                    line.to().at(),
                    line.to().at());
        }
        if (springs().size() > SPRINGS) {
            line("and " + (springs().size() - SPRINGS) + " more springs, see the design file");
        }
    }

    private List<Assist> springs() {
        return design.assists().stream().filter(a -> a instanceof LineSpring).toList();
    }

    private int springRows() {
        int all = springs().size();
        return 2 * Math.min(SPRINGS, all) + (all > SPRINGS ? 1 : 0);
    }

    /** The place as computed; rounding may have put two places together. */
    private Vec2 computed(Marking.Spot spot, int i) {
        return drawn.spots().stream()
                .filter(d -> d.name().equals(spot.name()))
                .findFirst()
                .orElse(drawn.spots().get(Math.min(i, drawn.spots().size() - 1)))
                .at();
    }

    private void place(double[] stops, String name, Vec2 tape, Vec2 computed) {
        row(
                stops,
                name,
                Lengths.tape(tape.x(), units),
                Lengths.tape(tape.y(), units),
                Lengths.fine(computed.x(), units),
                Lengths.fine(computed.y(), units));
    }

    /** What a tape is laid to: from the datum to every place, and between the places of each part. */
    private List<String[]> measured() {
        List<String[]> all = new ArrayList<>();
        for (Marking.Spot spot : marking.spots()) {
            all.add(new String[] {
                "datum to " + spot.name(), Lengths.tape(spot.at().norm(), units)
            });
        }
        for (Marking.Span span : marking.spans()) {
            all.add(new String[] {span.a().name() + " to " + span.b().name(), Lengths.tape(span.length(), units)});
        }
        return all;
    }

    private void distances() {
        heading("Centre to centre: check with a tape");
        List<String[]> all = measured();
        double top = y;
        double low = y;
        int half = (all.size() + 1) / 2;
        for (int i = 0; i < all.size(); i++) {
            if (i == half) {
                low = y;
                y = top;
            }
            double shift = i < half ? 0 : 95;
            row(new double[] {shift, 75 + shift}, all.get(i));
        }
        y = Math.min(low, y);
    }

    private void holes() {
        heading("Holes");
        for (Marking.Spot spot : marking.spots()) {
            if (!spot.name().equals(Skeleton.PIVOT) && !spot.slide()) {
                line(spot.name() + ": " + hole(spot));
            }
        }
        double bore = design.pivot().bearings().get(0).bearing().bore();
        line("pivot: bearings of " + Lengths.tape(bore, units) + " bore at z "
                + Lengths.tape(design.pivot().bearings().get(0).z(), units) + " and "
                + Lengths.tape(design.pivot().bearings().get(1).z(), units));
    }

    private String hole(Marking.Spot spot) {
        PinJoint joint = spot.joint();
        if (joint == null) {
            return spot.bodies().contains(Marking.ACTUATOR)
                    ? "as the actuator's end (its pin is not given in the design)"
                    : "its pin is not given in the design";
        }
        return "for a pin of " + Lengths.fine(joint.diameter(), units) + ", cheeks "
                + Lengths.fine(joint.cheek(), units) + " thick, "
                + Lengths.fine(joint.lug() + 2 * joint.gap(), units) + " apart";
    }

    private void stops() {
        heading("Stops");
        Pose stowed = analysis.poses().get(0);
        Pose full = analysis.poses().get(analysis.poses().size() - 1);
        Actuator a = design.drive().actuators().get(0).actuator();
        line("stowed: pins " + Lengths.tape(stowed.length(), units) + " apart, the actuator has " + left(a, stowed)
                + " left;  at " + Math.round(Math.toDegrees(full.tilt())) + " deg: "
                + Lengths.tape(full.length(), units) + " apart, " + left(a, full) + " left");
        line("full tilt stop: the actuator's moving pin is then at x "
                + Lengths.tape(full.tankPin().x(), units) + ", y "
                + Lengths.tape(full.tankPin().y(), units) + " from the datum");
    }

    /** To the nearer end of the stroke. */
    private String left(Actuator a, Pose pose) {
        double out = a.closed() + a.stroke() - pose.length();
        return Lengths.tape(Math.min(Math.abs(pose.length() - a.closed()), Math.abs(out)), units);
    }

    private void effect() throws CannotComputeException {
        heading("Effect of rounding");
        List<Finding> before = Checker.findings(design);
        List<Finding> after = Checker.findings(rounded);
        Finding worst = null;
        double most = 0;
        for (int i = 0; i < before.size() && i < after.size(); i++) {
            double change = Math.abs(after.get(i).utilisation() - before.get(i).utilisation());
            if (change > most) {
                most = change;
                worst = after.get(i);
            }
        }
        line(
                worst == null
                        ? "none: all places are whole numbers"
                        : "most changed: " + worst.title() + ", now " + Math.round(1000 * worst.utilisation()) / 10.0
                                + " % (" + Math.round(1000 * most) / 10.0 + " points of change)");
        List<String> fails = after.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::title)
                .toList();
        line(
                fails.isEmpty()
                        ? "Every check that could be made passes with the rounded places."
                        : "With the rounded places these checks fail: " + String.join(", ", fails));
        line("The figures are no substitute for a licensed engineer and local codes.");
    }
}
