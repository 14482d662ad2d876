// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * How freely slurry leaves an opening.
 *
 * @param coefficient share of the ideal flow: 0.62 sharp edge, 0.8 short tube, 0.98 rounded
 * @param slurryFactor on top of it for thick slurry. Source: no published figure for thick grit slurry was found, so 1 is only
 *     right for thin slurry
 */
public record Outflow(
        @Note("Share of the ideal flow: 0.62 sharp edge, 0.8 short pipe, 0.98 rounded")
                @Measured(value = Kind.RATIO, preset = "0.62", above = "0", atMost = "1")
                double coefficient,
        @Note("Less than 100 % where thick slurry runs more slowly than water; measure it")
                @Measured(value = Kind.RATIO, preset = "100 %", above = "0 %", atMost = "100 %")
                double slurryFactor) {
    /** Both together. */
    public double effective() {
        return coefficient * slurryFactor;
    }
}
