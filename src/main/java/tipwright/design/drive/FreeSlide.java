// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import tipwright.design.joint.Guide;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A slide of a free mechanism: the second body moves along a line of the first without turning against it.
 *
 * @param between names of its two bodies; the rail is on the first
 * @param at middle of the carriage, m, stowed
 * @param along direction of the rail, stowed, any length
 */
public record FreeSlide(
        @Note("What it is called") String name,
        @Note("Its two bodies, the one with the rail first") @Counted(atLeast = 2, atMost = 2) List<String> between,
        @Note("Middle of the carriage, tank stowed") @Measured(Kind.LENGTH) Vec2 at,
        @Note("Direction of the rail, tank stowed") @Measured(Kind.RATIO) Vec2 along,
        @Note("Its rail") Guide guide) {}
