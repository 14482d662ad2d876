// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Axes in the plane of a weld group or of bolts: u along the side view towards +x (or +y where the plane stands upright), v along
 * z; where the plane is the side view itself, u is x and v is y.
 *
 * @param u unit vector
 * @param v unit vector
 * @param n unit vector square to both, as given
 */
public record PlaneAxes(Vec3 u, Vec3 v, Vec3 n) {
    /** The axes in a plane; its normal of any length. */
    public static PlaneAxes of(Vec3 normal) {
        Vec3 n = normal.unit();
        Vec3 z = new Vec3(0, 0, 1);
        Vec3 off = z.minus(n.times(n.dot(z)));
        if (off.norm() < 1e-6) {
            return new PlaneAxes(new Vec3(1, 0, 0), new Vec3(0, 1, 0), n);
        }
        Vec3 v = off.unit();
        Vec3 u = v.cross(n);
        boolean upright = Math.abs(u.x()) < 1e-9;
        boolean turn = upright ? u.y() < 0 : u.x() < 0;
        return new PlaneAxes(turn ? u.times(-1) : u, v, n);
    }

    /** A point of the plane as a vector from its datum, m. */
    Vec3 at(Vec2 p) {
        return u.times(p.x()).plus(v.times(p.y()));
    }
}
