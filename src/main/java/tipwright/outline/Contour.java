// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import tipwright.geometry.Vec2;

/** A line of an outline in a view, m. */
public sealed interface Contour {
    /** Points that tell how much room it takes, m. */
    List<Vec2> corners();

    /** Whether it encloses an area, which hides what is behind it. */
    boolean closed();

    /** The same with no more corners than it needs to stay within a tolerance, m. */
    Contour simpler(double tolerance);

    /** Straight lines from point to point. */
    record Polyline(List<Vec2> corners, boolean closed) implements Contour {
        /** Copies the list. */
        public Polyline {
            corners = List.copyOf(corners);
        }

        @Override
        public Polyline simpler(double tolerance) {
            return new Polyline(OutlineGeometry.simpler(corners, closed, tolerance), closed);
        }
    }

    /** A circle. */
    record Circle(Vec2 centre, double radius) implements Contour {
        @Override
        public List<Vec2> corners() {
            return List.of(
                    centre.plus(new Vec2(radius, 0)),
                    centre.plus(new Vec2(0, radius)),
                    centre.minus(new Vec2(radius, 0)),
                    centre.minus(new Vec2(0, radius)));
        }

        @Override
        public boolean closed() {
            return true;
        }

        @Override
        public Circle simpler(double tolerance) {
            return this;
        }
    }
}
