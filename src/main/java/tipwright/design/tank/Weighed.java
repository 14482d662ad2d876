// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * The empty tank as weighed.
 *
 * @param empty kg
 * @param centre centre of mass, m, stowed
 * @param thickness of the wall, m; null: not said
 */
public record Weighed(
        @Note("Of the tank alone, on the scale") @Measured(value = Kind.MASS, above = "0 kg") double empty,
        @Note("Its centre of mass, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Thickness of the wall, where sizes are outside")
                @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                @Nullable
                Double thickness) {}
