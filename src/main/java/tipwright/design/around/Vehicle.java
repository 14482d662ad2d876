// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Truck or trailer without the unit.
 *
 * @param mass kg
 * @param centre of mass, m, in the design's axes
 */
public record Vehicle(
        @Note("As it stands, without the machine") @Measured(value = Kind.MASS, above = "0 kg") double mass,
        @Note("Its centre of mass") @Measured(Kind.LENGTH) Vec3 centre) {}
