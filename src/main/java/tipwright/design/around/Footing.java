// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * What the machine stands on.
 *
 * @param outline feet, wheels or outriggers seen from above: x and z, m
 * @param y height of their undersides, m; null: that of the ground
 * @param slope that it must bear whichever way it stands, rad; null: none is asked for
 * @param rating of one support and the ground under it, N; null when not known
 * @param vehicle that the frame is fixed to; null when there is none
 * @param friction of what it stands on
 */
public record Footing(
        @Note("Feet, wheels or outriggers from above: [x, z]") @Counted(atLeast = 3, atMost = 40) @Measured(Kind.LENGTH)
                List<Vec2> outline,
        @Note("Height of their undersides; left out: the ground") @Measured(Kind.LENGTH) @Nullable Double y,
        @Note("Slope that it must bear whichever way it stands")
                @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "45 deg")
                @Nullable
                Double slope,
        @Note("What one support, and the ground under it, bears") @Measured(value = Kind.FORCE, above = "0 N") @Nullable
                Double rating,
        @Note("Truck or trailer that the frame is fixed to") @Nullable Vehicle vehicle,
        @Note("Friction of its feet or braked wheels on wet ground")
                @Measured(value = Kind.RATIO, preset = "0.4", above = "0", atMost = "1.5")
                double friction) {}
