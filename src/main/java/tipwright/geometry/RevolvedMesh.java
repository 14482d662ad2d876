// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;
import java.util.List;

/** Meshes a revolved tank: rings of vertices along the profile, a vertex on the axis at each end. */
final class RevolvedMesh {
    private RevolvedMesh() {}

    static Mesh of(Vec3 middle, Vec3 axis, double radius, List<Stretch> profile, double sag) {
        if (!(sag > 0)) {
            throw new ShapeException("the sag of a mesh must be above 0, not " + sag);
        }
        double[] rings = rings(profile, 0.5 * sag, 1e-9 * radius);
        int around = Math.max(8, (int) Math.ceil(Math.PI / Math.acos(Math.max(0, 1 - 0.5 * sag / radius))));
        int count = rings.length / 2;
        Vec3 u = (Math.abs(axis.y()) < 0.9 ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0));
        u = u.minus(axis.times(u.dot(axis))).unit();
        Vec3 v = axis.cross(u);
        double[] xyz = new double[3 * (count * around + 2)];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < around; j++) {
                double t = 2 * Math.PI * j / around;
                double r = rings[2 * i + 1];
                Vec3 p = middle.plus(axis.times(rings[2 * i]))
                        .plus(u.times(r * Math.cos(t)))
                        .plus(v.times(r * Math.sin(t)));
                put(xyz, i * around + j, p);
            }
        }
        double[] start = profile.get(0).points(radius);
        double[] end = profile.get(profile.size() - 1).points(radius);
        int minus = count * around;
        put(xyz, minus, middle.plus(axis.times(start[0])));
        put(xyz, minus + 1, middle.plus(axis.times(end[end.length - 2])));
        return new Mesh(xyz, corners(count, around));
    }

    /** Stations and radii of the rings, the tips on the axis left out. */
    private static double[] rings(List<Stretch> profile, double sag, double tip) {
        double[] all = new double[0];
        int n = 0;
        for (Stretch stretch : profile) {
            double[] points = stretch.points(sag);
            if (all.length < n + points.length) {
                all = Arrays.copyOf(all, 2 * (n + points.length));
            }
            for (int i = 0; i < points.length; i += 2) {
                boolean again = i == 0 && n > 0;
                if (points[i + 1] > tip && !again) {
                    all[n++] = points[i];
                    all[n++] = points[i + 1];
                }
            }
        }
        return Arrays.copyOf(all, n);
    }

    static int[] corners(int rings, int around) {
        int[] corners = new int[3 * 2 * rings * around];
        int minus = rings * around;
        int k = 0;
        for (int j = 0; j < around; j++) {
            int next = (j + 1) % around;
            corners[k++] = minus;
            corners[k++] = next;
            corners[k++] = j;
            for (int i = 0; i + 1 < rings; i++) {
                int a = i * around;
                int b = a + around;
                corners[k++] = a + j;
                corners[k++] = a + next;
                corners[k++] = b + next;
                corners[k++] = a + j;
                corners[k++] = b + next;
                corners[k++] = b + j;
            }
            int last = (rings - 1) * around;
            corners[k++] = minus + 1;
            corners[k++] = last + j;
            corners[k++] = last + next;
        }
        return corners;
    }

    private static void put(double[] xyz, int vertex, Vec3 p) {
        xyz[3 * vertex] = p.x();
        xyz[3 * vertex + 1] = p.y();
        xyz[3 * vertex + 2] = p.z();
    }
}
