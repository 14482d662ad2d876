// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A part that turns with the tank.
 *
 * @param mass kg
 * @param centre centre of mass, m, stowed
 */
public record Attached(
        String name, @Measured(value = Kind.MASS, atLeast = "0 kg") double mass, @Measured(Kind.LENGTH) Vec3 centre) {}
