// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec3;

/**
 * Tank and contents at one tilt.
 *
 * @param mass of everything that turns, kg
 * @param centroid of all that, m, in the tank's axes as stowed
 * @param fill what is in the tank; null when nothing is or when it has no surface
 * @param volume of the contents, m3
 */
public record LoadState(double mass, Vec3 centroid, @Nullable Fill fill, double volume) {
    /** With another mass in kg at a place in m. */
    LoadState plus(double more, Vec3 at) {
        double sum = mass + more;
        Vec3 middle = centroid.times(mass / sum).plus(at.times(more / sum));
        return new LoadState(sum, sum > 0 ? middle : centroid, fill, volume);
    }
}
