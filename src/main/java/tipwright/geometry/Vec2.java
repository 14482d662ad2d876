// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import org.jspecify.annotations.Nullable;

/** A point or vector in the side view; x towards the dump side, y up. */
public record Vec2(double x, double y) {
    public static final Vec2 ZERO = new Vec2(0, 0);

    public Vec2 plus(Vec2 o) {
        return new Vec2(x + o.x, y + o.y);
    }

    public Vec2 minus(Vec2 o) {
        return new Vec2(x - o.x, y - o.y);
    }

    public Vec2 times(double k) {
        return new Vec2(k * x, k * y);
    }

    public double dot(Vec2 o) {
        return x * o.x + y * o.y;
    }

    /** The z component of the cross product. */
    public double cross(Vec2 o) {
        return x * o.y - y * o.x;
    }

    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    /** This vector over its length; NaN components for the zero vector. */
    public Vec2 unit() {
        return times(1 / norm());
    }

    /**
     * This vector tilted by an angle.
     *
     * @param tilt rad, positive turns +y towards +x (clockwise in the side view)
     */
    public Vec2 tilted(double tilt) {
        double c = Math.cos(tilt);
        double s = Math.sin(tilt);
        return new Vec2(c * x + s * y, -s * x + c * y);
    }

    /** This point tilted about a pivot; angle in rad, positive clockwise in the side view. */
    public Vec2 tiltedAbout(Vec2 pivot, double tilt) {
        return pivot.plus(minus(pivot).tilted(tilt));
    }

    // Written out: what a record brings of its own takes a cold machine longer to set up than all comparisons together.
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Vec2 v && Double.compare(x, v.x) == 0 && Double.compare(y, v.y) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }
}
