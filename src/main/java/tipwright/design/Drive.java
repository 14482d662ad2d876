// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
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
}
