// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.PlacedActuator;
import tipwright.design.Support;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Drag;
import tipwright.linkage.Joint;
import tipwright.linkage.Linkage;
import tipwright.linkage.Posture;
import tipwright.linkage.Push;
import tipwright.linkage.Reactions;
import tipwright.linkage.Reactor;
import tipwright.linkage.Skeleton;

/**
 * Finds the balance of a load at one posture: at rest without friction, and in slow motion with friction against it.
 *
 * <p>Friction moment of a pin: mu R d/2; it depends on the reactions, which depend on it, so it is found by repetition. Source:
 * Coulomb friction in a journal, any text on statics (from memory).
 */
final class Balancer {
    private static final int REPEATS = 60;
    private static final double CLOSE = 1e-11;

    private final Design design;
    private final Skeleton skeleton;
    private final int pivotJoint;
    private final BearingSplit split;
    private final double driveZ;
    private final double[] bearingRadius;
    private final PinFriction pins;

    private final Reactor reactor;
    private final Posture posture;

    private Balancer(Balancer common, Linkage linkage, Posture posture) {
        this.design = common.design;
        this.skeleton = common.skeleton;
        this.pivotJoint = common.pivotJoint;
        this.split = common.split;
        this.driveZ = common.driveZ;
        this.bearingRadius = common.bearingRadius;
        this.pins = common.pins;
        this.posture = posture;
        this.reactor = linkage.reactor(posture);
    }

    Balancer(Design design, Linkage linkage, Posture posture) {
        this.design = design;
        this.skeleton = linkage.skeleton();
        this.pivotJoint = pivotJoint(skeleton);
        this.split = new BearingSplit(design.pivot());
        this.driveZ = design.drive().actuators().stream()
                .mapToDouble(PlacedActuator::z)
                .average()
                .orElse(0);
        this.bearingRadius = design.pivot().bearings().stream()
                .mapToDouble(s -> frictionRadius(design, s))
                .toArray();
        this.pins = PinFriction.of(design);
        this.posture = posture;
        this.reactor = linkage.reactor(posture);
    }

    /** The same design at another posture. */
    Balancer at(Linkage linkage, Posture other) {
        return new Balancer(this, linkage, other);
    }

    private static int pivotJoint(Skeleton skeleton) {
        for (int i = 0; i < skeleton.joints().size(); i++) {
            if (skeleton.joints().get(i).name().equals(Skeleton.PIVOT)) {
                return i;
            }
        }
        return -1;
    }

    private static double frictionRadius(Design design, Support s) {
        Double given = design.friction().pivot();
        double mu = given == null ? s.bearing().usualFriction() : given;
        return mu * s.bearing().bore() / 2;
    }

    /** Where all that turns has its centroid in space, m. */
    Vec3 place(Vec3 stowed) {
        Vec2 p = posture.place(skeleton.tank(), stowed.xy());
        return new Vec3(p.x(), p.y(), stowed.z());
    }

    /**
     * Balance of a load.
     *
     * @param mass kg
     * @param stowed its centroid in the tank's axes, m
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     * @return null when the linkage has no balance here, or when friction alone locks it
     */
    @Nullable
    Balance balance(double mass, Vec3 stowed, int sense) {
        Vec3 weight = design.site().up().times(-mass * Gravity.G);
        List<Push> pushes = List.of(new Push(skeleton.tank(), stowed.xy(), weight.xy()));
        Balance now = balance(pushes, weight, stowed, null);
        if (sense == 0 || now == null) {
            return now;
        }
        double[] moments = new double[skeleton.joints().size()];
        for (int i = 0; i < REPEATS; i++) {
            for (int k = 0; k < moments.length; k++) {
                moments[k] = sense * (k == pivotJoint ? bearingMoment(now) : 0);
            }
            double f = sense * Math.abs(now.force());
            Balance next = balance(pushes, weight, stowed, new Drag(moments, f * pins.framePin(), f * pins.tankPin()));
            if (next == null || !Double.isFinite(next.force())) {
                return null;
            }
            double change = Math.abs(next.force() - now.force());
            now = next;
            if (change <= CLOSE * (Math.abs(now.force()) + weight.norm())) {
                return now;
            }
        }
        return null;
    }

    private double bearingMoment(Balance now) {
        double moment = 0;
        for (int i = 0; i < bearingRadius.length; i++) {
            moment += bearingRadius[i] * now.bearings().get(i).xy().norm();
        }
        return moment;
    }

    private @Nullable Balance balance(List<Push> pushes, Vec3 weight, Vec3 stowed, @Nullable Drag drag) {
        Reactions reactions = reactor.reactions(pushes, drag);
        if (reactions == null || pivotJoint < 0) {
            return null;
        }
        Joint pivot = skeleton.joints().get(pivotJoint);
        Vec2 on = reactions.joints().get(pivotJoint).times(pivot.b() == skeleton.tank() ? 1 : -1);
        Vec2 pin = posture.onB();
        List<Vec3> bearings = split.loads(on, weight, place(stowed), new Vec3(pin.x(), pin.y(), driveZ));
        return new Balance(reactions.force(), on, bearings);
    }
}
