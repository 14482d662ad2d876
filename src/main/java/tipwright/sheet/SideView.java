// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.View;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/**
 * The side view with its dimensions: tank stowed and, dashed, at full tilt; pins, actuator, datum. One unit of the drawing is a
 * millimetre on the sheet; the scale is chosen to fit.
 */
public final class SideView {
    private static final double[] SCALES = {1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25, 30, 40, 50, 75, 100};
    private static final int FEW = 4;
    private static final double EDGE = 14;

    /** Em of the note under the machine, and the most that one of its letters takes on average, mm. */
    private static final double NOTE_HEIGHT = 3;

    private static final double NOTE_LETTER = 0.55 * NOTE_HEIGHT;

    private final Design design;
    private final UnitSystem units;
    private final Map<String, Vec2> labels = new LinkedHashMap<>();
    private final Drawing.Board board = new Drawing.Board();
    private final List<Seen> stowed;
    private final List<Seen> tipped;
    private final Marking marking;
    private final Pose full;
    private final Vec2 low;
    private final Vec2 high;
    private final double scale;
    private boolean listed;

    private SideView(Analysis analysis, UnitSystem units, double width, double height) {
        this.design = analysis.design();
        this.units = units;
        full = analysis.poses().get(analysis.poses().size() - 1);
        marking = Marking.of(design);
        MachineOutline machine = new MachineOutline(analysis);
        stowed = machine.at(MachinePose.of(analysis.poses().get(0)).doorsShut(), View.SIDE).stream()
                .filter(part -> part.kind() != PartKind.RECEIVER)
                .toList();
        tipped = machine.at(MachinePose.of(full), View.SIDE).stream()
                .filter(part -> part.kind() == PartKind.TANK
                        || part.kind() == PartKind.ATTACHED
                        || part.kind() == PartKind.LINK)
                .toList();
        List<Vec2> all = new ArrayList<>(List.of(Vec2.ZERO, full.tankPin()));
        all.addAll(MachineInk.room(stowed));
        all.addAll(MachineInk.room(tipped));
        Extent extent = Extent.of(all);
        low = extent.low();
        high = extent.high();
        Vec2 size = high.minus(low).times(1000);
        double least = Math.max(size.x() / (width - 2 * EDGE), size.y() / (height - 2 * EDGE));
        scale = scale(least);
    }

    /** The next usual scale from so many mm for a mm on. */
    static double scale(double least) {
        int i = 0;
        while (i < SCALES.length - 1 && SCALES[i] < least) {
            i++;
        }
        return SCALES[i];
    }

    /**
     * The drawing.
     *
     * @param width most that it may take, mm
     * @param height most that it may take, mm
     */
    public static Drawing of(Analysis analysis, UnitSystem units, double width, double height) {
        return of(analysis, units, width, height, false);
    }

    /**
     * The same beside a list of the places, by whose numbers many of them are told.
     *
     * @param width most that it may take, mm
     * @param height most that it may take, mm
     */
    public static Drawing besideList(Analysis analysis, UnitSystem units, double width, double height) {
        return of(analysis, units, width, height, true);
    }

    private static Drawing of(Analysis analysis, UnitSystem units, double width, double height, boolean listed) {
        SideView view = new SideView(analysis, units, width, height);
        view.listed = listed && view.marking.spots().size() > FEW;
        Vec2 low = view.at(view.low).minus(new Vec2(EDGE, EDGE));
        Vec2 high = view.at(view.high).plus(new Vec2(EDGE, EDGE));
        String note = view.note();
        // a tall machine is narrower than what is written under it
        double more = Math.max(0, note.length() * NOTE_LETTER + 4 - (high.x() - low.x())) / 2;
        Vec2 a = low.minus(new Vec2(more, 0));
        Vec2 b = high.plus(new Vec2(more, 0));
        view.board.keepLabelsOn(a, b);
        view.draw();
        view.board.text(a.plus(new Vec2(2, 2)), NOTE_HEIGHT, -1, note, Ink.QUIET);
        return view.board.on(view.design.name() + ", side view 1:" + Quantities.number(view.scale), a, b);
    }

