// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/**
 * What the mechanism is made of.
 *
 * @param bodies names; number 0 is the frame
 * @param tank number of the tank
 * @param joints in the order of the joint forces of a balance
 * @param pivot number of the joint in the two bearings
 * @param actuatorFrom number of the body at the actuator's fixed end
 * @param actuatorTo number of the body at its moving end
 * @param links the bodies beside frame and tank that have two pins and no slide
 */
public record Mechanism(
        List<String> bodies,
        int tank,
        List<JointPlan> joints,
        int pivot,
        int actuatorFrom,
        int actuatorTo,
        List<LinkPlan> links) {
    /** Copies the lists. */
    public Mechanism {
        bodies = List.copyOf(bodies);
        joints = List.copyOf(joints);
        links = List.copyOf(links);
    }

    /** What is known of a body, by number, as a link; null when it is none. */
    public @Nullable LinkPlan link(int body) {
        for (LinkPlan link : links) {
            if (link.body() == body) {
                return link;
            }
        }
        return null;
    }

    /** Number of the body that the pivot's two bearings sit on: the frame, or what the tank turns on; the frame where there is no pivot. */
    public int housing() {
        if (pivot < 0) {
            return 0;
        }
        JointPlan joint = joints.get(pivot);
        return joint.b() == 0 || joint.a() == tank ? joint.b() : joint.a();
    }

    /** Number of the body that the two bearings carry; the tank where there is no pivot. */
    public int borne() {
        if (pivot < 0) {
            return tank;
        }
        JointPlan joint = joints.get(pivot);
        return joint.a() == housing() ? joint.b() : joint.a();
    }

    /** Whether links carry the tank on the two bearings, and not the bearings the tank itself. */
    public boolean carriesTankOnLinks() {
        return borne() != tank && housing() != tank;
    }

    /**
     * Where an end of the actuator is on its body, m, as that body is stowed.
     *
     * @param moving whether the moving end, not the fixed one
     */
    public Vec2 actuatorPin(Pose pose, boolean moving) {
        return pose.bodies().get(moving ? actuatorTo : actuatorFrom).stowed(moving ? pose.tankPin() : pose.framePin());
    }

    /** Whether a body, by number, slides on another, or another on it. */
    public boolean slides(int body) {
        return joints.stream().anyMatch(j -> j.slide() && (j.a() == body || j.b() == body));
    }

    /** Whether a joint of this name is on a body, by number. */
    public boolean has(int body, String joint) {
        return joints.stream().anyMatch(j -> j.name().equals(joint) && (j.a() == body || j.b() == body));
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
                skeleton.actuator().b(),
                links(skeleton));
    }

    private static List<LinkPlan> links(Skeleton skeleton) {
        Strut actuator = skeleton.actuator();
        List<LinkPlan> links = new ArrayList<>();
        for (int body = 1; body < skeleton.bodies().size(); body++) {
            List<Vec2> pins = body == skeleton.tank() ? List.of() : skeleton.twoPins(body);
            if (!pins.isEmpty()) {
                boolean first = (actuator.a() == body && LinkPlan.same(actuator.onA(), pins.get(0)))
                        || (actuator.b() == body && LinkPlan.same(actuator.onB(), pins.get(0)));
                links.add(new LinkPlan(body, pins.get(first ? 1 : 0), pins.get(first ? 0 : 1)));
            }
        }
        return links;
    }
}
