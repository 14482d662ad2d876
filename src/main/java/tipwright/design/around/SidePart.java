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
 * A part that does not move, as seen from the side.
 *
 * @param outline m, stowed, either way round
 * @param z from and to along the pivot axis, m; empty: all the way across
 * @param rest whether the stowed tank lies on it
 */
public record SidePart(
        @Note("What it is called") String name,
        @Note("Corners of its outline in the side view") @Counted(atLeast = 3, atMost = 500) @Measured(Kind.LENGTH)
                List<Vec2> outline,
        @Note("Where it begins and ends along the pivot; left out: all the way across")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                @Preset
                List<Double> z,
        @Note("yes: the stowed tank lies on it") @Preset("false") boolean rest) {}
