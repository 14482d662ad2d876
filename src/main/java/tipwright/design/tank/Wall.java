// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A wall of even thickness over the whole surface of the interior.
 *
 * @param thickness m
 * @param density kg/m3
 */
public record Wall(
        @Note("Of the plate") @Measured(value = Kind.LENGTH, above = "0 mm", atMost = "200 mm", sheet = true)
                double thickness,
        @Note("Of the plate; 7850 kg/m3 for steel")
                @Measured(value = Kind.DENSITY, preset = "7850 kg/m3", above = "0 kg/m3")
                double density) {}
