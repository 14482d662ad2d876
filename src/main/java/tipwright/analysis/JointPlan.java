// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec2;

/**
 * A joint of the mechanism.
 *
 * @param name as in the drive
 * @param slide whether it is a slide, else a pin
 * @param a number of the first body
 * @param b number of the second body
 * @param at m, stowed
 */
public record JointPlan(String name, boolean slide, int a, int b, Vec2 at) {
    /** Where it is at a pose, m. */
    public Vec2 place(Pose pose) {
        return pose.bodies().get(a).place(at);
    }
}
