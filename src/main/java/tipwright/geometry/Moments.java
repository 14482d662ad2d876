// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Volume properties of a solid or of the part of it below a plane.
 *
 * @param volume m3
 * @param first first moment of volume about the origin, m4 (volume times centroid)
 * @param section area cut by the plane, m2 (0 for a whole solid): the derivative of volume by level
 */
public record Moments(double volume, Vec3 first, double section) {
    public static final Moments NOTHING = new Moments(0, Vec3.ZERO, 0);

    /** Centroid, m; not defined (NaN) for an empty part. */
    public Vec3 centroid() {
        return first.times(1 / volume);
    }
}
