// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What rust and use may take away before something is replaced. Source of the presets: common practice, no source.
 *
 * @param wall off the thickness of the tank's wall and of hollow sections, m
 * @param pin off the diameter of pins and of the pivot shaft, m
 * @param play of a worn pin in its hole, across, m; counts for rattle only
 * @param rattle that the tank's rim may have, m
 */
public record Wear(
        @Note("Rust and wear off the tank's wall and off tubes, taken off before strength is worked out")
                @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm", atMost = "50 mm")
                double wall,
        @Note("Wear off the diameter of pins and of the pivot shaft, taken off before strength is worked out")
                @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm", atMost = "50 mm")
                double pin,
        @Note("Play of a pin or bush in its hole when it is to be replaced")
                @Measured(value = Kind.LENGTH, preset = "1 mm", atLeast = "0 mm", atMost = "50 mm")
                double play,
        @Note("How far the tank's rim may rattle") @Measured(value = Kind.LENGTH, preset = "20 mm", above = "0 mm")
                double rattle) {}
