// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Pose;
import tipwright.geometry.Vec2;

/**
 * Pins on which more than two parts meet: joints of one place and a part in common, and the actuator's end there. Such a pin bears the
 * largest force of all parts on it. Source: balance of forces on each part's eye.
 */
final class SharedPins {
    /** Two pins that are nearer than this are one, m. */
    private static final double SAME_PIN = 1e-6;

    private final Analysis analysis;
    private final Mechanism mechanism;
    private final Vec2 fixed;
    private final Vec2 moving;
    /** For each joint those that are on one pin with it, itself too; empty where only two parts meet [joint]. */
    private final List<List<Integer>> together = new ArrayList<>();

    SharedPins(Analysis analysis) {
        this.analysis = analysis;
        mechanism = analysis.mechanism();
        Pose stowed = analysis.poses().get(0);
        fixed = mechanism.actuatorPin(stowed, false);
        moving = mechanism.actuatorPin(stowed, true);
        List<JointPlan> joints = mechanism.joints();
        for (int i = 0; i < joints.size(); i++) {
            List<Integer> here = new ArrayList<>();
            for (int k = 0; k < joints.size(); k++) {
                if (k == i
                        || (single(k) && same(joints.get(k).at(), joints.get(i).at()))) {
                    here.add(k);
                }
            }
            JointPlan joint = joints.get(i);
            boolean pushed = isPushed(joint, joint.a()) || isPushed(joint, joint.b());
            together.add(single(i) && (here.size() > 1 || pushed) ? here : List.of());
        }
    }

    /** Whether the actuator is on a pin of a part, and its end is that part's. */
    private boolean isPushed(JointPlan joint, int body) {
        return (body == mechanism.actuatorFrom() && same(joint.at(), fixed))
                || (body == mechanism.actuatorTo() && same(joint.at(), moving));
    }

    private boolean single(int joint) {
        JointPlan plan = mechanism.joints().get(joint);
        return joint != mechanism.pivot()
                && !plan.slide()
                && !analysis.design().drive().paired(plan.name());
    }

    /** Whether two places are those of one pin. */
    static boolean same(Vec2 a, Vec2 b) {
        return a.minus(b).norm() < SAME_PIN;
    }

    /** The largest force of a part on the pin of a joint, N; 0 where only two parts meet, or where it is made twice. */
    double force(int joint, Pose pose, Balance balance) {
        if (together.get(joint).isEmpty()) {
            return 0;
        }
        JointPlan plan = mechanism.joints().get(joint);
        double most = 0;
        for (int body : new int[] {plan.a(), plan.b()}) {
            double end = isPushed(plan, body) ? Math.abs(balance.force()) : 0;
            most = Math.max(most, Math.max(end, on(joint, body, pose, balance).norm()));
        }
        return most;
    }

    /** All that a part bears from the others on the pin of a joint, N; nothing where only two parts meet, or where it is made twice. */
    Vec2 on(int joint, int body, Pose pose, Balance balance) {
        Vec2 sum = Vec2.ZERO;
        for (int other : together.get(joint)) {
            JointPlan on = mechanism.joints().get(other);
            Vec2 force = balance.joints().get(other);
            sum = on.a() == body ? sum.plus(force) : on.b() == body ? sum.minus(force) : sum;
        }
        if (!together.get(joint).isEmpty() && isPushed(mechanism.joints().get(joint), body)) {
            Vec2 push = pose.tankPin().minus(pose.framePin()).unit().times(balance.force());
            sum = body == mechanism.actuatorTo() ? sum.plus(push) : sum.minus(push);
        }
        return sum;
    }
}
