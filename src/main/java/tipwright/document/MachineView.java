// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.drawing.Svg;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.View;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;
import tipwright.sheet.MachineInk;

/** The machine from the side, stowed and at its full tilt, to one scale. */
final class MachineView {
    /** Of the drawing, mm. */
    private static final double WIDTH = 190;

    private static final double HIGHEST = 78;
    private static final double MARGIN = 6.5;
    private static final double BELOW = 6;
    private static final double LETTERS = 3.25;
    private static final double BAR = 0.5;
    private static final double BAR_US = 20 * 0.0254;
    private static final Pen LINE = Pen.line("pins", 0x000000, 0.4);
    private static final Pen TEXT = Pen.line("text", 0x000000, 0.2);

    private final Analysis analysis;
    private final UnitSystem units;
    private final Scale angle = Scale.angle();
    private Drawing.Board board = new Drawing.Board();

    MachineView(Analysis analysis, UnitSystem units) {
        this.analysis = analysis;
        this.units = units;
    }

    /** What numbers, bar and lines mean. */
    String legend() {
        return new PlaceMarks(analysis).legend() + " The bar is " + barWords() + " long. " + MachineInk.SKETCHED
                + (analysis.design().assists().isEmpty() ? "" : ASSISTS);
    }

    private double bar() {
        return units == UnitSystem.US ? BAR_US : BAR;
    }

    private String barWords() {
        return units == UnitSystem.US ? "20 in" : "500 mm";
    }

    private static final String ASSISTS =
            " Springs as zigzags, gas springs as tube and rod, weights as crossed blocks or rings: their ends and centres are in"
                    + " place, their thickness is only sketched.";

    Figure figure() {
        return figure(HIGHEST);
    }

    /**
     * The same in less room.
     *
     * @param highest of the drawing, mm
     */
    Figure figure(double highest) {
        Drawing drawing = drawing(highest);
        List<Pose> poses = analysis.poses();
        String caption = "From the side, at " + angle.show(poses.get(0).tilt()) + " and at "
                + angle.show(poses.get(poses.size() - 1).tilt());
        return new Figure(Svg.of(drawing, false).strip(), drawing.title(), caption);
    }

    Drawing drawing() {
        return drawing(HIGHEST);
    }

    private Drawing drawing(double highest) {
        board = new Drawing.Board();
        List<Pose> poses = analysis.poses();
        Pose stowed = poses.get(0);
        Pose tipped = poses.get(poses.size() - 1);
        MachineOutline machine = new MachineOutline(analysis);
        List<Row> rows = analysis.cases().get(0).rows();
        MachinePose full = rows.isEmpty() ? MachinePose.of(stowed) : MachinePose.of(rows.get(0));
        List<Seen> before = machine.at(full.doorsShut(), View.SIDE);
        List<Seen> after = machine.at(MachinePose.of(tipped), View.SIDE);
        List<Vec2> room = new ArrayList<>(MachineInk.room(before));
        room.addAll(MachineInk.room(after));
        Extent box = Extent.of(room);
        double half = WIDTH / 2;
        double scale = Math.min((half - 2 * MARGIN) / box.width(), (highest - 2 * MARGIN) / box.height());
        double height = box.height() * scale + 2 * MARGIN + BELOW;
        view(before, stowed, box, MARGIN, scale, "stowed, " + angle.show(stowed.tilt()));
        view(after, tipped, box, half + MARGIN, scale, "tipped, " + angle.show(tipped.tilt()));
        bar(scale);
        return board.on("Side view of the machine, stowed and tipped", Vec2.ZERO, new Vec2(WIDTH, height));
    }

    private void view(List<Seen> parts, Pose pose, Extent box, double left, double scale, String title) {
        double low = MARGIN + BELOW;
        Vec2 corner = new Vec2(left - box.low().x() * scale, low - box.low().y() * scale);
        MachineInk ink = new MachineInk(board, p -> p.times(scale).plus(corner), scale);
        ink.machine(parts, box.low().x(), box.high().x());
        new PlaceMarks(analysis)
                .at(pose)
                .forEach((place, at) -> pin(at.times(scale).plus(corner), Integer.toString(place.number())));
        board.text(new Vec2(left + box.width() * scale / 2, low + box.height() * scale + 2.5), LETTERS, 0, title, TEXT);
    }

    private void pin(Vec2 at, String number) {
        board.ring(at, 1, LINE.filled(0xffffff));
        Vec2 low = at.plus(new Vec2(1.5, -3.75));
        board.box(low, low.plus(new Vec2(3, 3.5)), Pen.area("labels", 0xffffff));
        board.text(at.plus(new Vec2(3, -3.1)), LETTERS, 0, number, TEXT);
    }

    private void bar(double scale) {
        double y = 2.5;
        double left = WIDTH / 2 - bar() * scale / 2;
        double right = left + bar() * scale;
        board.line(new Vec2(left, y), new Vec2(right, y), LINE);
        board.line(new Vec2(left, y - 1.25), new Vec2(left, y + 1.25), LINE);
        board.line(new Vec2(right, y - 1.25), new Vec2(right, y + 1.25), LINE);
        board.text(new Vec2(left - 2, y - 1), LETTERS, 1, barWords(), TEXT);
    }
}
