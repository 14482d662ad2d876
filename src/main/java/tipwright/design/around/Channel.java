// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What the slurry runs into.
 *
 * @param capacity what it carries away, m3/s
 * @param holds what it takes on top of that before it runs over, m3
 */
public record Channel(
        @Note("What the channel carries away; 0 L/s for a pit") @Measured(value = Kind.FLOW, atLeast = "0 L/s")
                double capacity,
        @Note("What the pit or channel takes before it runs over")
                @Measured(value = Kind.VOLUME, preset = "0 L", atLeast = "0 L")
                double holds) {}
