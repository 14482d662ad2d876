// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Surface sums from which volume and first moment follow. With N the area vector of a triangle, S the sum of its corners
 * and V = a . N / 3 the tetrahedron on the origin, the sixteen sums are V, N, V S and the matrix N S. Tetrahedra on any
 * other apex p follow from the sums alone: V - p . N / 3, centroid (p + S) / 4. With the apex on the cutting plane the
 * cap adds nothing, so it need not be built.
 *
 * <p>Source: divergence theorem, any calculus text (from memory).
 */
final class TriangleSums {
    /** Sums held for each node or call. */
    static final int SIZE = 16;

    private TriangleSums() {}

    /** Adds one triangle to the sums that start at an offset. */
    static void add(
            double[] sums,
            int at,
            double ax,
            double ay,
            double az,
            double bx,
            double by,
            double bz,
            double cx,
            double cy,
            double cz) {
        double ux = bx - ax;
        double uy = by - ay;
        double uz = bz - az;
        double vx = cx - ax;
        double vy = cy - ay;
        double vz = cz - az;
        double nx = 0.5 * (uy * vz - uz * vy);
        double ny = 0.5 * (uz * vx - ux * vz);
        double nz = 0.5 * (ux * vy - uy * vx);
        double volume = (ax * nx + ay * ny + az * nz) / 3;
        double sx = ax + bx + cx;
        double sy = ay + by + cy;
        double sz = az + bz + cz;
        sums[at] += volume;
        sums[at + 1] += nx;
        sums[at + 2] += ny;
        sums[at + 3] += nz;
        sums[at + 4] += volume * sx;
        sums[at + 5] += volume * sy;
        sums[at + 6] += volume * sz;
        sums[at + 7] += nx * sx;
        sums[at + 8] += nx * sy;
        sums[at + 9] += nx * sz;
        sums[at + 10] += ny * sx;
        sums[at + 11] += ny * sy;
        sums[at + 12] += ny * sz;
        sums[at + 13] += nz * sx;
        sums[at + 14] += nz * sy;
        sums[at + 15] += nz * sz;
    }

    /**
     * What the summed triangles enclose with faces that all lie in planes through the apex.
     *
     * @param sums those at offset 0 count
     * @param n unit normal of the plane of which the section is wanted
     * @param apex m, in the frame of the sums; so is the first moment
     */
    static Moments moments(double[] sums, Vec3 n, Vec3 apex) {
        Vec3 area = new Vec3(sums[1], sums[2], sums[3]);
        double onArea = apex.dot(area);
        double volume = sums[0] - onArea / 3;
        double x = first(sums, 0, apex.x(), apex, onArea);
        double y = first(sums, 1, apex.y(), apex, onArea);
        double z = first(sums, 2, apex.z(), apex, onArea);
        return new Moments(volume, new Vec3(x, y, z), -n.dot(area));
    }

    private static double first(double[] sums, int axis, double own, Vec3 apex, double onArea) {
        double across = apex.x() * sums[7 + axis] + apex.y() * sums[10 + axis] + apex.z() * sums[13 + axis];
        return 0.25 * (sums[4 + axis] + own * sums[0]) - (across + own * onArea) / 12;
    }
}
