// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A door over an opening.
 *
 * @param hinge a point on the hinge line, m, stowed
 * @param hingeAxis direction of the hinge line, any length
 * @param latch where the latches hold, m, stowed; the middle of them
 * @param latches how many share the load
 * @param latchRating N, each
 * @param hingeRating N, the whole hinge line
 */
public record Door(
        @Measured(Kind.LENGTH) Vec3 hinge,
        @Measured(Kind.RATIO) @Preset("[0, 0, 1]") Vec3 hingeAxis,
        @Measured(Kind.LENGTH) Vec3 latch,
        @Counted(atLeast = 1, atMost = 100) @Preset("1") int latches,
        @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double latchRating,
        @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hingeRating) {}
