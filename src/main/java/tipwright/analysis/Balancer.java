// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.PlacedActuator;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Linkage;
import tipwright.linkage.Posture;
import tipwright.linkage.Reactor;

/**
 * Finds the balance of a load at one posture after another: at rest without friction, and in slow motion with friction against
 * it. Mutable: owned by one analysis; finding a balance allocates nothing but its result.
 *
 * <p>Friction depends on the forces in the joints, which depend on it, so it is found by repetition. Bearing loads: the body on
 * the pivot is cut free there (the tank, or, when the pivot is the frame pin of a carrying link, all that moves) and the moments
 * out of the side view are borne by the two bearings alone; joints made twice act half way between the bearings, springs and
 * weights at their own z, all else in the plane of the actuators.
 */
final class Balancer {
    private static final int REPEATS = 60;
    private static final double CLOSE = 1e-11;

    private final Mechanism mechanism;
    private final Vec3 up;
    private final double driveZ;
    private final Assists assists;
    private final JointFriction friction;
    private final BearingSplit split;
    private final Reactor reactor;
    private final boolean[] carried;
    private final boolean[] paired;
    private final double pivotSense;
    private final double[] drag;
    private final double[] radial = new double[2];

    private @Nullable Posture posture;
    private List<List<Assists.Load>> standing = List.of();
    private double axisX;
    private double axisY;
    private double pivotX;
    private double pivotY;
    private double driveX;
    private double driveY;

    Balancer(Design design, Linkage linkage, Mechanism mechanism) {
        this.mechanism = mechanism;
        this.up = design.site().up();
        this.driveZ = design.drive().actuators().stream()
                .mapToDouble(PlacedActuator::z)
                .average()
                .orElse(0);
        this.assists = new Assists(design, linkage.skeleton());
        this.friction = new JointFriction(design, mechanism);
        this.split = new BearingSplit(design.pivot());
        this.reactor = linkage.reactor();
        this.drag = new double[mechanism.joints().size()];
        JointPlan pivot = mechanism.joints().get(mechanism.pivot());
        this.carried = new boolean[mechanism.bodies().size()];
        boolean tank = pivot.a() == mechanism.tank() || pivot.b() == mechanism.tank();
        for (int i = 1; i < carried.length; i++) {
            carried[i] = !tank || i == mechanism.tank();
        }
        this.pivotSense = carried[pivot.b()] ? 1 : -1;
        this.paired = new boolean[drag.length];
        for (int i = 0; i < paired.length; i++) {
            JointPlan j = mechanism.joints().get(i);
            paired[i] = i != mechanism.pivot()
                    && carried[j.a()] != carried[j.b()]
                    && design.drive().paired(j.name());
        }
    }

    /** Goes to a posture; false when nothing can be in balance there. */
    boolean moveTo(Posture next) {
        posture = next;
        standing = List.of(assists.at(next, -1), assists.at(next, 0), assists.at(next, 1));
        JointPlan pivot = mechanism.joints().get(mechanism.pivot());
        Vec2 axis = next.place(pivot.a(), pivot.at());
        axisX = axis.x();
        axisY = axis.y();
        return reactor.moveTo(next);
    }

    /**
     * Balance of a load on the tank.
     *
     * @param mass kg
     * @param stowed its centroid in the tank's axes, m
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     * @return null when the linkage has no balance here, or when friction alone locks it
     */
    @Nullable
    Balance balance(double mass, Vec3 stowed, int sense) {
        return solve(mass, stowed, sense) ? read() : null;
    }

    /** As balance, leaving the forces in the solver. */
    boolean solve(double mass, Vec3 stowed, int sense) {
        Posture here = posture;
        if (here == null) {
            return false;
        }
        double weight = mass * Gravity.G;
        if (!once(here, weight, stowed, sense, false)) {
            return false;
        }
        return sense == 0 || rub(here, weight, stowed, sense);
    }

    private boolean rub(Posture here, double weight, Vec3 stowed, int sense) {
        for (int i = 0; i < REPEATS; i++) {
            double before = reactor.force();
            if (!once(here, weight, stowed, sense, true)) {
                return false;
            }
            if (Math.abs(reactor.force() - before) <= CLOSE * (Math.abs(reactor.force()) + weight)) {
                return true;
            }
        }
        return false;
    }

    private boolean once(Posture here, double weight, Vec3 stowed, int sense, boolean rubbing) {
        if (rubbing) {
            friction.fill(reactor, radial, sense, drag);
        }
        double push = sense * Math.abs(reactor.force());
        double wx = -weight * up.x();
        double wy = -weight * up.y();
        reactor.clear();
        reactor.push(mechanism.tank(), stowed.x(), stowed.y(), wx, wy);
        List<Assists.Load> loads = standing.get(sense + 1);
        for (int i = 0; i < loads.size(); i++) {
            loads.get(i).on(reactor);
        }
        if (rubbing) {
            reactor.drag(drag, push * friction.framePin, push * friction.rodPin);
        }
        if (!reactor.solve()) {
            return false;
        }
        share(here, weight, stowed, loads);
        return Double.isFinite(reactor.force());
    }

    private void share(Posture here, double weight, Vec3 stowed, List<Assists.Load> loads) {
        pivotX = pivotSense * reactor.jointX(mechanism.pivot());
        pivotY = pivotSense * reactor.jointY(mechanism.pivot());
        split.start(axisX, axisY);
        Vec2 at = here.place(mechanism.tank(), stowed.xy());
        split.add(at.x(), at.y(), stowed.z(), -weight * up.x(), -weight * up.y(), -weight * up.z());
        for (int i = 0; i < loads.size(); i++) {
            Assists.Load load = loads.get(i);
            if (carried[load.body()]) {
                Vec2 p = here.place(load.body(), load.stowed().xy());
                Vec3 f = load.force();
                split.add(p.x(), p.y(), load.stowed().z(), f.x(), f.y(), f.z());
            }
        }
        for (int i = 0; i < paired.length; i++) {
            if (paired[i]) {
                double side = carried[mechanism.joints().get(i).b()] ? -1 : 1;
                split.add(axisX, axisY, split.middle(), side * reactor.jointX(i), side * reactor.jointY(i), 0);
            }
        }
        driveX = pivotX - split.x();
        driveY = pivotY - split.y();
        split.fillUp(pivotX, pivotY, driveZ);
        for (int k = 0; k < radial.length; k++) {
            radial[k] = Math.hypot(split.x(k), split.y(k));
        }
    }

    private Balance read() {
        List<Vec2> joints = new ArrayList<>(drag.length);
        List<Double> couples = new ArrayList<>(drag.length);
        for (int i = 0; i < drag.length; i++) {
            joints.add(new Vec2(reactor.jointX(i), reactor.jointY(i)));
            couples.add(reactor.couple(i));
        }
        List<Vec3> bearings =
                List.of(new Vec3(split.x(0), split.y(0), split.z(0)), new Vec3(split.x(1), split.y(1), split.z(1)));
        return new Balance(
                reactor.force(), new Vec2(pivotX, pivotY), bearings, new Vec2(driveX, driveY), joints, couples);
    }
}
