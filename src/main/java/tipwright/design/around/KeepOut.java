// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A piece of the side view where no pin may be.
 *
 * @param outline corners in order, m
 */
public record KeepOut(
        @Note("What is there: axle, tool box, wheel") String name,
        @Note("Corners in order, at least three") @Measured(Kind.LENGTH) @Counted(atLeast = 3) List<Vec2> outline) {}
