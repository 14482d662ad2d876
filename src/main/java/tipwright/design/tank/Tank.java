// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * The tank.
 *
 * @param wall how thick the wall is; null when the empty mass is given
 * @param mass the empty mass as weighed; null when it follows from the wall
 * @param outline of its outside in the side view, m, stowed; empty: follows from the inside and the wall
 */
@ExactlyOne({"wall", "mass"})
public record Tank(
        @Note("The inside of the tank, where the slurry goes") Interior interior,
        @Note("Wall, to work out the empty mass; or give mass") @Nullable Wall wall,
        @Note("Empty mass as weighed, without the attached parts; or give wall") @Nullable Weighed mass,
        @Note("Whatever turns with the tank: door, cradle, hoses, half the actuator") @Counted(atMost = 200) @Preset
                List<Attached> attached,
        @Note("Where it empties") @Counted(atMost = 20) @Preset List<Opening> openings,
        @Note("Where air gets in while a closed tank drains; left out: it is open to the air") @Nullable Vent vent,
        @Note("Corners of its outside in the side view; left out: the inside plus the wall")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                @Preset
                List<Vec2> outline) {}
