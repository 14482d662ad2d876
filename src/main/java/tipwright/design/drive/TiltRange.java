// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * How far the tank tips.
 *
 * @param from rad
 * @param to rad
 * @param step rad
 */
public record TiltRange(
        @Note("Where it starts") @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "0 deg", atMost = "180 deg")
                double from,
        @Note("How far it tips") @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "180 deg") double to,
        @Note("Step between the tilts that are calculated")
                @Measured(value = Kind.ANGLE, preset = "1 deg", atLeast = "0.05 deg", atMost = "10 deg")
                double step) {

    /** The tilts from first to last, rad; the last step may be shorter. */
    public double[] tilts() {
        int whole = (int) Math.floor((to - from) / step + 1e-9);
        boolean rest = from + whole * step < to - 1e-9;
        double[] all = new double[whole + (rest ? 2 : 1)];
        for (int i = 0; i <= whole; i++) {
            all[i] = from + i * step;
        }
        if (rest) {
            all[all.length - 1] = to;
        }
        return all;
    }
}
