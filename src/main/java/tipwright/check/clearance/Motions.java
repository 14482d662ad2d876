// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Pose;
import tipwright.geometry.Vec2;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePose;

/**
 * Where the bodies and the two halves of an actuator are, also between two poses ({@link BodyPosition#towards}).
 */
final class Motions {
    private final List<Pose> poses;
    private final Mechanism mechanism;
    private final Vec2 framePin;
    private final Vec2 tankPin;

    Motions(Analysis analysis) {
        poses = analysis.poses();
        mechanism = analysis.mechanism();
        Pose first = poses.get(0);
        framePin = mechanism.actuatorPin(first, false);
        tankPin = mechanism.actuatorPin(first, true);
    }

    /** A way to move, by the number of the pose, fractions between poses. */
    interface Path {
        BodyPosition at(double pose);
    }

    /** Last pose. */
    int last() {
        return poses.size() - 1;
    }

    /** rad at a pose or between. */
    double tilt(double pose) {
        int i = below(pose);
        double f = pose - i;
        double here = poses.get(i).tilt();
        return f > 0 ? here + f * (poses.get(i + 1).tilt() - here) : here;
    }

    /** Where the actuator's fixed pin is on its body, m, stowed. */
    Vec2 framePin() {
        return framePin;
    }

    /** Where the actuator's moving pin is on its body, m, stowed. */
    Vec2 tankPin() {
        return tankPin;
    }

    /** The path of a body by its number; number 0 stands still. */
    Path body(int number) {
        if (number == 0) {
            return pose -> poses.get(0).bodies().get(0);
        }
        return pose -> {
            int i = below(pose);
            BodyPosition a = poses.get(i).bodies().get(number);
            double f = pose - i;
            return f > 0 ? a.towards(poses.get(i + 1).bodies().get(number), f) : a;
        };
    }

    /** The path of the actuator's tube: its datum at the fixed pin, x towards the moving pin. */
    Path tube() {
        return pose -> actuator(pose, true);
    }

    /** The path of the actuator's rod: its datum at the moving pin, x away from the fixed pin. */
    Path rod() {
        return pose -> actuator(pose, false);
    }

    /** The path of a part. */
    Path of(MachinePart part) {
        return switch (part.kind()) {
            case TUBE -> tube();
            case ROD -> rod();
            default -> body(part.body());
        };
    }

    private BodyPosition actuator(double pose, boolean tube) {
        Vec2 from = body(mechanism.actuatorFrom()).at(pose).place(framePin);
        Vec2 to = body(mechanism.actuatorTo()).at(pose).place(tankPin);
        return MachinePose.alongActuator(from, to, tube);
    }

    private int below(double pose) {
        return Math.min((int) pose, last());
    }

    /** Largest displacement of any point since the first pose, m [pose]. */
    double[] travel(Path path, Vec2 middle, double reach) {
        double[] sum = new double[poses.size()];
        BodyPosition before = path.at(0);
        for (int i = 1; i < sum.length; i++) {
            BodyPosition now = path.at(i);
            double turn = Math.abs(Math.IEEEremainder(now.turn() - before.turn(), 2 * Math.PI));
            double shift = now.place(middle).minus(before.place(middle)).norm();
            sum[i] = sum[i - 1] + 1.01 * (shift + turn * reach);
            before = now;
        }
        return sum;
    }
}
