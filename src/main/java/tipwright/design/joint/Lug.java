// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * A plate with a hole for a pin.
 *
 * @param width across the load, m
 * @param thickness of one plate, m
 * @param hole diameter, m
 * @param end from the middle of the hole to the nearest free edge, m
 * @param plates that share the load
 * @param yield Pa
 */
public record Lug(
        @Note("Across the load, at the hole") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Of one plate") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true) double thickness,
        @Note("Diameter of the hole") @Measured(value = Kind.LENGTH, above = "0 mm") double hole,
        @Note("From the middle of the hole to the nearest free edge") @Measured(value = Kind.LENGTH, above = "0 mm")
                double end,
        @Note("How many plates share the load") @Preset("1") @Counted(atLeast = 1, atMost = 8) int plates,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield) {}
