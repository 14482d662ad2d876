// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Sums over the triangles that a cut goes through. Volume is counted in tetrahedra on an apex in the cutting plane, so
 * that the cap adds nothing and need not be built; on two planes at once the apex lies where they meet. What a plane
 * leaves of a triangle has the triangle's own area vector, so many times smaller.
 *
 * <p>Source: divergence theorem, any calculus text (from memory).
 */
final class CutSums {
    /** Corners of what two planes leave of a triangle, at most, and one to spare for each plane. */
    private static final int ROOM = 3 * 7;

    private final double[] corners;
    private final double px;
    private final double py;
    private final double pz;

    private double volume;
    /** Four times the first moment of volume. */
    private double x4;

    private double y4;
    private double z4;
    private double nx;
    private double ny;
    private double nz;
    private final double[] some = new double[ROOM];
    private final double[] rest = new double[ROOM];

    /**
     * Nothing yet.
     *
     * @param corners m, [9 * triangle + 3 * corner + axis]; not changed
     * @param apex in the cutting planes, m, in the corners' frame
     */
    CutSums(double[] corners, Vec3 apex) {
        this.corners = corners;
        px = apex.x();
        py = apex.y();
        pz = apex.z();
    }

    /** Adds what of the triangle at an offset is below a plane. */
    void below(int t, Vec3 n, double level) {
        double[] p = corners;
        double x = n.x();
        double y = n.y();
        double z = n.z();
        double a = x * p[t] + y * p[t + 1] + z * p[t + 2] - level;
        double b = x * p[t + 3] + y * p[t + 4] + z * p[t + 5] - level;
        double c = x * p[t + 6] + y * p[t + 7] + z * p[t + 8] - level;
        if (a <= 0) {
            if (b <= 0) {
                all(t);
                if (c > 0) {
                    corner(t + 6, t, t + 3, c, a, b, -1);
                }
            } else if (c <= 0) {
                all(t);
                corner(t + 3, t + 6, t, b, c, a, -1);
            } else {
                corner(t, t + 3, t + 6, a, b, c, 1);
            }
        } else if (b <= 0) {
            if (c <= 0) {
                all(t);
                corner(t, t + 3, t + 6, a, b, c, -1);
            } else {
                corner(t + 3, t + 6, t, b, c, a, 1);
            }
        } else if (c <= 0) {
            corner(t + 6, t, t + 3, c, a, b, 1);
        }
    }

    private void all(int t) {
        piece(t, t + 3, t + 6, 1, 1, 1);
    }

    /** Adds, or takes away, the corner at a, which alone is on its side of the plane; heights in m. */
    private void corner(int a, int b, int c, double ha, double hb, double hc, int sign) {
        piece(a, b, c, ha / (ha - hb), ha / (ha - hc), sign);
    }

    /** The corner at a, as far as these shares of the edges to b and c. */
    private void piece(int a, int b, int c, double s, double t, int sign) {
        double[] p = corners;
        double ax = p[a];
        double ay = p[a + 1];
        double az = p[a + 2];
        double ux = p[b] - ax;
        double uy = p[b + 1] - ay;
        double uz = p[b + 2] - az;
        double vx = p[c] - ax;
        double vy = p[c + 1] - ay;
        double vz = p[c + 2] - az;
        double half = 0.5 * sign * s * t;
        double mx = half * (uy * vz - uz * vy);
        double my = half * (uz * vx - ux * vz);
        double mz = half * (ux * vy - uy * vx);
        double v = ((ax - px) * mx + (ay - py) * my + (az - pz) * mz) / 3;
        volume += v;
        x4 += v * (px + 3 * ax + s * ux + t * vx);
        y4 += v * (py + 3 * ay + s * uy + t * vy);
        z4 += v * (pz + 3 * az + s * uz + t * vz);
        nx += mx;
        ny += my;
        nz += mz;
    }

    /** Adds what of the triangle at an offset is below both planes. */
    void below(int t, Vec3 n, double level, Vec3 m, double other) {
        System.arraycopy(corners, t, some, 0, 9);
        int count = clip(some, 3, rest, n, level);
        count = clip(rest, count, some, m, other);
        for (int i = 2; i < count; i++) {
            fan(3 * i);
        }
    }

    /** The part of a polygon below a plane; returns its number of corners. */
    private static int clip(double[] from, int count, double[] to, Vec3 n, double level) {
        int k = 0;
        for (int i = 0; i < count; i++) {
            int a = 3 * i;
            int b = 3 * ((i + 1) % count);
            double ha = n.x() * from[a] + n.y() * from[a + 1] + n.z() * from[a + 2] - level;
            double hb = n.x() * from[b] + n.y() * from[b + 1] + n.z() * from[b + 2] - level;
            if (ha <= 0) {
                System.arraycopy(from, a, to, k, 3);
                k += 3;
            }
            if (ha <= 0 != hb <= 0) {
                double s = ha / (ha - hb);
                for (int axis = 0; axis < 3; axis++) {
                    to[k++] = from[a + axis] + s * (from[b + axis] - from[a + axis]);
                }
            }
        }
        return k / 3;
    }

    /** Adds the triangle of the polygon's first corner, the one at an offset and the one before that. */
    private void fan(int c) {
        double[] sums = new double[TriangleSums.SIZE];
        double[] p = some;
        TriangleSums.add(
                sums,
                0,
                p[0] - px,
                p[1] - py,
                p[2] - pz,
                p[c - 3] - px,
                p[c - 2] - py,
                p[c - 1] - pz,
                p[c] - px,
                p[c + 1] - py,
                p[c + 2] - pz);
        double v = sums[0];
        volume += v;
        x4 += sums[4] + 4 * px * v;
        y4 += sums[5] + 4 * py * v;
        z4 += sums[6] + 4 * pz * v;
        nx += sums[1];
        ny += sums[2];
        nz += sums[3];
    }

    /**
     * Volume properties of what the triangles and the caps in the planes enclose.
     *
     * @param whole sums of the triangles that no plane cuts, at offset 0; not changed
     * @param n unit normal of the plane of which the section is wanted
     * @param origin of the corners' frame, m
     */
    Moments moments(double[] whole, Vec3 n, Vec3 origin) {
        Vec3 apex = new Vec3(px, py, pz);
        Moments rest = TriangleSums.moments(whole, n, apex);
        double all = rest.volume() + volume;
        Vec3 first = rest.first().plus(new Vec3(x4, y4, z4).times(0.25)).plus(origin.times(all));
        return new Moments(all, first, rest.section() - n.dot(new Vec3(nx, ny, nz)));
    }
}
