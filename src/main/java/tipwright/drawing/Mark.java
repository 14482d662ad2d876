// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.List;
import tipwright.geometry.Vec2;

/** Something in a drawing; places and sizes in mm, y up. */
public sealed interface Mark {
    /** How it is drawn. */
    Pen pen();

    /** A line through points, or a filled outline. */
    record Path(List<Vec2> points, boolean closed, Pen pen) implements Mark {
        /** Copies the list. */
        public Path {
            points = List.copyOf(points);
        }
    }

    /** A circle. */
    record Ring(Vec2 centre, double radius, Pen pen) implements Mark {}

    /**
     * A line of text in the pen's colour.
     *
     * @param at where its anchor is, on the base line
     * @param height of the letters' em, mm
     * @param anchor which part of it stands there: -1 start, 0 middle, 1 end
     * @param turn degrees against the clock
     */
    record Label(Vec2 at, double height, int anchor, double turn, String text, Pen pen) implements Mark {}
}
