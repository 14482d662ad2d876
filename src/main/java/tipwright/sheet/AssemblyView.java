// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.View;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Bracket;

/** Side view and, under it and to the same scale, plan of the whole machine: pins numbered, brackets, the tank at full tilt dashed. */
final class AssemblyView {
    private static final double SIDE_EDGE = 9;
    private static final double RIGHT = 34;
    private static final double BETWEEN = 16;
    /** For the line of small print. */
    private static final double NOTE = 5;

    private static final double LETTERS = 2.8;
    private static final double NUMBER = 3.2;
    private static final int FEW = 4;

    private final Analysis analysis;
    private final Design design;
    private final UnitSystem units;
    private final Marking marking;
    private final List<Bracket> brackets;
    private final List<Seen> stowed;
    private final List<Seen> tipped;
    private final List<Seen> above;
    private final Drawing.Board board = new Drawing.Board();
    private final Vec2 low;
    private final Vec2 high;
    private final double near;
    private final double far;
    private final double scale;

    private AssemblyView(Analysis analysis, List<Bracket> brackets, UnitSystem units, double width, double height) {
        this.analysis = analysis;
        this.units = units;
        this.brackets = brackets;
        design = analysis.design();
        marking = Marking.of(design);
        List<Pose> poses = analysis.poses();
        MachineOutline machine = new MachineOutline(analysis);
        MachinePose home = MachinePose.of(poses.get(0)).doorsShut();
        stowed =
                machine.at(home, View.SIDE).stream().filter(AssemblyView::shown).toList();
        above = machine.at(home, View.PLAN).stream()
                .filter(p -> shown(p) && p.kind() != PartKind.PIN)
                .toList();
        tipped = machine.at(MachinePose.of(poses.get(poses.size() - 1)), View.SIDE).stream()
                .filter(p -> p.kind() == PartKind.TANK || (p.kind() == PartKind.LINK && !p.sketched()))
                .toList();
        List<Vec2> side = new ArrayList<>(List.of(Vec2.ZERO));
        side.addAll(MachineInk.room(stowed));
        side.addAll(MachineInk.room(tipped));
        List<Vec2> plan = above.stream()
                .filter(p -> p.kind() != PartKind.GROUND)
                .flatMap(p -> p.corners().stream())
                .toList();
        double west = Math.min(least(side, true), least(plan, true));
        double east = Math.max(most(side, true), most(plan, true));
        low = new Vec2(west, least(side, false));
        high = new Vec2(east, most(side, false));
        near = least(plan, false);
        far = most(plan, false);
        scale = SideView.scale(Math.max(
                1000 * (high.x() - low.x()) / (width - SIDE_EDGE - RIGHT),
                1000 * (high.y() - low.y() + far - near) / (height - BETWEEN - 2 * SIDE_EDGE - NOTE)));
    }

    private static boolean shown(Seen part) {
        return switch (part.kind()) {
            case RECEIVER, FOOT, WHEEL, CONTENTS, LUG, KEEP_OUT, ZONE -> false;
            default -> true;
        };
    }

    private static double least(List<Vec2> points, boolean x) {
        return points.stream().mapToDouble(p -> x ? p.x() : p.y()).min().orElse(0);
    }

    private static double most(List<Vec2> points, boolean x) {
        return points.stream().mapToDouble(p -> x ? p.x() : p.y()).max().orElse(0);
    }

    /** The drawing; it takes no more than this, mm. */
    static Drawing of(Analysis analysis, List<Bracket> brackets, UnitSystem units, double width, double height) {
        AssemblyView view = new AssemblyView(analysis, brackets, units, width, height);
        return view.draw(width);
    }

    private Vec2 side(Vec2 p) {
        return p.times(1000 / scale);
    }

    private Vec2 plan(Vec2 p) {
        double top = low.y() * 1000 / scale - BETWEEN;
        return new Vec2(p.x() * 1000 / scale, top + (near - p.y()) * 1000 / scale);
    }

    private Drawing draw(double width) {
        double wide = (high.x() - low.x()) * 1000 / scale + SIDE_EDGE + RIGHT;
        double slack = Math.max(0, width - wide) / 2;
        Vec2 a = new Vec2(
                side(low).x() - SIDE_EDGE - slack, plan(new Vec2(0, far)).y() - SIDE_EDGE - NOTE);
        Vec2 b = new Vec2(side(high).x() + RIGHT + slack, side(high).y() + SIDE_EDGE);
        board.keepLabelsOn(a, b);
        MachineInk ink = new MachineInk(board, this::side, 1000 / scale);
        ink.machine(stowed, low.x(), high.x());
        lugs();
        ink.ghost(tipped);
        actuators();
        datum();
        new MachineInk(board, this::plan, 1000 / scale).plan(above);
        middle();
        numbers();
        offsets();
        double text = b.x() - 2;
        board.text(new Vec2(a.x() + 2, b.y() - 4), LETTERS, -1, "Side view, tank stowed", Ink.TEXT);
        board.text(new Vec2(a.x() + 2, plan(new Vec2(0, near)).y() + 6), LETTERS, -1, "Plan, from above", Ink.TEXT);
        String note = "scale 1:" + Quantities.number(scale) + "; sizes in " + Lengths.unit(units)
                + "; long dashes: at full tilt; thin dashes: sketched or proposed";
        board.text(new Vec2(text, a.y() + 1), LETTERS, 1, note, Ink.QUIET);
        return board.on(design.name() + ": assembly", a, b);
    }

