// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * The empty tank as weighed.
 *
 * @param empty kg
 * @param centre centre of mass, m, stowed
 */
public record Weighed(
        @Note("Of the tank alone, on the scale") @Measured(value = Kind.MASS, above = "0 kg") double empty,
        @Note("Its centre of mass, tank stowed") @Measured(Kind.LENGTH) Vec3 centre) {}
