// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.ReactionSolver;
import tipwright.load.Gravity;

/**
 * Finds the balance of a load at one configuration after another: at rest without friction, and in slow motion with friction against
 * it. Mutable: owned by one analysis; finding a balance allocates nothing but its result.
 *
 * <p>Friction depends on the forces in the joints, which depend on it, so it is found by repetition. Bearing loads: the body on
 * the pivot is cut free there (the tank, or, when the pivot is the frame pin of a carrying link, all that moves) and the moments
 * out of the side view are borne by the two bearings alone; joints made twice act half way between the bearings, springs and
 * weights at their own z, all else in the plane of the actuators, or of the link that hands their force on
 * to the tank where that lies farther off.
 */
final class Balancer {
    private static final int REPEATS = 60;
    private static final double CLOSE = 1e-11;

    private final Mechanism mechanism;
    private final Vec3 up;
    private final List<PlacedActuator> actuators;
    private final @Nullable Double plane;
    private final Assists assists;
    private final @Nullable Wind wind;
    private final JointFriction friction;
    private final BearingSplit split;
    private final ReactionSolver solver;
    private final boolean[] carried;
    private final boolean[] paired;
    private final double pivotSense;
    private final double[] drag;
    private final double[] base;
    private final double[][] rubbing;
    private final double[] unit;
    private final double[] radial = new double[2];

    private @Nullable Configuration configuration;
    private List<List<Assists.Load>> standing = List.of();
    private double axisX;
    private double axisY;
    private double pivotX;
    private double pivotY;
    private double pushZ;
    private double pullZ;
    private double driveX;
    private double driveY;

    Balancer(Design design, Linkage linkage, Mechanism mechanism, @Nullable Wind wind) {
        this.wind = wind;
        this.mechanism = mechanism;
        this.up = design.site().up();
        this.actuators = design.drive().actuators();
        this.plane = LinkPlane.ofDrive(design, mechanism);
        this.assists = new Assists(design, linkage.skeleton());
        this.friction = new JointFriction(design, mechanism);
        this.split = new BearingSplit(design.pivot());
        this.solver = linkage.reactionSolver();
        this.unit = new double[mechanism.joints().size()];
        this.drag = new double[unit.length + 2];
        this.base = new double[solver.size()];
        this.rubbing = new double[drag.length][base.length];
        JointPlan pivot = mechanism.joints().get(mechanism.pivot());
        this.carried = new boolean[mechanism.bodies().size()];
        boolean tank = pivot.a() == mechanism.tank() || pivot.b() == mechanism.tank();
        for (int i = 1; i < carried.length; i++) {
            carried[i] = !tank || i == mechanism.tank();
        }
        this.pivotSense = mechanism.borne() == pivot.b() ? 1 : -1;
        this.paired = new boolean[unit.length];
        for (int i = 0; i < paired.length; i++) {
            JointPlan j = mechanism.joints().get(i);
            paired[i] = i != mechanism.pivot()
                    && carried[j.a()] != carried[j.b()]
                    && design.drive().paired(j.name());
        }
    }

    /** Goes to a configuration; false when nothing can be in balance there. */
    boolean moveTo(Configuration next) {
        configuration = next;
        pushZ = farther(Sharing.middle(actuators, next.length(), true));
        pullZ = farther(Sharing.middle(actuators, next.length(), false));
        standing = List.of(standing(next, -1), standing(next, 0), standing(next, 1));
        JointPlan pivot = mechanism.joints().get(mechanism.pivot());
        Vec2 axis = next.place(pivot.a(), pivot.at());
        axisX = axis.x();
        axisY = axis.y();
        return solver.moveTo(next) && findRubbing();
    }

    /**
     * Of the actuators' place along the pivot and that of the link that hands their force on to the tank, the one farther from the middle
     * of the bearings, m: a crank between them may pass its twist on.
     */
    private double farther(double actuators) {
        return plane == null || Math.abs(plane - split.middle()) < Math.abs(actuators - split.middle())
                ? actuators
                : plane;
    }

