// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A part that turns with the tank.
 *
 * @param mass kg
 * @param centre centre of mass, m, stowed
 * @param outline in the side view, m, stowed; empty: it has no size
 * @param z from and to along the pivot axis, m; empty: all the way across
 */
public record Attached(
        @Note("What it is") String name,
        @Note("What it weighs") @Measured(value = Kind.MASS, atLeast = "0 kg") double mass,
        @Note("Its centre of mass, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Corners of its outline in the side view, to keep it clear")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                @Preset
                List<Vec2> outline,
        @Note("Where it begins and ends along the pivot; left out: all the way across")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                @Preset
                List<Double> z) {}
