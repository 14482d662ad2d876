// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.drawing.Drawing;
import tipwright.drawing.Png;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.View;
import tipwright.sheet.MachineInk;

/** A small side view of a machine, stowed and, thin, at full tilt. */
final class Thumbnail {
    private static final double MARGIN = 2;

    private Thumbnail() {}

    /**
     * As a PNG.
     *
     * @param wide mm
     * @param high mm
     * @param scale pixels a mm
     * @return null when it cannot be drawn
     */
    static byte @Nullable [] png(Design design, double wide, double high, double scale) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Png.write(drawing(design, wide, high), scale, out);
            return out.toByteArray();
        } catch (IOException | CannotComputeException e) {
            return null;
        }
    }

    private static Drawing drawing(Design design, double wide, double high) throws CannotComputeException {
        TiltRange t = design.tilt();
        Analysis analysis = Analyser.analyse(design.withTilt(new TiltRange(t.from(), t.to(), (t.to() - t.from()) / 4)));
        MachineOutline machine = new MachineOutline(analysis);
        List<Seen> stowed = machine.at(MachinePose.of(analysis.poses().get(0)).doorsShut(), View.SIDE);
        List<Seen> tipped =
                machine.at(MachinePose.of(analysis.poses().get(analysis.poses().size() - 1)), View.SIDE);
        List<Vec2> room = MachineInk.room(stowed);
        room.addAll(MachineInk.room(tipped));
        Extent extent = Extent.of(room);
        double k = Math.min((wide - 2 * MARGIN) / extent.width(), (high - 2 * MARGIN) / extent.height());
        Vec2 middle = extent.middle();
        Vec2 centre = new Vec2(wide / 2, high / 2);
        Drawing.Board board = new Drawing.Board();
        MachineInk ink = new MachineInk(board, p -> p.minus(middle).times(k).plus(centre), k);
        ink.ghost(tipped);
        ink.machine(stowed, extent.low().x(), extent.high().x());
        return board.on(design.name(), Vec2.ZERO, new Vec2(wide, high));
    }
}
