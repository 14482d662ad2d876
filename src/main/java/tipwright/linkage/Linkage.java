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
        Tracker tracker = new Tracker(equations);
        List<Posture> postures = new ArrayList<>(tilts.length);
        double sense = 0;
        for (double tilt : tilts) {
            Halt halt = tracker.moveTo(tilt);
            if (halt != null) {
                boolean none = postures.isEmpty();
                return new Motion(postures, none ? new Halt(Halt.Kind.CANNOT_ASSEMBLE, halt.tilt()) : halt);
            }
            Posture posture = tracker.posture();
            boolean dead = posture.transmission() < 1e-7;
            double s = Math.signum(posture.arm());
            if (dead || (sense != 0 && s != sense)) {
                double at =
                        dead || postures.isEmpty() ? tilt : deadCentre(postures.get(postures.size() - 1), tilt, sense);
                return new Motion(postures, new Halt(Halt.Kind.DEAD_CENTRE, at));
            }
            sense = s;
            postures.add(posture);
        }
        return new Motion(postures, null);
    }

    private double deadCentre(Posture before, double after, double sense) {
        Tracker tracker = new Tracker(equations);
        return Bisection.between(before.tilt(), after, 1e-9, "the tilt of the dead centre, rad", middle -> {
                    tracker.restart(before);
                    return tracker.moveTo(middle) == null
                            && Math.signum(tracker.posture().arm()) == sense;
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
    public @Nullable Reactions reactions(Posture posture, List<Push> pushes, @Nullable Drag drag) {
        return reactor(posture).reactions(pushes, drag);
    }

    /** Solver for one posture after another, with no posture taken yet; owned by one caller at a time. */
    public Reactor reactor() {
        return new Reactor(equations);
    }

    /** Solver for one posture, to be used for several loads; owned by one caller at a time. */
    public Reactor reactor(Posture posture) {
        Reactor reactor = reactor();
        reactor.moveTo(posture);
        return reactor;
    }

    /**
     * How far a posture is from jamming: smallest over largest singular value of the constraint Jacobian with lengths in units of
     * the mechanism's size; 0: jammed.
     */
    public double condition(Posture posture) {
        Workspace space = new Workspace(equations.unknowns);
        double[] q = posture.q().clone();
        for (int i = 0; i < q.length; i++) {
            q[i] /= i % 3 == 2 ? 1 : equations.size;
        }
        equations.jacobian(q, false, space);
        return space.condition();
    }
}
