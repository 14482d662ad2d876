// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import org.jspecify.annotations.Nullable;

/** A point or vector; x towards the dump side, y up, z along the pivot towards the viewer of the side view. */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    public Vec3 times(double k) {
        return new Vec3(k * x, k * y, k * z);
    }

    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double norm() {
        return Math.sqrt(dot(this));
    }

    /** This vector over its length; NaN components for the zero vector. */
    public Vec3 unit() {
        return times(1 / norm());
    }

    /** The side-view part. */
    public Vec2 xy() {
        return new Vec2(x, y);
    }

    /** This vector tilted about the z axis; rad, positive turns +y towards +x. */
    public Vec3 tilted(double tilt) {
        double c = Math.cos(tilt);
        double s = Math.sin(tilt);
        return new Vec3(c * x + s * y, -s * x + c * y, z);
    }

    // Written out as those of a Vec2, for the same reason.
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Vec3 v
                && Double.compare(x, v.x) == 0
                && Double.compare(y, v.y) == 0
                && Double.compare(z, v.z) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(x) + Double.hashCode(y)) + Double.hashCode(z);
    }
}
