// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A door over an opening.
 *
 * @param hinge a point on the hinge line, m, stowed
 * @param hingeAxis direction of the hinge line, any length
 * @param latch where the latches hold, m, stowed; the middle of them
 * @param latches how many share the load
 * @param latchRating N, each
 * @param hingeRating N, the whole hinge line
 * @param mass kg; null: see {@link DoorMass}
 */
public record Door(
        @Note("A point on the hinge line, tank stowed") @Measured(Kind.LENGTH) Vec3 hinge,
        @Note("Direction of the hinge line") @Measured(Kind.RATIO) @Preset("[0, 0, 1]") Vec3 hingeAxis,
        @Note("Where the latches hold; the middle of them") @Measured(Kind.LENGTH) Vec3 latch,
        @Note("How many share the load") @Counted(atLeast = 1, atMost = 100) @Preset("1") int latches,
        @Note("Rated load of one latch") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double latchRating,
        @Note("What all hinges together bear") @Measured(value = Kind.FORCE, above = "0 N") @Nullable
                Double hingeRating,
        @Note("What the door weighs; left out: what the attached part of the opening's name weighs")
                @Measured(value = Kind.MASS, above = "0 kg")
                @Nullable
                Double mass) {}