    private void lugs() {
        for (Bracket bracket : brackets) {
            Pen pen = Pen.line("lugs", Ink.BLACK, 0.3).filled(Ink.WHITE);
            for (List<Vec2> outline : bracket.outlines()) {
                board.outline(outline.stream().map(this::side).toList(), bracket.proposed() ? pen.dashed(0.9) : pen);
            }
        }
    }

    private void actuators() {
        List<Pose> poses = analysis.poses();
        Pose full = poses.get(poses.size() - 1);
        Pose home = poses.get(0);
        board.line(
                side(home.framePin()),
                side(home.tankPin()),
                Pen.line("actuator", Ink.BLACK, 0.25).dashed(2));
        board.line(
                side(full.framePin()),
                side(full.tankPin()),
                Pen.line("actuator-tipped", Ink.GREY, 0.3).dashed(1.5));
        board.ring(side(full.tankPin()), 0.8, Pen.line("actuator-tipped", Ink.GREY, 0.3));
        List<Marking.Spot> spots = marking.spots();
        Vec2 sum = spots.stream().map(Marking.Spot::at).reduce(Vec2.ZERO, Vec2::plus);
        for (Marking.Span span : marking.spans()) {
            if (spots.size() <= FEW) {
                Vec2 rest = sum.minus(span.a().at()).minus(span.b().at()).times(1.0 / Math.max(1, spots.size() - 2));
                Vec2 d = span.b().at().minus(span.a().at());
                int left = d.cross(rest.minus(span.a().at())) > 0 ? -1 : 1;
                Dimension.between(
                        board, side(span.a().at()), side(span.b().at()), 5.0 * left, Marks.bare(span.length(), units));
            }
        }
    }

    private void datum() {
        Vec2 o = side(Vec2.ZERO);
        DatumView.cross(board, o);
    }

    /** The plan's middle: z is 0 there. */
    private void middle() {
        Pen pen = Pen.line("middle", Ink.GREY, 0.18).dashed(4);
        board.line(
                plan(new Vec2(low.x(), 0)).minus(new Vec2(5, 0)),
                plan(new Vec2(high.x(), 0)).plus(new Vec2(4, 0)),
                pen);
    }

    /** Rings with the numbers of the list, in both views. */
    private void numbers() {
        Pen pen = Pen.line("numbers", Ink.BLACK, 0.25);
        Pen cross = Pen.line("pins", Ink.BLACK, 0.35);
        List<Vec2> inPlan = new ArrayList<>();
        for (Marking.Spot spot : marking.spots()) {
            Vec2 c = side(spot.at());
            board.ring(c, 1.2, cross.filled(Ink.WHITE));
            board.line(c.plus(new Vec2(-2.2, 0)), c.plus(new Vec2(2.2, 0)), cross);
            board.line(c.plus(new Vec2(0, -2.2)), c.plus(new Vec2(0, 2.2)), cross);
            for (double z : Across.of(design, spot)) {
                Vec2 p = plan(new Vec2(spot.at().x(), z));
                board.line(p.plus(new Vec2(-1.6, 0)), p.plus(new Vec2(1.6, 0)), cross);
                board.line(p.plus(new Vec2(0, -1.6)), p.plus(new Vec2(0, 1.6)), cross);
            }
        }
        for (Marking.Spot spot : marking.spots()) {
            String n = Integer.toString(spot.number());
            board.balloon(side(spot.at()), NUMBER, n, pen);
            for (double z : Across.of(design, spot)) {
                Vec2 p = plan(new Vec2(spot.at().x(), z));
                if (inPlan.stream().noneMatch(q -> q.minus(p).norm() < 1)) {
                    board.balloon(p, NUMBER, n, pen);
                    inPlan.add(p);
                }
            }
        }
        board.label(side(Vec2.ZERO), LETTERS, "datum", Ink.TEXT);
    }

    /** How far bearings and actuators are off the middle, at the right of the plan. */
    private void offsets() {
        Map<Double, String> all = new LinkedHashMap<>();
        for (Support s : design.pivot().bearings()) {
            all.merge(s.z(), Across.side(s.z()) + "bearing", (x, y) -> x + ", " + y);
        }
        for (PlacedActuator p : design.drive().actuators()) {
            all.merge(p.z(), "actuator", (x, y) -> x.contains(y) ? x : x + ", " + y);
        }
        List<Double> order =
                all.keySet().stream().sorted(Comparator.naturalOrder()).toList();
        double x = plan(high).x() + 5;
        double last = Double.POSITIVE_INFINITY;
        for (double z : order) {
            double y = plan(new Vec2(0, z)).y();
            double put = Math.min(y, last - 4);
            last = put;
            Pen pen = Pen.line("dimensions", Ink.GREY, 0.2);
            board.path(List.of(new Vec2(x - 4, y), new Vec2(x - 1.5, y), new Vec2(x, put), new Vec2(x + 1, put)), pen);
            String words = all.get(z) + " z " + Marks.bare(z, units);
            board.text(new Vec2(x + 1.6, put - 1), LETTERS, -1, words, Ink.TEXT);
        }
    }
}
