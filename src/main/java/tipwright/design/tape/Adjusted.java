// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import tipwright.geometry.Vec3;

/** Adjusted places, with their doubt as it follows from the doubts of the readings, and what does not fit. */
public final class Adjusted {
    private static final double SEEN = 1e-6;

    private final double[][] places;
    private final double[][] covariance;
    private final double[] misfit;
    private final double[] weighted;
    private final double[] redundancy;
    private final int spare;

    Adjusted(
            double[][] places,
            double[][] covariance,
            double[] misfit,
            double[] weighted,
            double[] redundancy,
            int spare) {
        this.places = places;
        this.covariance = covariance;
        this.misfit = misfit;
        this.weighted = weighted;
        this.redundancy = redundancy;
        this.spare = spare;
    }

    /** Where a point is, m. */
    public Vec3 place(int point) {
        return new Vec3(places[point][0], places[point][1], places[point][2]);
    }

    /** Computed - measured of a reading, m. */
    public double misfit(int reading) {
        return misfit[reading];
    }

    /** How much of an error in a reading shows in its misfit, 0 to 1. */
    public double redundancy(int reading) {
        return redundancy[reading];
    }

    /** Readings more than were needed. */
    public int spare() {
        return spare;
    }

    /** Largest standard doubt of a point in any direction of the side view, m. */
    public double largestDoubt(int point) {
        int i = 3 * point;
        double xx = covariance[i][i];
        double yy = covariance[i + 1][i + 1];
        double xy = covariance[i][i + 1];
        return Math.sqrt(Math.max(0, 0.5 * (xx + yy) + Math.hypot(0.5 * (xx - yy), xy)));
    }

    /** Standard doubt of a coordinate of a point, m. */
    public double doubt(int point, int axis) {
        return Math.sqrt(Math.max(0, covariance[3 * point + axis][3 * point + axis]));
    }

    /**
     * Misfit of a reading over the standard doubt of that misfit; NaN where nothing checks the reading. Beyond 3.29 either way, one
     * honest reading in a thousand. Source: W. Baarda 1968, w-test.
     */
    public double suspicion(int reading) {
        return redundancy[reading] > SEEN ? weighted[reading] / Math.sqrt(redundancy[reading]) : Double.NaN;
    }

    /** Standard deviation of a reading of doubt 1 as the misfits show it; NaN when no reading is spare. */
    public double spread() {
        double sum = 0;
        for (double w : weighted) {
            sum += w * w;
        }
        return spare > 0 ? Math.sqrt(sum / spare) : Double.NaN;
    }
}
