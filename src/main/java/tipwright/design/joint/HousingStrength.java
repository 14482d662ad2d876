// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What a bearing housing bears in one direction.
 *
 * @param angle between the load and the direction into the base, rad: 0 pressed onto the base, pi pulled off it
 * @param load N
 */
public record HousingStrength(
        @Note("Between the load and the direction into the base; 0 deg: pressed onto it")
                @Measured(value = Kind.ANGLE, atLeast = "0 deg", atMost = "180 deg")
                double angle,
        @Note("What the housing bears that way") @Measured(value = Kind.FORCE, above = "0 N") double load) {}
