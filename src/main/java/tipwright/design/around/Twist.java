// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Note;

/**
 * What keeps tank and frame from twisting where an actuator pushes beside the middle.
 *
 * @param tank tube of the cradle from the actuator's bracket to the pivot; null: none, or not known
 * @param frame tube of the frame from the frame pin to the pivot's posts; null: none, or not known
 */
public record Twist(
        @Note("Tube of the cradle that runs from the actuator's bracket to the pivot") @Nullable TorqueTube tank,
        @Note("Tube of the frame that runs from the frame pin to the pivot's posts") @Nullable TorqueTube frame) {}
