// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A section from one end to the other; the ends are at the middle of the section.
 *
 * @param from m, stowed
 * @param to m, stowed
 * @param height of the section in the side view, m
 * @param width of the section along the pivot, m
 */
record Stretched(Vec3 from, Vec3 to, double height, double width) {
    private static final double STRAIGHT_ACROSS = 1e-9;

    double length() {
        return to.minus(from).norm();
    }

    Vec3 middle() {
        return from.plus(to).times(0.5);
    }

    /** A rectangle along its run in the side view; of a piece that lies across, its section. */
    List<Vec2> outline() {
        Vec2 run = to.xy().minus(from.xy());
        if (run.norm() < STRAIGHT_ACROSS) {
            double h = height / 2;
            double w = width / 2;
            Vec2 m = from.xy();
            return List.of(
                    m.plus(new Vec2(-w, -h)), m.plus(new Vec2(w, -h)), m.plus(new Vec2(w, h)), m.plus(new Vec2(-w, h)));
        }
        Vec2 u = run.unit();
        Vec2 n = new Vec2(-u.y(), u.x()).times(height / 2);
        return List.of(
                from.xy().minus(n), to.xy().minus(n), to.xy().plus(n), from.xy().plus(n));
    }

    List<Double> across() {
        boolean lies = to.xy().minus(from.xy()).norm() < STRAIGHT_ACROSS;
        double half = lies ? 0 : width / 2;
        return List.of(Math.min(from.z(), to.z()) - half, Math.max(from.z(), to.z()) + half);
    }
}
