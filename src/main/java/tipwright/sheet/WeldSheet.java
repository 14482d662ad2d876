// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Finding;
import tipwright.check.Verdict;
import tipwright.design.Actuator;
import tipwright.design.Assist;
import tipwright.design.Design;
import tipwright.design.LineSpring;
import tipwright.design.PinJoint;
import tipwright.design.Straight;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;

/** The sheet to weld from: places, distances to check by tape, holes, stops, and the side view with its dimensions. */
public final class WeldSheet {
    /** Springs whose ends have a row each. */
    private static final int SPRINGS = 3;

    private static final double MARGIN = 14;

    private final Design design;
    private final Design rounded;
    private final Straight drive;
    private final UnitSystem units;
    private final Paper paper;
    private final Drawing.Board board = new Drawing.Board();
    private double y;

    private WeldSheet(Design design, UnitSystem units, Paper paper) throws CannotComputeException {
        if (!(design.drive() instanceof Straight straight)) {
            throw new CannotComputeException(
                    design.name() + ": the sheet to weld from is made for a straight drive only");
        }
        this.design = design;
        this.drive = straight;
        this.units = units;
        this.paper = paper;
        rounded = design.withPivot(
                        design.pivot().movedTo(Lengths.rounded(design.pivot().at(), units)))
                .withDrive(straight.movedTo(
                        Lengths.rounded(straight.framePin(), units), Lengths.rounded(straight.tankPin(), units)));
    }

    /** The design with its pins on the nearest marks of a tape. */
    public static Design rounded(Design design, UnitSystem units) throws CannotComputeException {
        return new WeldSheet(design, units, Paper.A4).rounded;
    }

    /**
     * All pages: the sheet, then the template.
     *
     * @throws CannotComputeException when the drive is not a straight one, or the mechanism cannot be assembled
     */
    public static List<Drawing> pages(Design design, UnitSystem units, Paper paper) throws CannotComputeException {
        List<Drawing> pages = new ArrayList<>();
        WeldSheet sheet = new WeldSheet(design, units, paper);
        pages.add(sheet.first());
        pages.addAll(Template.tiles(sheet.rounded, units, paper));
        return pages;
    }

    private Drawing first() throws CannotComputeException {
        double w = paper.width();
        y = paper.height() - MARGIN - 5;
        board.text(new Vec2(MARGIN, y), 6, -1, design.name() + ": sheet to weld from", Ink.TEXT);
        y -= 7;
        line("All places from the datum with the tank stowed: x towards the dump side, y up. Rounded to the nearest "
                + (units == UnitSystem.METRIC ? "1 mm." : "1/16 in."));
        Drawing view = SideView.of(rounded, units, w - 2 * MARGIN, paper.height() - 155 - springRows() * 4.5);
        Vec2 corner = new Vec2(w / 2 - view.width() / 2, y - view.height() + 4);
        board.add(view, corner.minus(view.low()));
        y -= view.height() + 2;
        places();
        distances();
        holes();
        stops();
        effect();
        return board.on(design.name() + ": sheet to weld from", Vec2.ZERO, new Vec2(w, paper.height()));
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
        y -= 4.5;
    }

    private void row(double[] stops, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            board.text(new Vec2(MARGIN + stops[i], y), 3.1, i == 0 ? -1 : 1, cells[i], Ink.TEXT);
        }
        y -= 4.5;
    }

    private Straight roundedDrive() {
        return rounded.drive() instanceof Straight s ? s : drive;
    }

    private void places() {
        heading("Places");
        double[] stops = {0, 65, 95, 135, 165};
        row(stops, "", "x", "y", "computed x", "computed y");
        place(stops, "pivot", rounded.pivot().at(), design.pivot().at());
        place(stops, "frame pin", roundedDrive().framePin(), drive.framePin());
        place(stops, "tank pin (tank stowed)", roundedDrive().tankPin(), drive.tankPin());
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

    private void place(double[] stops, String name, Vec2 tape, Vec2 computed) {
        row(
                stops,
                name,
                Lengths.tape(tape.x(), units),
                Lengths.tape(tape.y(), units),
                Lengths.fine(computed.x(), units),
                Lengths.fine(computed.y(), units));
    }

    private void distances() {
        heading("Centre to centre, to check by tape");
        double[] stops = {0, 85};
        Vec2[] at = {
            Vec2.ZERO,
            rounded.pivot().at(),
            roundedDrive().framePin(),
            roundedDrive().tankPin()
        };
        String[] names = {"datum", "pivot", "frame pin", "tank pin"};
        double top = y;
        int count = 0;
        for (int i = 0; i < at.length; i++) {
            for (int k = i + 1; k < at.length; k++) {
                String distance = Lengths.tape(at[k].minus(at[i]).norm(), units);
                if (count == 3) {
                    y = top;
                }
                double shift = count < 3 ? 0 : 95;
                row(new double[] {shift, stops[1] + shift - 10}, names[i] + " to " + names[k], distance);
                count++;
            }
        }
    }

    private void holes() {
        heading("Holes");
        line("frame pin bracket: " + hole(drive.framePinJoint()));
        line("tank pin bracket: " + hole(drive.tankPinJoint()));
        double bore = design.pivot().bearings().get(0).bearing().bore();
        line("pivot: bearings of " + Lengths.tape(bore, units) + " bore at z "
                + Lengths.tape(design.pivot().bearings().get(0).z(), units) + " and "
                + Lengths.tape(design.pivot().bearings().get(1).z(), units));
    }

    private String hole(@Nullable PinJoint joint) {
        return joint == null
                ? "as the actuator's end (its pin is not given in the design)"
                : "for a pin of " + Lengths.fine(joint.diameter(), units) + ", cheeks "
                        + Lengths.fine(joint.cheek(), units) + " thick, "
                        + Lengths.fine(joint.lug() + 2 * joint.gap(), units) + " apart";
    }

    private void stops() {
        heading("Stops");
        Straight s = roundedDrive();
        double to = design.tilt().to();
        Vec2 full = s.tankPin().tiltedAbout(rounded.pivot().at(), to);
        Actuator a = drive.actuators().get(0).actuator();
        double stowed = s.tankPin().minus(s.framePin()).norm();
        double tipped = full.minus(s.framePin()).norm();
        line("stowed: pins " + Lengths.tape(stowed, units) + " apart, the actuator has "
                + Lengths.tape(Math.abs(stowed - a.closed()), units) + " left;  at "
                + Math.round(Math.toDegrees(to)) + " deg: " + Lengths.tape(tipped, units) + " apart, "
                + Lengths.tape(Math.abs(a.closed() + a.stroke() - tipped), units) + " left");
        line("full tilt stop: the tank pin's centre is then at x " + Lengths.tape(full.x(), units) + ", y "
                + Lengths.tape(full.y(), units) + " from the datum");
    }

    private void effect() throws CannotComputeException {
        heading("What the rounding does");
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
                        ? "nothing: the places are whole already"
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
