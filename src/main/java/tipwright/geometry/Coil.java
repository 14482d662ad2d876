// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Lines of coil springs, for pictures. */
public final class Coil {
    private static final int PER_TURN = 14;

    private Coil() {}

    /**
     * A coil between two points, with a straight hook at each end.
     *
     * @param a one end, m
     * @param b the other end, m
     * @param radius of the coil, m
     * @param hook length of each hook, m
     * @param turns of the coil
     */
    public static List<Vec3> along(Vec3 a, Vec3 b, double radius, double hook, int turns) {
        Vec3 axis = b.minus(a).unit();
        double length = b.minus(a).norm();
        Vec3 u = new Vec3(0, 0, 1).minus(axis.times(axis.z())).unit();
        Vec3 v = axis.cross(u);
        double straight = Math.min(hook, 0.3 * length);
        List<Vec3> points = new ArrayList<>(List.of(a));
        int steps = turns * PER_TURN;
        for (int i = 0; i <= steps; i++) {
            double t = 2 * Math.PI * i / PER_TURN;
            double grow = Math.min(1, Math.min(i, steps - i) / (0.5 * PER_TURN));
            Vec3 out = u.times(radius * grow * Math.sin(t)).plus(v.times(-radius * grow * Math.cos(t)));
            double along = straight + (length - 2 * straight) * i / steps;
            points.add(a.plus(axis.times(along)).plus(out));
        }
        points.add(b);
        return points;
    }

    /**
     * A coil around a pin along z, with a straight arm at each end.
     *
     * @param pin its middle in the side view, m
     * @param from z of the first turn, m
     * @param to z of the last turn, m
     * @param radius of the coil, m
     * @param arm length of the arms from the pin, m
     * @param first direction of the first arm, rad from +x towards +y
     * @param last direction of the last arm, rad
     * @param turns about so many
     */
    public static List<Vec3> around(
            Vec2 pin, double from, double to, double radius, double arm, double first, double last, int turns) {
        double whole = 2 * Math.PI;
        double angle = turns * whole + last - first;
        int steps = Math.max(1, (int) Math.ceil(PER_TURN * Math.abs(angle) / whole));
        List<Vec3> points = new ArrayList<>();
        points.add(spoke(pin, arm, first, from));
        for (int i = 0; i <= steps; i++) {
            points.add(spoke(pin, radius, first + angle * i / steps, from + (to - from) * i / steps));
        }
        points.add(spoke(pin, arm, last, to));
        return points;
    }

    private static Vec3 spoke(Vec2 pin, double radius, double angle, double z) {
        return new Vec3(pin.x() + radius * Math.cos(angle), pin.y() + radius * Math.sin(angle), z);
    }
}
