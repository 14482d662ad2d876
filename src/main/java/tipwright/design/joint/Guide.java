// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * How a carriage is guided on its rail.
 *
 * @param length between its outermost contacts along the rail, m
 * @param friction coefficient. Source of the preset: common practice, no source
 */
public record Guide(
        @Note("Length of the carriage along its rail") @Measured(value = Kind.LENGTH, above = "0 mm") double length,
        @Note("Coefficient on the rail") @Measured(value = Kind.RATIO, preset = "0.15", atLeast = "0", atMost = "1")
                double friction) {
    /**
     * Sum of the contact forces of a carriage that bears on both ends, N: the larger of |N| and 2 |M| / length.
     *
     * @param normal N across the rail
     * @param couple N m
     */
    public double contact(double normal, double couple) {
        return Math.max(Math.abs(normal), 2 * Math.abs(couple) / length);
    }
}
