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
        // the triangle is turned so that the corner that is alone on its side comes first
        switch ((a <= 0 ? 1 : 0) + (b <= 0 ? 2 : 0) + (c <= 0 ? 4 : 0)) {
            case 1 -> part(t, t + 3, t + 6, a / (a - b), a / (a - c), 0);
            case 2 -> part(t + 3, t + 6, t, b / (b - c), b / (b - a), 0);
            case 4 -> part(t + 6, t, t + 3, c / (c - a), c / (c - b), 0);
            case 6 -> part(t, t + 3, t + 6, a / (a - b), a / (a - c), 1);
            case 5 -> part(t + 3, t + 6, t, b / (b - c), b / (b - a), 1);
            case 3 -> part(t + 6, t, t + 3, c / (c - a), c / (c - b), 1);
            case 7 -> part(t, t + 3, t + 6, 0, 0, 1);
            default -> {}
        }
    }

    /**
     * Adds a part of a triangle.
     *
     * @param s share of the edge from a to b that the cut-off corner at a takes, t that of the edge to c
     * @param whole 0 to add that corner, 1 to add the triangle without it
     */
    private void part(int a, int b, int c, double s, double t, int whole) {
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
        double mx = uy * vz - uz * vy;
        double my = uz * vx - ux * vz;
        double mz = ux * vy - uy * vx;
        double v = ((ax - px) * mx + (ay - py) * my + (az - pz) * mz) / 6;
        // corner taken off counts negative
        double cut = (1 - 2 * whole) * s * t;
        double some = v * cut;
        double all = v * whole;
        double kept = all + some;
        double alongU = all + some * s;
        double alongV = all + some * t;
        double half = 0.5 * (whole + cut);
        volume += kept;
        x4 += kept * (px + 3 * ax) + alongU * ux + alongV * vx;
        y4 += kept * (py + 3 * ay) + alongU * uy + alongV * vy;
        z4 += kept * (pz + 3 * az) + alongU * uz + alongV * vz;
        nx += half * mx;
        ny += half * my;
        nz += half * mz;
    }

    /** Adds what of the triangle at an offset is below both planes. */
    void below(int t, Vec3 n, double level, Vec3 m, double other) {
        for (int i = 0; i < 9; i++) {
            some[i] = corners[t + i];
        }
        int count = clip(some, 3, rest, n.x(), n.y(), n.z(), level);
        if (count > 2) {
            count = clip(rest, count, some, m.x(), m.y(), m.z(), other);
            fan(count);
        }
    }

    /** The part of a polygon below a plane; returns its number of corners. */
    private static int clip(double[] from, int count, double[] to, double nx, double ny, double nz, double level) {
        int k = 0;
        int end = 3 * (count - 1);
        double ax = from[end];
        double ay = from[end + 1];
        double az = from[end + 2];
        double ha = nx * ax + ny * ay + nz * az - level;
        for (int b = 0; b <= end; b += 3) {
            double bx = from[b];
            double by = from[b + 1];
            double bz = from[b + 2];
            double hb = nx * bx + ny * by + nz * bz - level;
            if (ha <= 0 != hb <= 0) {
                double s = ha / (ha - hb);
                to[k] = ax + s * (bx - ax);
                to[k + 1] = ay + s * (by - ay);
                to[k + 2] = az + s * (bz - az);
                k += 3;
            }
            if (hb <= 0) {
                to[k] = bx;
                to[k + 1] = by;
                to[k + 2] = bz;
                k += 3;
            }
            ax = bx;
            ay = by;
            az = bz;
            ha = hb;
        }
        return k / 3;
    }

    /** Adds a flat polygon as triangles on its first corner. */
    private void fan(int count) {
        double[] p = some;
        double ax = p[0];
        double ay = p[1];
        double az = p[2];
        for (int b = 3, c = 6; c < 3 * count; b = c, c += 3) {
            double ux = p[b] - ax;
            double uy = p[b + 1] - ay;
            double uz = p[b + 2] - az;
            double vx = p[c] - ax;
            double vy = p[c + 1] - ay;
            double vz = p[c + 2] - az;
            double mx = 0.5 * (uy * vz - uz * vy);
            double my = 0.5 * (uz * vx - ux * vz);
            double mz = 0.5 * (ux * vy - uy * vx);
            double v = ((ax - px) * mx + (ay - py) * my + (az - pz) * mz) / 3;
            volume += v;
            x4 += v * (3 * ax + ux + vx + px);
            y4 += v * (3 * ay + uy + vy + py);
            z4 += v * (3 * az + uz + vz + pz);
            nx += mx;
            ny += my;
            nz += mz;
        }
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
