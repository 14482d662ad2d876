// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/**
 * What pushes the tank over. Adding a mechanism: one record that tells its skeleton, and its name in the permits clause.
 */
@Choice("")
public sealed interface Drive permits Straight {
    /**
     * The mechanism in the side view, stowed.
     *
     * @param pivot the tank's pivot, m
     */
    Skeleton skeleton(Vec2 pivot);

    /** The actuators, each with its place along z; side by side in the side view. */
    List<PlacedActuator> actuators();

    /** The pin that holds the actuator at its fixed end; null when nothing is known of it. */
    @Nullable
    PinJoint framePinJoint();

    /** The pin that holds the actuator at its moving end; null when nothing is known of it. */
    @Nullable
    PinJoint tankPinJoint();
}
