// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Bisection;

/** Position, rates and reactions of a skeleton. Immutable; every sweep owns its own workspace. */
public final class Linkage {
    private final Equations equations;

    private Linkage(Equations equations) {
        this.equations = equations;
    }

    /**
     * The linkage of a skeleton.
     *
     * @throws LinkageException when the joints do not leave exactly one freedom, or the actuator has no length
     */
    public static Linkage of(Skeleton skeleton) throws LinkageException {
        return new Linkage(new Equations(skeleton));
    }

    /** As drawn. */
    public Skeleton skeleton() {
        return equations.skeleton;
    }

    /**
     * The motion over rising tilts, continued from the stowed position (tilt 0) on the branch as drawn. It ends where the joints
     * jam, where the actuator loses its arm, or where only another branch would go on.
     *
     * @param tilts rad, rising
     */
    public Motion sweep(double[] tilts) {
        PositionSolver tracker = new PositionSolver(equations);
        List<Configuration> configurations = new ArrayList<>(tilts.length);
        double sense = 0;
        for (double tilt : tilts) {
            SweepStop sweepStop = tracker.moveTo(tilt);
            if (sweepStop != null) {
                boolean none = configurations.isEmpty();
                return new Motion(
                        configurations,
                        none ? new SweepStop(SweepStop.Kind.CANNOT_ASSEMBLE, sweepStop.tilt()) : sweepStop);
            }
            Configuration configuration = tracker.configuration();
            boolean dead = configuration.transmission() < 1e-7;
            double s = Math.signum(configuration.arm());
            if (dead || (sense != 0 && s != sense)) {
                double at = dead || configurations.isEmpty()
                        ? tilt
                        : deadCentre(configurations.get(configurations.size() - 1), tilt, sense);
                return new Motion(configurations, new SweepStop(SweepStop.Kind.DEAD_CENTRE, at));
            }
            sense = s;
            configurations.add(configuration);
        }
        return new Motion(configurations, null);
    }

    private double deadCentre(Configuration before, double after, double sense) {
        PositionSolver tracker = new PositionSolver(equations);
        return Bisection.between(before.tilt(), after, 1e-9, "the tilt of the dead centre, rad", middle -> {
                    tracker.restart(before);
                    return tracker.moveTo(middle) == null
                            && Math.signum(tracker.configuration().arm()) == sense;
                })
                .good();
    }

    /**
     * The forces that hold the bodies still (or in slow motion) under given pushes: Jacobian^T lambda = -Q, with the actuator's
     * length as the last constraint, so that its multiplier is the actuator's force.
     *
     * @param drag friction; null: none
     * @return null when the actuator has no arm or the joints are jammed
     */
    public @Nullable Reactions reactions(Configuration configuration, List<Push> pushes, @Nullable Drag drag) {
        return reactionSolver(configuration).reactions(pushes, drag);
    }

    /** Solver for one configuration after another, with no configuration taken yet; owned by one caller at a time. */
    public ReactionSolver reactionSolver() {
        return new ReactionSolver(equations);
    }

    /** Solver for one configuration, to be used for several loads; owned by one caller at a time. */
    public ReactionSolver reactionSolver(Configuration configuration) {
        ReactionSolver solver = reactionSolver();
        solver.moveTo(configuration);
        return solver;
    }

    /**
     * How far a configuration is from jamming: smallest over largest singular value of the constraint Jacobian with lengths in units of
     * the mechanism's size; 0: jammed.
     */
    public double condition(Configuration configuration) {
        Workspace space = new Workspace(equations.unknowns);
        double[] q = configuration.q().clone();
        for (int i = 0; i < q.length; i++) {
            q[i] /= i % 3 == 2 ? 1 : equations.size;
        }
        equations.jacobian(q, false, space);
        return space.condition();
    }
}
