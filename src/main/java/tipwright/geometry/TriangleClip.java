// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** Clips triangles by two planes and adds what is below both to surface sums. A workspace for one cut. */
final class TriangleClip {
    /** A triangle cut by two planes has five corners at the most. */
    private static final int MOST = 3 * 6;

    private final double[] corners;
    private double[] from = new double[MOST];
    private double[] to = new double[MOST];

    /** @param corners coordinates, m, [9 * triangle + 3 * corner + axis] */
    TriangleClip(double[] corners) {
        this.corners = corners;
    }

    /** Adds the part of the triangle at an offset. */
    void add(double[] sums, int at, Plane a, Plane b) {
        double[] p = corners;
        int inA = side(at, a);
        int inB = inA > 0 ? 1 : side(at, b);
        if (inA > 0 || inB > 0) {
            return;
        }
        if (inA < 0 && inB < 0) {
            TriangleSums.add(
                    sums, 0, p[at], p[at + 1], p[at + 2], p[at + 3], p[at + 4], p[at + 5], p[at + 6], p[at + 7],
                    p[at + 8]);
            return;
        }
        System.arraycopy(p, at, from, 0, 9);
        int count = inA < 0 ? 9 : cut(9, a);
        count = inB < 0 ? count : cut(count, b);
        p = from;
        for (int i = 6; i < count; i += 3) {
            TriangleSums.add(sums, 0, p[0], p[1], p[2], p[i - 3], p[i - 2], p[i - 1], p[i], p[i + 1], p[i + 2]);
        }
    }

    /** -1: the triangle is below the plane, 1: above, 0: the plane cuts it. */
    private int side(int t, Plane plane) {
        double i = height(t, plane);
        double j = height(t + 3, plane);
        double k = height(t + 6, plane);
        return Math.max(i, Math.max(j, k)) <= 0 ? -1 : Math.min(i, Math.min(j, k)) > 0 ? 1 : 0;
    }

    private double height(int at, Plane plane) {
        Vec3 n = plane.normal();
        return n.x() * corners[at] + n.y() * corners[at + 1] + n.z() * corners[at + 2] - plane.level();
    }

    /** Leaves what is below a plane; returns how many coordinates that has. */
    private int cut(int count, Plane plane) {
        Vec3 n = plane.normal();
        int kept = 0;
        for (int i = 0; i < count; i += 3) {
            int j = i + 3 == count ? 0 : i + 3;
            double here = n.x() * from[i] + n.y() * from[i + 1] + n.z() * from[i + 2] - plane.level();
            double next = n.x() * from[j] + n.y() * from[j + 1] + n.z() * from[j + 2] - plane.level();
            if (here <= 0) {
                to[kept++] = from[i];
                to[kept++] = from[i + 1];
                to[kept++] = from[i + 2];
            }
            if (here <= 0 != next <= 0) {
                double s = here / (here - next);
                for (int k = 0; k < 3; k++) {
                    to[kept++] = from[i + k] + s * (from[j + k] - from[i + k]);
                }
            }
        }
        double[] swap = from;
        from = to;
        to = swap;
        return kept;
    }
}
