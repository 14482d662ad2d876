// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/**
 * What runs out of one opening under a level surface: Q = Cd x integral of sqrt(2 g z) dA over the wet part of the outline, with z
 * the depth below the surface. Part full it is a weir of the outline's own form, drowned it is an orifice with the true head on
 * every strip.
 *
 * <p>An opening that looks up, as an open top does, lets out no more than runs over its edges: Cd x 2/3 x integral of z sqrt(2 g z)
 * along the edge as seen from above. For an upright opening that is part full both are the same.
 *
 * <p>The integrals are taken along the edges of the polygon (Green's theorem), exact for straight edges. Approach velocity and the
 * draw-down at the lip are left out; Cd stands for them. Source: strip integral of Torricelli's law, as for thin-plate weirs.
 */
public final class Rim {
    private static final double G2 = Math.sqrt(2 * Gravity.G);
    private static final double FLAT = 1e-6;
    private static final double DEPTH_CLOSE = 1e-10;
    private static final int TRIES = 200;
    private static final double LEVEL_CLOSE = 1e-9;

    /** How far over the lip a surface is looked for first, and at most, m. */
    private static final double RISE = 0.05;

    private static final double HIGHEST = 100;

    private final double coefficient;
    private final double opensAt;
    private final double area;
    private final Vec3 first;
    private final Vec3 second;
    private final Vec3 middle;
    private final Vec3 outward;
    private final double[] alongFirst;
    private final double[] alongSecond;

    /** The rim of an opening. */
    public Rim(Opening opening) {
        coefficient = opening.outflow().effective();
        opensAt = opening.opensAt();
        List<Vec3> points = opening.rimPoints();
        Vec3 vector = opening.areaVector();
        area = vector.norm();
        middle = opening.middle();
        outward = opening.outward();
        Vec3 normal = vector.unit();
        Vec3 some = Math.abs(normal.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        first = some.minus(normal.times(some.dot(normal))).unit();
        second = normal.cross(first);
        alongFirst = new double[points.size()];
        alongSecond = new double[points.size()];
        for (int i = 0; i < points.size(); i++) {
            Vec3 p = points.get(i).minus(middle);
            alongFirst[i] = p.dot(first);
            alongSecond[i] = p.dot(second);
        }
    }

    /** Whether it is open at a tilt, rad. */
    public boolean open(double tilt) {
        return tilt >= opensAt - 1e-9;
    }

    /** Area of the outline, m2. */
    public double area() {
        return area;
    }

    /** Unit vector square out of it, tank stowed. */
    public Vec3 outward() {
        return outward;
    }

    /**
     * Flow, m3/s.
     *
     * @param up unit vector against gravity in the tank's axes
     * @param level of the surface along it, m, less what a vacuum takes off
     */
    public double flow(Vec3 up, double level) {
        double through = sum(up, level, Weighing.SPEED);
        boolean looksUp = up.dot(outward) > FLAT;
        return coefficient * G2 * (looksUp ? Math.min(through, overEdges(up, level)) : through);
    }

    /** Integral of the depth's root over the depth above each edge, along the edge as seen from above, m^2.5. */
    private double overEdges(Vec3 up, double level) {
        double depth = depth(up, level);
        double a = up.dot(first);
        double b = up.dot(second);
        double sum = 0;
        int last = alongFirst.length - 1;
        double x1 = alongFirst[last];
        double y1 = alongSecond[last];
        double z1 = depth - a * x1 - b * y1;
        for (int i = 0; i <= last; i++) {
            double x2 = alongFirst[i];
            double y2 = alongSecond[i];
            double z2 = depth - a * x2 - b * y2;
            if (z1 > 0 || z2 > 0) {
                double rise = z2 - z1;
                double length = Math.hypot(x2 - x1, y2 - y1);
                double seen = Math.sqrt(Math.max(0, length * length - rise * rise));
                boolean flat = Math.abs(rise) < 1e-7 * Math.max(z1, z2);
                sum += seen
                        * (flat
                                ? once(0.5 * (z1 + z2), Weighing.SPEED)
                                : (twice(z2, Weighing.SPEED) - twice(z1, Weighing.SPEED)) / rise);
            }
            x1 = x2;
            y1 = y2;
            z1 = z2;
        }
        return sum;
    }

    /** Area of the outline below the surface, m2. */
    public double wetArea(Vec3 up, double level) {
        return sum(up, level, Weighing.NONE);
    }

    /**
     * A free stream over the lowest part of the rim.
     *
     * @param depth critical depth over the lip, m
     * @param speed with which it falls free, m/s
     */
    public record Overfall(double depth, double speed) {}

    /**
     * How a flow leaves over the lip with air above and below it: it passes the critical depth, Q^2 T = g A^3 with the outline's
     * upright area A and its width T, and the pressure there speeds it up: v = Q/A + g (A z)/Q, z the depth of the area's middle; over a
     * level edge 1.5 times the critical speed.
     *
     * <p>Source: critical depth, and momentum of a free overfall (texts on open channels, from memory; over a level edge about 1.4
     * times is measured).
     *
     * @param up unit vector against gravity in the tank's axes
     * @param flow m3/s
     * @return null when the whole outline does not carry the flow at its critical depth, or lies level: it leaves as a jet
     */
    public @Nullable Overfall overfall(Vec3 up, double flow) {
        double steep = Math.hypot(up.dot(first), up.dot(second));
        double centre = up.dot(middle);
        double lip = centre - deepest(up, centre);
        double top = deepest(up.times(-1), -centre) + centre - lip;
        if (!(flow > 0) || steep < FLAT || !(top > 0) || spare(up, lip, top, steep, flow) < 0) {
            return null;
        }
        double depth = new BracketingNthOrderBrentSolver(DEPTH_CLOSE * top, 5)
                .solve(TRIES, y -> spare(up, lip, y, steep, flow), 0, top, 0.5 * top, AllowedSolution.ABOVE_SIDE);
        double area = steep * wetArea(up, lip + depth);
        double pressed = steep * sum(up, lip + depth, Weighing.DEPTH);
        return new Overfall(depth, flow / area + Gravity.G * pressed / flow);
    }

    /**
     * Level of the surface with which so much leaves through some openings together, along the direction against gravity, m.
     *
     * @param up unit vector against gravity in the tank's axes
     * @param flow m3/s
     * @return NaN when nothing leaves or there is no opening
     */
    public static double level(List<Rim> rims, Vec3 up, double flow) {
        UnivariateFunction spare =
                level -> rims.stream().mapToDouble(rim -> rim.flow(up, level)).sum() - flow;
        double low = -rims.stream().mapToDouble(rim -> rim.deepest(up, 0)).max().orElse(Double.NaN);
        double high = low + RISE;
        while (spare.value(high) < 0 && high - low < HIGHEST) {
            high = low + 2 * (high - low);
        }
        return flow > 0 && spare.value(high) >= 0
                ? new BracketingNthOrderBrentSolver(LEVEL_CLOSE, 5)
                        .solve(TRIES, spare, low, high, AllowedSolution.ABOVE_SIDE)
                : Double.NaN;
    }

    /** The fourth root of g A^3 / T, nearly straight over the depth, less that of Q^2, (m6/s2)^(1/4): 0 at the critical depth. */
    private double spare(Vec3 up, double lip, double depth, double steep, double flow) {
        double asked = Math.sqrt(flow);
        if (depth <= 0) {
            return -asked;
        }
        double area = steep * wetArea(up, lip + depth);
        double part = 1e-3 * depth;
        double width = (area - steep * wetArea(up, lip + depth - part)) / part;
        double carried = width > 0 ? Math.sqrt(Math.sqrt(Gravity.G * area / width) * area) : area > 0 ? 2 * asked : 0;
        return carried - asked;
    }

    /** Depth of the lowest point of the outline below the surface, m; negative above it. */
    public double deepest(Vec3 up, double level) {
        double a = up.dot(first);
        double b = up.dot(second);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < alongFirst.length; i++) {
            most = Math.max(most, -a * alongFirst[i] - b * alongSecond[i]);
        }
        return depth(up, level) + most;
    }

    /** Depth of the middle of the outline below the surface, m; negative above it. */
    private double depth(Vec3 up, double level) {
        return level - up.dot(middle);
    }

    /** What each part of the outline counts: one, the root of its depth, its depth. */
    private enum Weighing {
        NONE,
        SPEED,
        DEPTH
    }

    private double sum(Vec3 up, double level, Weighing by) {
        double depth = depth(up, level);
        double a = up.dot(first);
        double b = up.dot(second);
        double slope = Math.hypot(a, b);
        if (slope < FLAT) {
            return depth <= 0 ? 0 : area * (by == Weighing.SPEED ? Math.sqrt(depth) : by == Weighing.DEPTH ? depth : 1);
        }
        double sum = 0;
        int last = alongFirst.length - 1;
        double alongX = a / slope;
        double alongZ = b / slope;
        double x1 = alongSecond[last] * alongX - alongFirst[last] * alongZ;
        double z1 = depth - a * alongFirst[last] - b * alongSecond[last];
        double whole1 = twice(z1, by);
        for (int i = 0; i <= last; i++) {
            double x2 = alongSecond[i] * alongX - alongFirst[i] * alongZ;
            double z2 = depth - a * alongFirst[i] - b * alongSecond[i];
            double whole2 = twice(z2, by);
            if (z1 > 0 || z2 > 0) {
                double rise = z2 - z1;
                boolean flat = Math.abs(rise) < 1e-7 * Math.max(z1, z2);
                sum += (x2 - x1) * (flat ? once(0.5 * (z1 + z2), by) : (whole2 - whole1) / rise);
            }
            x1 = x2;
            z1 = z2;
            whole1 = whole2;
        }
        return Math.abs(sum) / slope;
    }

    /** Integral over the depth of what a part of the outline counts. */
    private static double once(double depth, Weighing by) {
        return switch (by) {
            case NONE -> depth;
            case SPEED -> depth * Math.sqrt(depth) * 2 / 3;
            case DEPTH -> depth * depth / 2;
        };
    }

    /** Integral of that, from the surface down; 0 above it. By Green's theorem an edge gives the difference of its ends. */
    private static double twice(double depth, Weighing by) {
        if (depth <= 0) {
            return 0;
        }
        return switch (by) {
            case NONE -> depth * depth / 2;
            case SPEED -> depth * depth * Math.sqrt(depth) * 4 / 15;
            case DEPTH -> depth * depth * depth / 6;
        };
    }
}
