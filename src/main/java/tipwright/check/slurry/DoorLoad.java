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
        Vec3 moment = Vec3.ZERO;
        for (int i = 1; i + 1 < wet.size(); i++) {
            Vec3[] p = {wet.get(0), wet.get(i), wet.get(i + 1)};
            double area = p[1].minus(p[0]).cross(p[2].minus(p[0])).norm() / 2;
            double[] pressure = new double[3];
            double sum = 0;
            for (int k = 0; k < 3; k++) {
                pressure[k] = Math.max(0, -surface.height(p[k])) * weight;
                sum += pressure[k];
            }
            force += area * sum / 3;
            for (int k = 0; k < 3; k++) {
                moment = moment.plus(p[k].times(area / 12 * (sum + pressure[k])));
            }
        }
        return new DoorLoad(force, moment);
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
