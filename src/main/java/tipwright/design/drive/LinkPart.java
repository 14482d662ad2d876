// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * What a link of the mechanism looks like from the side.
 *
 * @param body the link's name in the mechanism
 * @param outline m, stowed, either way round
 * @param z from and to along the pivot axis, m; empty: all the way across
 */
public record LinkPart(
        @Note("The link's name") String body,
        @Note("Corners of its outline in the side view, tank stowed")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                List<Vec2> outline,
        @Note("Where it begins and ends along the pivot; left out: all the way across")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                @Preset
                List<Double> z) {}
