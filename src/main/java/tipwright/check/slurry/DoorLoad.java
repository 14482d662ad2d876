// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.List;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/**
 * Hydrostatic load on a flat outline.
 *
 * <p>Pressure rises linearly with depth under the surface. The wetted part of the outline is cut out and taken in triangles: the
 * force is the sum of area times mean pressure, the first moment sum of A/12 sum_ij p_i r_j (1 + delta_ij). Source: hydrostatics of
 * plane surfaces, any text on fluid mechanics.
 *
 * @param force N, along the outline's normal
 * @param moment first moment of the pressure, integral of p r dA, N m
 */
public record DoorLoad(double force, Vec3 moment) {
    /** A bed that leans further than 80 degrees from level bears nothing above it. */
    private static final double UPRIGHT = 0.17;

    static final DoorLoad NONE = new DoorLoad(0, Vec3.ZERO);

    /**
     * The load at one position.
     *
     * @param outline convex, in order, m
     * @param surface of the liquid, its normal upward against gravity
     * @param weight of the liquid, density times gravity, N/m3
     */
    public static DoorLoad of(List<Vec3> outline, Plane surface, double weight) {
        List<Vec3> wet = surface.submerged(outline);
        double force = 0;
        double x = 0;
        double y = 0;
        double z = 0;
        if (wet.size() > 2) {
            Vec3 a = wet.get(0);
            Vec3 b = wet.get(1);
            double atA = pressure(surface, a, weight);
            double atB = pressure(surface, b, weight);
            for (int i = 2; i < wet.size(); i++) {
                Vec3 c = wet.get(i);
                double atC = pressure(surface, c, weight);
                double area = area(a, b, c);
                double sum = atA + atB + atC;
                force += area * sum / 3;
                double onA = area / 12 * (sum + atA);
                double onB = area / 12 * (sum + atB);
                double onC = area / 12 * (sum + atC);
                x += onA * a.x() + onB * b.x() + onC * c.x();
                y += onA * a.y() + onB * b.y() + onC * c.y();
                z += onA * a.z() + onB * b.z() + onC * c.z();
                b = c;
                atB = atC;
            }
        }
        return new DoorLoad(force, new Vec3(x, y, z));
    }

    /** Of a triangle, m2; written out, since it is asked for at every edge of a round rim, for every load and tilt. */
    private static double area(Vec3 a, Vec3 b, Vec3 c) {
        double ux = b.x() - a.x();
        double uy = b.y() - a.y();
        double uz = b.z() - a.z();
        double vx = c.x() - a.x();
        double vy = c.y() - a.y();
        double vz = c.z() - a.z();
        double x = uy * vz - uz * vy;
        double y = uz * vx - ux * vz;
        double z = ux * vy - uy * vx;
        return Math.sqrt(x * x + y * y + z * z) / 2;
    }

    /** At a point, N/m2. */
    private static double pressure(Plane surface, Vec3 point, double weight) {
        return Math.max(0, -surface.height(point)) * weight;
    }

    /**
     * The load of settled solids with liquid over them, or beside them where the solids stand higher: under the bed each point bears
     * what is straight above it, as if all were liquid. That is more than solids at rest press, and what they press when shaken loose.
     *
     * @param outline convex, in order, m
     * @param surface of the liquid, its normal upward against gravity
     * @param bed surface of the solids, its normal out of them
     * @param weight of the liquid, N/m3
     * @param packed weight of the solids with the liquid between them, N/m3
     */
    public static DoorLoad layered(List<Vec3> outline, Plane surface, Plane bed, double weight, double packed) {
        double upright = bed.normal().dot(surface.normal());
        if (upright < UPRIGHT) {
            return of(outline, surface, packed);
        }
        // where liquid and solids are as deep: straight above it they meet
        Vec3 normal = surface.normal().minus(bed.normal().times(1 / upright));
        double level = surface.level() - bed.level() / upright;
        List<Vec3> under = new Plane(normal, level).submerged(outline);
        List<Vec3> beside = new Plane(normal.times(-1), -level).submerged(outline);
        return of(under, surface, weight)
                .plus(of(under, bed, (packed - weight) / upright))
                .plus(of(beside, bed, packed / upright));
    }

    private DoorLoad plus(DoorLoad other) {
        return new DoorLoad(force + other.force, moment.plus(other.moment));
    }

    /** Centre of pressure, m; not defined without force. */
    public Vec3 centre() {
        return moment.times(1 / force);
    }
}
