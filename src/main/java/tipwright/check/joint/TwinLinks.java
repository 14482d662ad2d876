// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Pose;
import tipwright.design.drive.Drive;
import tipwright.geometry.Vec2;

/**
 * Links that are made twice, one on each side, and carry the tank on the two bearings: with the actuator or the load off the middle
 * one of the two bears more than half.
 *
 * <p>What the bearings differ by is the twist. Two links on a side that carry the tank share it by their directions, dM u1 + dS u2 =
 * R2 - R1; those on the bearings are taken to bear no less than their bearing. The second links are taken to sit where the bearings
 * sit along the axis. Source: statics of each side by itself, with the tank stiff against twist.
 */
final class TwinLinks {
    /** Sine of the angle between the links below which their share of the twist is not told apart. */
    private static final double PARALLEL = 0.1;

    private final Mechanism mechanism;
    private final Drive drive;
    private final int main;
    private final int second;

    TwinLinks(Analysis analysis) {
        mechanism = analysis.mechanism();
        drive = analysis.design().drive();
        JointPlan pivot = mechanism.joints().get(mechanism.pivot());
        main = pivot.a() == 0 ? pivot.b() : pivot.a();
        second = second();
    }

    /** What the side of a joint that bears more carries, N; all of it where the joint is made once. */
    double force(int joint, Pose pose, Balance balance) {
        double all = balance.joints().get(joint).norm();
        JointPlan plan = mechanism.joints().get(joint);
        if (!drive.paired(plan.name())) {
            return all;
        }
        int body = plan.a() == 0 || plan.a() == mechanism.tank() ? plan.b() : plan.a();
        return all / 2 + extra(body, pose, balance);
    }

    /** By how much the side of a link that bears more passes half, N. */
    double extra(int body, Pose pose, Balance balance) {
        if (main == mechanism.tank()) {
            return 0;
        }
        Vec2 one = balance.bearings().get(0).xy();
        Vec2 two = balance.bearings().get(1).xy();
        Vec2 twist = two.minus(one);
        double own = Math.max(one.norm(), two.norm()) - one.plus(two).norm() / 2;
        double shared = Math.abs(share(body, pose, twist)) / 2;
        return body == main ? Math.max(own, shared) : shared;
    }

    /** The twist along a link, N; all of it where it cannot be told. */
    private double share(int body, Pose pose, Vec2 twist) {
        Vec2 first = along(main, pose);
        Vec2 other = along(body == main ? second : body, pose);
        if (first == null || other == null || mechanism.actuatorTo() != mechanism.tank()) {
            return twist.norm();
        }
        double sine = first.cross(other);
        if (Math.abs(sine) < PARALLEL) {
            return twist.norm();
        }
        return body == main ? twist.cross(other) / sine : first.cross(twist) / sine;
    }

    /** The first link beside those on the bearings that is made twice at every pin; -1 when there is none. */
    private int second() {
        for (LinkPlan link : mechanism.links()) {
            boolean twice = mechanism.joints().stream()
                    .filter(j -> j.a() == link.body() || j.b() == link.body())
                    .allMatch(j -> drive.paired(j.name()));
            if (link.body() != main && twice) {
                return link.body();
            }
        }
        return -1;
    }

    private @Nullable Vec2 along(int body, Pose pose) {
        LinkPlan link = body < 0 ? null : mechanism.link(body);
        if (link == null) {
            return null;
        }
        BodyPosition placed = pose.bodies().get(body);
        return placed.place(link.other()).minus(placed.place(link.end())).unit();
    }
}
