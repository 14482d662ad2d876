// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * An outline in the side view as a length of a straight section.
 *
 * @param length over its longest edge, m
 * @param depth across it, m
 * @param mitres how far each end is off a square cut, rad
 */
record SectionShape(double length, double depth, List<Double> mitres) {
    private static final double PARALLEL = Math.toRadians(0.5);
    private static final double STEEPEST = Math.toRadians(70);

    /** Of four corners with two long edges side by side, no deeper than it is long; null when it is no such shape. */
    static @Nullable SectionShape of(List<Vec2> corners) {
        if (corners.size() != 4) {
            return null;
        }
        SectionShape best = null;
        for (int first = 0; first < 2; first++) {
            Vec2 a = corners.get(first);
            Vec2 b = corners.get(first + 1);
            Vec2 c = corners.get((first + 2) % 4);
            Vec2 d = corners.get((first + 3) % 4);
            Vec2 u = b.minus(a).unit();
            Vec2 v = c.minus(d).unit();
            double turn = Math.asin(Math.max(-1, Math.min(1, u.cross(v))));
            double depth = Math.abs(u.cross(d.minus(a)));
            if (Math.abs(turn) > PARALLEL || u.dot(v) < 0 || depth < 1e-6) {
                continue;
            }
            double from = Math.min(0, d.minus(a).dot(u));
            double to = Math.max(b.minus(a).dot(u), c.minus(a).dot(u));
            double one = Math.atan2(Math.abs(d.minus(a).dot(u)), depth);
            double two = Math.atan2(Math.abs(c.minus(b).dot(u)), depth);
            boolean sound = one < STEEPEST && two < STEEPEST && to - from >= depth;
            if (sound && (best == null || to - from > best.length())) {
                best = new SectionShape(to - from, depth, List.of(one, two));
            }
        }
        return best;
    }
}
