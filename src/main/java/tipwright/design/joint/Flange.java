// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * The plate that bolts hold, where they pull at it.
 *
 * @param thickness m
 * @param arm from a bolt's middle to the weld of the upright that pulls, m
 * @param edge from a bolt's middle to the plate's nearest edge away from the upright, m
 * @param yield Pa
 */
public record Flange(
        @Note("Of the plate under the bolts' heads") @Measured(value = Kind.LENGTH, above = "0 mm") double thickness,
        @Note("From a bolt's middle to the weld of the upright that pulls")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                double arm,
        @Note("From a bolt's middle to the plate's edge, away from the upright")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                double edge,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield) {}
