// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Tank and contents at one tilt.
 *
 * @param mass of everything that turns, kg
 * @param centroid of all that, m, in the tank's axes as stowed
 * @param fill what is in the tank; null when nothing is or when it has no surface
 * @param volume of the contents, m3
 * @param other how the contents may lie as well, which weighs less about the pivot; null: one way only
 */
public record LoadState(double mass, Vec3 centroid, @Nullable Fill fill, double volume, @Nullable LoadState other) {
    /** Contents that lie one way only. */
    public LoadState(double mass, Vec3 centroid, @Nullable Fill fill, double volume) {
        this(mass, centroid, fill, volume, null);
    }

    /**
     * The one of two that weighs more about the pivot, either way; it knows the other, for another place of the pivot.
     *
     * @param pivot m
     * @param up against gravity, in the tank's axes
     */
    static LoadState worse(LoadState one, LoadState two, Vec2 pivot, Vec3 up) {
        boolean second = Math.abs(two.moment(pivot, up)) > Math.abs(one.moment(pivot, up));
        LoadState most = second ? two : one;
        LoadState least = second ? one : two;
        return new LoadState(most.mass, most.centroid, most.fill, most.volume, least);
    }

    /** Mass times its arm about a pivot in the side view, kg m; positive: to the dump side. */
    double moment(Vec2 pivot, Vec3 up) {
        double x = centroid.x() - pivot.x();
        double y = centroid.y() - pivot.y();
        return mass * (x * up.y() - y * up.x());
    }

    /** The same about another pivot. */
    LoadState about(Vec2 pivot, Vec3 up) {
        return other == null ? this : worse(new LoadState(mass, centroid, fill, volume), other, pivot, up);
    }

    /** With a part of its mass in kg elsewhere, by so many m. */
    LoadState shifted(double part, Vec3 by) {
        LoadState less = other == null ? null : other.shifted(part, by);
        return mass > 0 ? new LoadState(mass, centroid.plus(by.times(part / mass)), fill, volume, less) : this;
    }

    /** With so much more first moment of its mass, kg m. */
    LoadState moved(Vec3 by) {
        return by.equals(Vec3.ZERO) ? this : shifted(1, by);
    }

    /** With another mass in kg at a place in m. */
    LoadState plus(double more, Vec3 at) {
        double sum = mass + more;
        Vec3 middle = centroid.times(mass / sum).plus(at.times(more / sum));
        LoadState less = other == null ? null : other.plus(more, at);
        return new LoadState(sum, sum > 0 ? middle : centroid, fill, volume, less);
    }
}
