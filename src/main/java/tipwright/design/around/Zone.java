// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A piece of the side view in which a pin may be put.
 *
 * @param outline corners in order, m
 */
public record Zone(
        @Note("Corners of the zone in order, at least three") @Measured(Kind.LENGTH) @Counted(atLeast = 3)
                List<Vec2> outline,
        @Note("Rows of holes or faces of tubes that the pin must sit on") @Nullable Holes holes) {

    /**
     * Rows of holes. With one pitch only, the pin is free along the other axis, as on the faces of tubes.
     *
     * @param from any one hole, m
     * @param across pitch along x, m
     * @param up pitch along y, m
     */
    public record Holes(
            @Note("Any one of the holes") @Measured(Kind.LENGTH) Vec2 from,
            @Note("From hole to hole along x; left out: anywhere along x")
                    @Measured(value = Kind.LENGTH, atLeast = "0.5 mm")
                    @Nullable
                    Double across,
            @Note("From hole to hole along y; left out: anywhere along y")
                    @Measured(value = Kind.LENGTH, atLeast = "0.5 mm")
                    @Nullable
                    Double up) {

        /** The nearest place that a pin can sit, m. */
        public Vec2 nearest(Vec2 p) {
            return new Vec2(snap(p.x(), from.x(), across), snap(p.y(), from.y(), up));
        }

        private static double snap(double at, double first, @Nullable Double pitch) {
            return pitch == null ? at : first + Math.rint((at - first) / pitch) * pitch;
        }
    }
}
