// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A small hole that limits a flow.
 *
 * @param diameter m
 * @param coefficient share of the ideal flow
 */
public record Orifice(
        @Note("Of the hole") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Share of the ideal flow") @Measured(value = Kind.RATIO, preset = "0.62", above = "0", atMost = "1")
                double coefficient) {}
