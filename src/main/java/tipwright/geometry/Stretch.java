// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** A stretch of a revolved tank's profile, radius over station along the axis; concave, so a plane meets it at most twice on a side. */
sealed interface Stretch permits Line, ArcStretch {
    /** Adds what of this stretch lies below the plane of the workspace. */
    void below(Wet wet, Nodes nodes);

    /** Adds the whole stretch: volume and its first moment along the axis. */
    void whole(Wet wet);

    /** Radius at a station, m; 0 outside the stretch. */
    double radius(double s);

    /** Largest of lean * s + rise * r over the stretch, m. */
    double reach(double lean, double rise);

    /** Area of the wall, m2, and its first moment along the axis, m3: [area, moment]. */
    double[] wall();

    /** Points of the profile, both ends included: [s, r, s, r, ...], chords within the sag, m, of the true profile. */
    double[] points(double sag);

    /** This stretch reflected in the plane s = 0. */
    Stretch mirrored();

    /** This stretch moved along the axis, m. */
    Stretch moved(double by);
}
