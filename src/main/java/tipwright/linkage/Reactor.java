// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * Solves the balance of one posture for any number of loads. Mutable inside: owned by one caller at a time.
 *
 * <p>Source: principle of virtual work with Lagrange multipliers, Jacobian^T lambda = -Q (any text on multibody statics; from
 * memory).
 */
public final class Reactor {
    private final Equations equations;
    private final Posture posture;
    private final double[] q;
    private final Workspace space;
    private final boolean solvable;

    Reactor(Equations equations, Posture posture) {
        this.equations = equations;
        this.posture = posture;
        this.q = posture.q().clone();
        for (int i = 0; i < q.length; i++) {
            q[i] /= i % 3 == 2 ? 1 : equations.size;
        }
        this.space = new Workspace(equations.unknowns);
        equations.jacobian(q, true, space.jacobian);
        this.solvable = space.factorTransposed();
    }

    /**
     * Forces in balance with the pushes.
     *
     * @param drag friction moments; null: none
     * @return null when the balance is singular: no arm, or jammed
     */
    public @Nullable Reactions reactions(List<Push> pushes, @Nullable Drag drag) {
        space.right.zero();
        for (Push p : pushes) {
            addForce(p.body(), p.at(), p.force(), -1);
        }
        if (drag != null) {
            addDrag(drag);
        }
        if (!solvable || !space.backSolve()) {
            return null;
        }
        int joints = equations.skeleton.joints().size();
        List<Vec2> forces = new ArrayList<>(joints);
        List<Double> couples = new ArrayList<>(joints);
        double[] l = space.answer.data;
        for (int i = 0; i < joints; i++) {
            Joint j = equations.skeleton.joints().get(i);
            if (j instanceof Joint.Slide slide) {
                Vec2 d = slide.direction().unit().tilted(posture.turn(j.a()));
                forces.add(new Vec2(-d.y(), d.x()).times(l[2 * i + 1]));
                couples.add(l[2 * i] * equations.size);
            } else {
                forces.add(new Vec2(l[2 * i], l[2 * i + 1]));
                couples.add(0.0);
            }
        }
        return new Reactions(l[2 * joints], forces, couples);
    }

    /** Adds factor times the generalised force of a push; moments over the size, as the coordinates are scaled. */
    private void addForce(int body, Vec2 stowed, Vec2 force, double factor) {
        if (body == 0) {
            return;
        }
        int i = 3 * (body - 1);
        Vec2 p = equations.place(q, body, stowed);
        space.right.data[i] += factor * force.x();
        space.right.data[i + 1] += factor * force.y();
        space.right.data[i + 2] += factor * (force.x() * (p.y() - q[i + 1]) - force.y() * (p.x() - q[i]));
    }

    private void addMoment(int body, double moment) {
        if (body != 0) {
            space.right.data[3 * (body - 1) + 2] -= moment / equations.size;
        }
    }

    private void addDrag(Drag drag) {
        List<Joint> joints = equations.skeleton.joints();
        for (int i = 0; i < joints.size(); i++) {
            Joint j = joints.get(i);
            if (j instanceof Joint.Pin) {
                double sense = Math.signum(posture.turnRate(j.b()) - posture.turnRate(j.a()));
                addMoment(j.b(), -sense * drag.joints()[i]);
                addMoment(j.a(), sense * drag.joints()[i]);
            }
        }
        Strut s = equations.skeleton.actuator();
        double line = posture.lineRate(s);
        addEndDrag(s, s.a(), drag.onA() * Math.signum(posture.turnRate(s.a()) - line));
        addEndDrag(s, s.b(), drag.onB() * Math.signum(posture.turnRate(s.b()) - line));
    }

    /** Moment on a body from an end pin of the actuator; the actuator hands it on as a pair of forces across its line. */
    private void addEndDrag(Strut s, int body, double moment) {
        addMoment(body, -moment);
        Vec2 u = posture.line();
        Vec2 across = new Vec2(u.y(), -u.x()).times(moment / posture.length());
        addForce(s.b(), s.onB(), across, -1);
        addForce(s.a(), s.onA(), across, 1);
    }
}
