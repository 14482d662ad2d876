// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * How it is driven about, tank stowed.
 *
 * @param loaded whether it is driven with slurry in the tank
 * @param lock middle of what ties the tank down, m; null: nothing but the actuator
 * @param locks how many share the load
 * @param rating of one, N, straight down; null when not known
 */
public record Road(
        @Note("Whether it is driven with slurry in the tank") @Preset("true") boolean loaded,
        @Note("Middle of what ties the tank down to the frame; left out: nothing but the actuator")
                @Measured(Kind.LENGTH)
                @Nullable
                Vec3 lock,
        @Note("How many hooks, pins or straps tie it down together") @Counted(atLeast = 1, atMost = 20) @Preset("1")
                int locks,
        @Note("What one of them bears") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double rating) {}
