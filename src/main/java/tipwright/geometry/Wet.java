// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Running sums of one cut through a revolved tank: the plane is lean * s + rise * v = level, with s along the axis and v
 * across it. A workspace for one call.
 */
final class Wet {
    /** Cosine between the plane's normal and the axis. */
    final double lean;
    /** Sine of the same angle, 0 or more. */
    final double rise;
    /** Height of the plane over the axis' origin, m. */
    final double level;

    double volume;
    double along;
    double across;
    double section;

    Wet(double lean, double rise, double level) {
        this.lean = lean;
        this.rise = rise;
        this.level = level;
    }

    /** Whether the axis lies below the plane at station s. */
    boolean under(double s) {
        return lean * s <= level;
    }

    /**
     * Adds a slice whose circle the plane cuts.
     *
     * @param thickness of the slice, m
     * @param s station along the axis, m
     * @param r radius there, m
     */
    void slice(double thickness, double s, double r) {
        double d = (level - lean * s) / rise;
        double square = Math.max(r * r - d * d, 0);
        double half = Math.sqrt(square);
        double area = r * r * (0.5 * Math.PI + Math.atan2(d, half)) + d * half;
        volume += thickness * area;
        along += thickness * area * s;
        across -= thickness * square * half * (2.0 / 3);
        section += thickness * 2 * half / rise;
    }

    /** Adds whole slices: volume, m3, and its first moment along the axis, m4. */
    void full(double addedVolume, double addedAlong) {
        volume += addedVolume;
        along += addedAlong;
    }
}
