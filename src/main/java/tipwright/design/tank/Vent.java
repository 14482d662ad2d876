// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * Where air gets into a closed tank.
 *
 * @param diameter m; 0: a closed tank without a vent
 * @param coefficient share of the ideal flow
 */
public record Vent(
        @Note("0 mm: closed, without a vent") @Measured(value = Kind.LENGTH, atLeast = "0 mm") double diameter,
        @Note("Share of the ideal flow of air")
                @Measured(value = Kind.RATIO, preset = "0.62", above = "0", atMost = "1")
                double coefficient) {
    /** m2. */
    public double area() {
        return Math.PI * diameter * diameter / 4;
    }
}
