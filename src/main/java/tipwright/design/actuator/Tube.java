// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * The actuator's body as a column: from the rear pin to the gland.
 *
 * @param outside diameter, m
 * @param inside diameter, m
 * @param length from the rear pin to the gland, m
 */
public record Tube(
        @Note("Outside diameter") @Measured(value = Kind.LENGTH, above = "0 mm") double outside,
        @Note("Inside diameter") @Measured(value = Kind.LENGTH, atLeast = "0 mm") double inside,
        @Note("From the rear pin to the gland") @Measured(value = Kind.LENGTH, above = "0 mm") double length) {

    /** Second moment of area, m4. */
    public double inertia() {
        return Math.PI * (Math.pow(outside, 4) - Math.pow(inside, 4)) / 64;
    }
}
