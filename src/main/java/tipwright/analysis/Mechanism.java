// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;

/**
 * What the mechanism is made of.
 *
 * @param bodies names; number 0 is the frame
 * @param tank number of the tank
 * @param joints in the order of the joint forces of a balance
 * @param pivot number of the joint in the two bearings
 * @param actuatorFrom number of the body at the actuator's fixed end
 * @param actuatorTo number of the body at its moving end
 */
public record Mechanism(
        List<String> bodies, int tank, List<JointPlan> joints, int pivot, int actuatorFrom, int actuatorTo) {
    /** Copies the lists. */
    public Mechanism {
        bodies = List.copyOf(bodies);
        joints = List.copyOf(joints);
    }

    static Mechanism of(Skeleton skeleton) {
        List<JointPlan> joints = new ArrayList<>();
        int pivot = -1;
        for (Joint j : skeleton.joints()) {
            if (j.name().equals(Skeleton.PIVOT)) {
                pivot = joints.size();
            }
            joints.add(new JointPlan(j.name(), j instanceof Joint.Slide, j.a(), j.b(), j.at()));
        }
        return new Mechanism(
                skeleton.bodies(),
                skeleton.tank(),
                joints,
                pivot,
                skeleton.actuator().a(),
                skeleton.actuator().b());
    }
}
