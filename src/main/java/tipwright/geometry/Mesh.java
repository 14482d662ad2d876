// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A triangle mesh. Arrays are shared, not copied: do not change them.
 *
 * @param xyz coordinates, m, [3 * vertex + axis]
 * @param corners vertex numbers, [3 * triangle + corner], counter-clockwise seen from outside
 */
@SuppressWarnings("ArrayRecordComponent")
public record Mesh(double[] xyz, int[] corners) {
    /** Number of triangles. */
    public int triangles() {
        return corners.length / 3;
    }

    /** Vertex number i, m. */
    public Vec3 vertex(int i) {
        return new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
    }

    /**
     * Smallest and largest of direction . p over the vertices, m.
     *
     * @param direction unit vector
     */
    public Range extent(Vec3 direction) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xyz.length; i += 3) {
            double d = direction.x() * xyz[i] + direction.y() * xyz[i + 1] + direction.z() * xyz[i + 2];
            low = Math.min(low, d);
            high = Math.max(high, d);
        }
        return new Range(low, high);
    }

    /** Diagonal of the box around the vertices, m. */
    double size() {
        double x = extent(new Vec3(1, 0, 0)).span();
        double y = extent(new Vec3(0, 1, 0)).span();
        double z = extent(new Vec3(0, 0, 1)).span();
        return new Vec3(x, y, z).norm();
    }

    /** Volume enclosed, m3; negative if the triangles face inward. */
    public double volume() {
        double six = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            double bx = xyz[b] - xyz[0];
            double by = xyz[b + 1] - xyz[1];
            double bz = xyz[b + 2] - xyz[2];
            double cx = xyz[c] - xyz[0];
            double cy = xyz[c + 1] - xyz[1];
            double cz = xyz[c + 2] - xyz[2];
            six += (xyz[a] - xyz[0]) * (by * cz - bz * cy)
                    + (xyz[a + 1] - xyz[1]) * (bz * cx - bx * cz)
                    + (xyz[a + 2] - xyz[2]) * (bx * cy - by * cx);
        }
        return six / 6;
    }

    /**
     * This mesh scaled about the origin, then moved.
     *
     * @param scale above 0, for example 0.001 for a mesh in millimetres
     * @param move m
     */
    public Mesh placed(double scale, Vec3 move) {
        double[] placed = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            placed[i] = scale * xyz[i] + move.x();
            placed[i + 1] = scale * xyz[i + 1] + move.y();
            placed[i + 2] = scale * xyz[i + 2] + move.z();
        }
        return new Mesh(placed, corners);
    }

    /** The same surface facing the other way. */
    public Mesh turnedOut() {
        int[] turned = corners.clone();
        for (int t = 0; t < turned.length; t += 3) {
            turned[t + 1] = corners[t + 2];
            turned[t + 2] = corners[t + 1];
        }
        return new Mesh(xyz, turned);
    }

    /** This mesh with vertices at exactly the same place joined, and triangles left out that have lost a side by it. */
    public Mesh welded() {
        return Weld.of(this);
    }
}
