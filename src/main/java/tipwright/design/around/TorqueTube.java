// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A rectangular tube that bears a twist.
 *
 * @param height outside, m
 * @param width outside, m
 * @param wall m
 * @param yield Pa
 */
public record TorqueTube(
        @Note("Outside, upright") @Measured(value = Kind.LENGTH, above = "0 mm") double height,
        @Note("Outside, level") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Thickness of its wall") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true) double wall,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield) {}
