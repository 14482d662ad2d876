// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A pin of a free mechanism.
 *
 * @param between names of its two bodies
 * @param at m, stowed; null: at the design's pivot
 * @param bothSides whether there are two of it, one on each side, each bearing half
 */
public record FreePin(
        @Note("What it is called") String name,
        @Note("Its two bodies, such as [frame, crank]") @Counted(atLeast = 2, atMost = 2) List<String> between,
        @Note("Where, tank stowed; left out: at the pivot") @Measured(Kind.LENGTH) @Nullable Vec2 at,
        @Note("There are two of it, one on each side") @Preset("false") boolean bothSides,
        @Note("Its dimensions, to check it") @Nullable PinJoint joint) {}
