// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.Arrays;

/** Tilts at which tables stand, and the weights that read between them. */
final class Grid {
    private final double[] tilts;

    /** @param tilts rad, rising, at least two */
    Grid(double[] tilts) {
        this.tilts = tilts.clone();
    }

    int size() {
        return tilts.length;
    }

    double tilt(int i) {
        return tilts[i];
    }

    double first() {
        return tilts[0];
    }

    double last() {
        return tilts[tilts.length - 1];
    }

    /** Index of the tilt at or before this one, at most the last but one. */
    int before(double tilt) {
        int i = Arrays.binarySearch(tilts, tilt);
        int at = i >= 0 ? i : -i - 2;
        return Math.max(0, Math.min(tilts.length - 2, at));
    }

    /** Straight between two neighbours. */
    double linear(double[] values, double tilt) {
        int i = before(tilt);
        double t = (tilt - tilts[i]) / (tilts[i + 1] - tilts[i]);
        return values[i] + t * (values[i + 1] - values[i]);
    }

    /** A cubic through the four nearest tilts (fewer where there are no four); for smooth values. */
    double smooth(double[] values, double tilt) {
        int from = Math.max(0, Math.min(before(tilt) - 1, tilts.length - 4));
        int to = Math.min(tilts.length, from + 4);
        double sum = 0;
        for (int i = from; i < to; i++) {
            double weight = 1;
            for (int k = from; k < to; k++) {
                if (k != i) {
                    weight *= (tilt - tilts[k]) / (tilts[i] - tilts[k]);
                }
            }
            sum += weight * values[i];
        }
        return sum;
    }
}