    /** Springs, weights and wind. */
    private List<Assists.Load> standing(Configuration next, int sense) {
        List<Assists.Load> own = assists.at(next, sense);
        if (wind == null) {
            return own;
        }
        List<Assists.Load> all = new ArrayList<>(own);
        all.add(wind.on(mechanism.tank(), next.turn(mechanism.tank())));
        return all;
    }

    /** What friction of one unit in each joint and in each end pin does; false when nothing can be in balance. */
    private boolean findRubbing() {
        for (int k = 0; k < rubbing.length; k++) {
            Arrays.fill(unit, 0);
            if (k < unit.length) {
                unit[k] = 1;
            }
            solver.clear();
            solver.drag(unit, k == unit.length ? 1 : 0, k == unit.length + 1 ? 1 : 0);
            if (!solver.solve()) {
                return false;
            }
            solver.keep(rubbing[k]);
        }
        return true;
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
        Configuration here = configuration;
        if (here == null) {
            return false;
        }
        double weight = mass * Gravity.G;
        if (!load(here, weight, stowed, sense)) {
            return false;
        }
        share();
        return sense == 0 || rub(weight, sense);
    }

    private boolean rub(double weight, int sense) {
        solver.keep(base);
        for (int i = 0; i < REPEATS; i++) {
            double before = solver.force();
            friction.fill(solver, radial, sense, drag);
            solver.combine(base, rubbing, drag);
            share();
            double force = solver.force();
            if (Math.abs(force - before) <= CLOSE * (Math.abs(force) + weight)) {
                return true;
            }
        }
        return false;
    }

    /** Balances tank, springs and weights without friction, and starts the sums for the bearings with them. */
    private boolean load(Configuration here, double weight, Vec3 stowed, int sense) {
        double wx = -weight * up.x();
        double wy = -weight * up.y();
        solver.clear();
        solver.push(mechanism.tank(), stowed.x(), stowed.y(), wx, wy);
        split.start(axisX, axisY);
        Vec2 at = here.place(mechanism.tank(), stowed.xy());
        split.add(at.x(), at.y(), stowed.z(), wx, wy, -weight * up.z());
        List<Assists.Load> loads = standing.get(sense + 1);
        for (int i = 0; i < loads.size(); i++) {
            Assists.Load load = loads.get(i);
            load.on(solver);
            if (carried[load.body()]) {
                Vec2 p = here.place(load.body(), load.stowed().xy());
                Vec3 f = load.force();
                split.add(p.x(), p.y(), load.stowed().z(), f.x(), f.y(), f.z());
            }
        }
        split.keep();
        return solver.solve();
    }

    /** Shares the forces found last between the bearings. */
    private void share() {
        pivotX = pivotSense * solver.jointX(mechanism.pivot());
        pivotY = pivotSense * solver.jointY(mechanism.pivot());
        split.goBack();
        for (int i = 0; i < paired.length; i++) {
            if (paired[i]) {
                double side = carried[mechanism.joints().get(i).b()] ? -1 : 1;
                split.add(axisX, axisY, split.middle(), side * solver.jointX(i), side * solver.jointY(i), 0);
            }
        }
        driveX = pivotX - split.x();
        driveY = pivotY - split.y();
        split.fillUp(pivotX, pivotY, solver.force() < 0 ? pullZ : pushZ);
        for (int k = 0; k < radial.length; k++) {
            double x = split.x(k);
            double y = split.y(k);
            radial[k] = Math.sqrt(x * x + y * y);
        }
    }

    private Balance read() {
        List<Vec2> joints = new ArrayList<>(unit.length);
        List<Double> couples = new ArrayList<>(unit.length);
        for (int i = 0; i < unit.length; i++) {
            joints.add(new Vec2(solver.jointX(i), solver.jointY(i)));
            couples.add(solver.couple(i));
        }
        List<Vec3> bearings =
                List.of(new Vec3(split.x(0), split.y(0), split.z(0)), new Vec3(split.x(1), split.y(1), split.z(1)));
        return new Balance(
                solver.force(), new Vec2(pivotX, pivotY), bearings, new Vec2(driveX, driveY), joints, couples);
    }
}
