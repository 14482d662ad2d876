// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;

/**
 * What a body shows to the wind: the area of its mesh square to a level direction, and the first moment of that area in height.
 * Faces that look against the wind are summed, which is the silhouette of a convex body; where a hollow hides one face behind
 * another both count, which is on the safe side. Source: projection of a closed surface (elementary).
 */
public final class WindArea {
    private final double[] areas;
    private final double[] middles;

    /** The faces of a closed mesh, stowed. */
    public WindArea(Mesh mesh) {
        areas = new double[3 * mesh.triangles()];
        middles = new double[areas.length];
        for (int t = 0; t < mesh.triangles(); t++) {
            Vec3 a = mesh.vertex(mesh.corners()[3 * t]);
            Vec3 b = mesh.vertex(mesh.corners()[3 * t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[3 * t + 2]);
            put(areas, t, b.minus(a).cross(c.minus(a)).times(0.5));
            put(middles, t, a.plus(b).plus(c).times(1.0 / 3));
        }
    }

    private static void put(double[] all, int t, Vec3 v) {
        all[3 * t] = v.x();
        all[3 * t + 1] = v.y();
        all[3 * t + 2] = v.z();
    }

    /**
     * Area, and the middle of what is shown.
     *
     * @param against unit vector into the wind, in the body's axes as stowed
     */
    Shown middle(Vec3 against) {
        double area = 0;
        Vec3 first = Vec3.ZERO;
        for (int i = 0; i < areas.length; i += 3) {
            double a = areas[i] * against.x() + areas[i + 1] * against.y() + areas[i + 2] * against.z();
            if (a > 0) {
                area += a;
                first = first.plus(new Vec3(middles[i], middles[i + 1], middles[i + 2]).times(a));
            }
        }
        return new Shown(area, area > 0 ? first.times(1 / area) : Vec3.ZERO);
    }

    /**
     * What is shown to the wind.
     *
     * @param area m2
     * @param middle m
     */
    record Shown(double area, Vec3 middle) {}

    /**
     * Area, and area times height of its middle over the body's own datum.
     *
     * @param against unit vector into the wind, in the body's axes as stowed
     * @param up unit vector upward, in the body's axes as stowed
     * @return {m2, m3}
     */
    public double[] shown(Vec3 against, Vec3 up) {
        double area = 0;
        double first = 0;
        for (int i = 0; i < areas.length; i += 3) {
            double a = areas[i] * against.x() + areas[i + 1] * against.y() + areas[i + 2] * against.z();
            if (a > 0) {
                area += a;
                first += a * (middles[i] * up.x() + middles[i + 1] * up.y() + middles[i + 2] * up.z());
            }
        }
        return new double[] {area, first};
    }
}
