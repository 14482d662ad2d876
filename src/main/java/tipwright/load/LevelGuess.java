// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

/** Guesses the next level from the last three over rising tilts, by a parabola. A workspace for one run over the tilts. */
final class LevelGuess {
    private final double[] tilts = new double[3];
    private final double[] levels = new double[3];
    private int known;

    /** Level to begin with at a tilt, m; NaN before anything is known. */
    double at(double tilt) {
        if (known == 0) {
            return Double.NaN;
        }
        double sum = 0;
        for (int i = 0; i < known; i++) {
            double weight = 1;
            for (int k = 0; k < known; k++) {
                if (k != i) {
                    weight *= (tilt - tilts[k]) / (tilts[i] - tilts[k]);
                }
            }
            sum += weight * levels[i];
        }
        return sum;
    }

    /** Takes a level that was found. */
    void found(double tilt, double level) {
        if (known > 0 && TiltGrid.sides(tilts[known - 1], tilt)) {
            levels[known - 1] = level;
            return;
        }
        if (known == 3) {
            for (int i = 0; i < 2; i++) {
                tilts[i] = tilts[i + 1];
                levels[i] = levels[i + 1];
            }
            known--;
        }
        tilts[known] = tilt;
        levels[known++] = level;
    }
}