    /** The drawing at its true size, one unit a millimetre; letters and signs grow with it. */
    public static Drawing trueSize(Analysis analysis, UnitSystem units) {
        SideView view = new SideView(analysis, units, 297, 210);
        return of(analysis, units, 297, 210).times(view.scale);
    }

    private Vec2 at(Vec2 p) {
        return p.times(1000 / scale);
    }

    private void draw() {
        MachineInk ink = new MachineInk(board, this::at, 1000 / scale);
        ink.machine(stowed, low.x(), high.x());
        ink.ghost(tipped);
        for (Opening opening : design.tank().openings()) {
            Vec3 centre = opening.centre();
            if (centre == null) {
                continue;
            }
            Vec2 p = at(centre.xy());
            board.ring(p, 0.8, Pen.line("opening", Ink.GREY, 0.3));
            labels.put(opening.name(), p);
        }
        datum();
        Vec2 moved = full.tankPin();
        board.line(
                at(full.framePin()),
                at(stowedEnd()),
                Pen.line("actuator", Ink.BLACK, 0.25).dashed(2));
        board.line(
                at(full.framePin()),
                at(moved),
                Pen.line("actuator-tipped", Ink.GREY, 0.4).dashed(1.5));
        board.ring(at(moved), 0.8, Pen.line("actuator-tipped", Ink.GREY, 0.3));
        marking.spots().forEach(this::pin);
        dimensions();
        labels.forEach((text, point) -> board.label(point, 2.8, text, Ink.TEXT));
    }

    private String note() {
        return "scale 1:" + Quantities.number(scale) + ", dimensions in "
                + (units == UnitSystem.METRIC ? "mm" : "inches")
                + "; dashed: tipped to "
                + Math.round(Math.toDegrees(full.tilt())) + " deg; thin dashed: sketched";
    }

    private void datum() {
        DatumView.cross(board, at(Vec2.ZERO));
        labels.put("datum", at(Vec2.ZERO));
    }

    private Vec2 stowedEnd() {
        return design.drive().skeleton(design.pivot().at()).actuator().onB();
    }

    /** All spans of a few pins; of many only those of links and actuator, the others are in the list. */
    private void dimensions() {
        List<Marking.Spot> spots = marking.spots();
        Vec2 sum = spots.stream().map(Marking.Spot::at).reduce(Vec2.ZERO, Vec2::plus);
        for (Marking.Span span : marking.spans()) {
            if (spots.size() <= FEW || span.part()) {
                Vec2 others = sum.minus(span.a().at()).minus(span.b().at());
                across(span.a().at(), span.b().at(), others.times(1.0 / Math.max(1, spots.size() - 2)));
            }
        }
    }

    private void pin(Marking.Spot spot) {
        Vec2 p = spot.at();
        Vec2 c = at(p);
        Pen pen = Pen.line("pins", Ink.BLACK, 0.35);
        board.ring(c, 1.4, pen.filled(Ink.WHITE));
        board.line(c.plus(new Vec2(-2.4, 0)), c.plus(new Vec2(2.4, 0)), pen);
        board.line(c.plus(new Vec2(0, -2.4)), c.plus(new Vec2(0, 2.4)), pen);
        String places = "  " + Marks.bare(p.x(), units) + " / " + Marks.bare(p.y(), units);
        labels.put(listed ? Integer.toString(spot.number()) : spot.place().words() + places, c);
    }

    /** A dimension from centre to centre, beside the line and away from the third pin. */
    private void across(Vec2 a, Vec2 b, Vec2 third) {
        int side = b.minus(a).cross(third.minus(a)) > 0 ? -1 : 1;
        Dimension.between(board, at(a), at(b), 5.0 * side, Marks.bare(b.minus(a).norm(), units));
    }
}
