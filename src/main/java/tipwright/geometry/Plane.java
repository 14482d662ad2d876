// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A plane n . p = level; 'below' it is n . p &lt;= level.
 *
 * @param normal unit vector, upward side
 * @param level m, signed distance from the origin along the normal
 */
public record Plane(Vec3 normal, double level) {
    /** The plane through a point. */
    public static Plane through(Vec3 point, Vec3 normal) {
        return new Plane(normal, normal.dot(point));
    }

    /** Height of a point over the plane, m, negative below. */
    public double height(Vec3 p) {
        return normal.dot(p) - level;
    }
}
