// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A point of a body.
 *
 * @param body frame, tank, or a body of the mechanism by its name
 * @param at m, stowed
 */
public record Anchor(
        @Note("frame, tank, or the name of a link") String body,
        @Note("Where, tank stowed") @Measured(Kind.LENGTH) Vec2 at) {}
