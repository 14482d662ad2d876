// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.joint.Support;
import tipwright.design.tape.NamedPoints;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.View;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** What the datum is: a picture and words. */
final class DatumView {
    private static final double EDGE = 13;
    private static final double SAME = 5e-4;

    private final Design design;
    private final UnitSystem units;

    DatumView(Design design, UnitSystem units) {
        this.design = design;
        this.units = units;
    }

    /** The datum with its axes, on a board. */
    static void cross(Drawing.Board board, Vec2 o) {
        Pen pen = Pen.line("datum", Ink.BLACK, 0.35);
        board.ring(o, 1.5, pen);
        board.line(o, o.plus(new Vec2(10, 0)), pen);
        board.line(o, o.plus(new Vec2(0, 10)), pen);
        board.path(List.of(o.plus(new Vec2(8, 1)), o.plus(new Vec2(10, 0)), o.plus(new Vec2(8, -1))), pen);
        board.path(List.of(o.plus(new Vec2(1, 8)), o.plus(new Vec2(0, 10)), o.plus(new Vec2(-1, 8))), pen);
        board.text(o.plus(new Vec2(11, -1)), 2.8, -1, "x", Ink.TEXT);
        board.text(o.plus(new Vec2(-1, 11)), 2.8, -1, "y", Ink.TEXT);
    }

    /** The longest member of the frame, that a tape is hooked to; null when none is given. */
    @Nullable
    SidePart rail() {
        Frame frame = design.frame();
        SidePart best = null;
        for (SidePart part : frame == null ? List.<SidePart>of() : frame.members()) {
            best = best == null || reach(part) > reach(best) + SAME ? part : best;
        }
        return best;
    }

    private static double reach(SidePart part) {
        Extent box = Extent.of(part.outline());
        return box.width();
    }

    /** Where it is, in a sentence or two. */
    List<String> words() {
        List<String> all = new ArrayList<>();
        SidePart rail = rail();
        Vec2 pivot = design.pivot().at();
        String at = named();
        StringBuilder where = new StringBuilder("The datum (x 0, y 0, z 0)" + at + " is ");
        if (rail != null) {
            where.append(edge(rail, Vec2.ZERO)).append("; ");
        }
        List<String> ways = new ArrayList<>();
        if (Math.abs(pivot.x()) >= SAME) {
            ways.add(way(-pivot.x(), "towards the dump end", "away from the dump end"));
        }
        if (Math.abs(pivot.y()) >= SAME) {
            ways.add(way(-pivot.y(), "above it", "below it"));
        }
        where.append(
                ways.isEmpty() ? "the pivot's middle." : "from the pivot's middle " + String.join(" and ", ways) + ".");
        all.add(where.toString());
        List<Support> b = design.pivot().bearings();
        boolean middle = Math.abs(b.get(0).z() + b.get(1).z()) < 2 * SAME;
        all.add("x runs towards the dump end, y up, z along the pivot to the left as seen from the dump end; z 0 is "
                + (middle
                        ? "half way between the two bearings."
                        : Marks.show(Math.abs(b.get(0).z()), units) + " to the "
                                + (b.get(0).z() > 0 ? "right" : "left") + " of the first bearing's middle."));
        return all;
    }

    private String named() {
        NamedPoints points = design.points();
        if (points != null) {
            for (var e : points.places().entrySet()) {
                if (e.getValue().xy().norm() < SAME) {
                    return ", the point '" + e.getKey() + "' of the design file,";
                }
            }
        }
        return "";
    }

    private String way(double d, String plus, String minus) {
        return Marks.show(Math.abs(d), units) + " " + (d < 0 ? minus : plus);
    }

    /** How far a point is from the nearer level edge and the nearer end of a member: '660 mm in from the dump end of the left rail'. */
    String edge(SidePart part, Vec2 p) {
        Extent box = Extent.of(part.outline());
        boolean top =
                Math.abs(p.y() - box.high().y()) <= Math.abs(p.y() - box.low().y());
        double up = p.y() - (top ? box.high().y() : box.low().y());
        boolean dump =
                Math.abs(p.x() - box.high().x()) <= Math.abs(p.x() - box.low().x());
        double in = dump ? box.high().x() - p.x() : p.x() - box.low().x();
        String side = top ? "top" : "underside";
        String level = Math.abs(up) < SAME
                ? "level with the " + side
                : Marks.show(Math.abs(up), units) + (up > 0 ? " above the " : " below the ") + side;
        String end = dump ? "dump end" : "front end";
        String along = Math.abs(in) < SAME
                ? "at its " + end
                : Marks.show(Math.abs(in), units) + (in > 0 ? " in from its " : " out from its ") + end;
        return level + " of the " + part.name() + ", " + along;
    }

    /** The picture; no wider than this, mm. */
    Drawing picture(Analysis analysis, double width, double height) {
        MachinePose home = MachinePose.of(analysis.poses().get(0)).doorsShut();
        List<Seen> parts = new MachineOutline(analysis)
                .at(home, View.SIDE).stream()
                        .filter(p -> switch (p.kind()) {
                            case FRAME, REST, CROSS_MEMBER, BEARING, SHAFT, STAND -> true;
                            default -> false;
                        })
                        .toList();
        Vec2 pivot = design.pivot().at();
        List<Vec2> all = new ArrayList<>(List.of(Vec2.ZERO, pivot));
        parts.forEach(p -> all.addAll(p.corners()));
        Extent box = Extent.of(all);
        Vec2 size = box.high().minus(box.low()).times(1000);
        double scale = SideView.scale(Math.max(size.x() / (width - 4 * EDGE), size.y() / (height - 2 * EDGE)));
        Drawing.Board board = new Drawing.Board();
        MachineInk ink = new MachineInk(board, p -> p.times(1000 / scale), 1000 / scale);
        ink.machine(parts, box.low().x(), box.high().x());
        Vec2 low = box.low().times(1000 / scale);
        Vec2 high = box.high().times(1000 / scale);
        Vec2 at = pivot.times(1000 / scale);
        cross(board, Vec2.ZERO);
        Dimension.square(board, Vec2.ZERO, at, true, low.y() - 5, Marks.bare(Math.abs(pivot.x()), units));
        Dimension.square(board, Vec2.ZERO, at, false, high.x() + 5, Marks.bare(Math.abs(pivot.y()), units));
        SidePart rail = rail();
        if (rail != null) {
            Extent edge = Extent.of(rail.outline());
            boolean dump = Math.abs(edge.high().x()) <= Math.abs(edge.low().x());
            Vec2 end = new Vec2(
                            dump ? edge.high().x() : edge.low().x(), edge.high().y())
                    .times(1000 / scale);
            Dimension.square(
                    board, Vec2.ZERO, end, true, high.y() + 4, Marks.bare(Math.abs(end.x() * scale / 1000), units));
            if (Math.abs(edge.high().y()) > SAME) {
                Dimension.square(
                        board,
                        Vec2.ZERO,
                        end,
                        false,
                        low.x() - 5,
                        Marks.bare(Math.abs(edge.high().y()), units));
            }
        }
        board.keepLabelsOn(low.minus(new Vec2(2 * EDGE, EDGE)), high.plus(new Vec2(2 * EDGE, EDGE)));
        board.label(Vec2.ZERO, 3.1, "datum", Ink.TEXT);
        board.label(at, 2.8, "pivot", Ink.TEXT);
        return board.on("datum", low.minus(new Vec2(2 * EDGE, EDGE)), high.plus(new Vec2(2 * EDGE, EDGE)));
    }
}
