// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Collection;

/**
 * The upright box around points.
 *
 * @param low its corner at the lower left, m
 * @param high its corner at the upper right, m
 */
public record Extent(Vec2 low, Vec2 high) {

    /** Around points in m; of none it is at the origin and has no size. */
    public static Extent of(Collection<Vec2> points) {
        if (points.isEmpty()) {
            return new Extent(Vec2.ZERO, Vec2.ZERO);
        }
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Vec2 p : points) {
            left = Math.min(left, p.x());
            right = Math.max(right, p.x());
            bottom = Math.min(bottom, p.y());
            top = Math.max(top, p.y());
        }
        return new Extent(new Vec2(left, bottom), new Vec2(right, top));
    }

    /** From side to side, m. */
    public double width() {
        return high.x() - low.x();
    }

    /** From bottom to top, m. */
    public double height() {
        return high.y() - low.y();
    }

    public Vec2 middle() {
        return low.plus(high).times(0.5);
    }
}
