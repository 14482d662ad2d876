// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * The tape that the points were measured with.
 *
 * @param accuracy its class
 * @param hold standard doubt of holding it to the mark, m; null: 2 mm, or 1/16 in for a reading in inches
 */
public record Tape(
        @Note("Accuracy class as printed on the tape: i, ii or iii") @Preset("ii") Accuracy accuracy,
        @Note("How well it can be held to the marks; left out: 2 mm, or 1/16 in for a reading in inches")
                @Measured(value = Kind.LENGTH, atLeast = "0 mm", atMost = "100 mm")
                @Nullable
                Double hold) {
    private static final double HOLD_METRIC = 0.002;
    private static final double HOLD_US = 0.0254 / 16;

    /** A tape as most are. */
    public static final Tape USUAL = new Tape(Accuracy.II, null);

    /** The accuracy class of a tape. Source: EN/OIML classes of tapes, a + b L mm with L in whole metres, rounded up. */
    public enum Accuracy {
        I(0.1, 0.1),
        II(0.3, 0.2),
        III(0.6, 0.4);

        private final double fixed;
        private final double perMetre;

        Accuracy(double fixed, double perMetre) {
            this.fixed = fixed;
            this.perMetre = perMetre;
        }

        /** Largest error that the class allows, m, at a length in m. */
        public double largestError(double length) {
            return (fixed + perMetre * Math.ceil(Math.abs(length) - 1e-9)) / 1000;
        }
    }

    /**
     * Standard doubt of a reading, m: the tape's own error, taken as equally likely anywhere within its class, and how well it is
     * held. Source: JCGM 100 (GUM), 4.3.7, rectangular distribution.
     *
     * @param length m
     * @param inches whether it is written in inches or feet
     */
    public double doubt(double length, boolean inches) {
        double held = hold != null ? hold : inches ? HOLD_US : HOLD_METRIC;
        return Math.hypot(accuracy.largestError(length) / Math.sqrt(3), held);
    }
}
