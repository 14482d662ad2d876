// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * Two saddles that a lying round tank rests in.
 *
 * @param at the middles of the two saddles in the side view, m, stowed; only their places along the tank count
 * @param angle that each reaches round the tank, rad
 * @param width of a saddle along the tank, m
 * @param rigid whether they do not give with the wall
 * @param welded whether they are welded to the wall all along
 */
public record Cradle(
        @Note("Middle of each of the two saddles under the tank in the side view, tank stowed")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                List<Vec2> at,
        @Note("How far round the tank each saddle reaches")
                @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "180 deg")
                double angle,
        @Note("Of a saddle, along the tank") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("no: the saddles give with the wall, as thin sheet or rubber does") @Preset("true") boolean rigid,
        @Note("yes: welded to the wall all along") @Preset("false") boolean welded) {}
