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
}
