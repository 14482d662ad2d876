// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * Solves the balance of one configuration after another for any number of loads: clear, add loads, solve, read. Mutable: owned by one
 * caller at a time; solving allocates nothing.
 *
 * <p>Source: principle of virtual work with Lagrange multipliers, Jacobian^T lambda = -Q (any text on multibody statics; from
 * memory).
 */
public final class ReactionSolver {
    private final Equations equations;
    private final Workspace space;
    private final double[] q;
    private final double[] sense;
    private double senseA;
    private double senseB;
    private double ux;
    private double uy;
    private double length;
    private boolean solvable;

    ReactionSolver(Equations equations) {
        this.equations = equations;
        this.space = new Workspace(equations.unknowns);
        this.q = new double[equations.unknowns];
        this.sense = new double[equations.hinges.length];
    }

    /** Takes another configuration of the same linkage; false when it has no balance: no arm, or jammed. */
    public boolean moveTo(Configuration configuration) {
        for (int i = 0; i < q.length; i++) {
            q[i] = configuration.q()[i] / (i % 3 == 2 ? 1 : equations.size);
        }
        equations.jacobian(q, true, space);
        solvable = space.factorTransposed();
        for (int i = 0; i < sense.length; i++) {
            sense[i] = Math.signum(
                    configuration.jointRate(equations.skeleton.joints().get(i)));
        }
        Strut strut = equations.skeleton.actuator();
        double line = configuration.lineRate(strut);
        senseA = Math.signum(configuration.turnRate(strut.a()) - line);
        senseB = Math.signum(configuration.turnRate(strut.b()) - line);
        ux = configuration.line().x();
        uy = configuration.line().y();
        length = configuration.length();
        return solvable;
    }

    /** Takes all loads off. */
    public void clear() {
        space.right.zero();
    }

    /**
     * Adds a force on a body.
     *
     * @param x where it acts, a point of the body as stowed, m
     * @param y where it acts, m
     * @param fx in space, N
     * @param fy in space, N
     */
    public void push(int body, double x, double y, double fx, double fy) {
        double k = 1 / equations.size;
        forceAt(body, space.x(q, body, x * k, y * k), space.y(q, body, x * k, y * k), fx, fy);
    }

    /** Adds a moment on a body, N m, positive clockwise. */
    public void turn(int body, double moment) {
        if (body != 0) {
            space.right.data[3 * body - 1] -= moment / equations.size;
        }
    }

    /**
     * Adds friction, as signed amounts against the motion while tipping: positive brakes the tipping, negative brakes the way
     * back.
     *
     * @param joints N m at pins, N at slides [joint]; not modified
     * @param onA N m in the actuator's pin on body a
     * @param onB N m in the actuator's pin on body b
     */
    public void drag(double[] joints, double onA, double onB) {
        for (int i = 0; i < joints.length; i++) {
            Equations.Hinge h = equations.hinges[i];
            double f = sense[i] * joints[i];
            if (h.slide()) {
                double x = space.x(q, h.b(), h.x(), h.y());
                double y = space.y(q, h.b(), h.x(), h.y());
                double fx = f * space.turnedX(h.a(), h);
                double fy = f * space.turnedY(h.a(), h);
                forceAt(h.b(), x, y, -fx, -fy);
                forceAt(h.a(), x, y, fx, fy);
            } else {
                turn(h.b(), -f);
                turn(h.a(), f);
            }
        }
        endDrag(equations.endA.a(), onA * senseA);
        endDrag(equations.endB.b(), onB * senseB);
    }

    /** Moment on a body from an end pin of the actuator; the actuator hands it on as a pair of forces across its line. */
    private void endDrag(int body, double moment) {
        turn(body, -moment);
        double across = moment / length;
        Equations.Hinge a = equations.endA;
        Equations.Hinge b = equations.endB;
        double fx = uy * across;
        double fy = -ux * across;
        forceAt(b.b(), space.x(q, b.b(), b.x(), b.y()), space.y(q, b.b(), b.x(), b.y()), fx, fy);
        forceAt(a.a(), space.x(q, a.a(), a.x(), a.y()), space.y(q, a.a(), a.x(), a.y()), -fx, -fy);
    }

    /** Adds a force at a place in units of size; moments over the size, as the coordinates are scaled. */
    private void forceAt(int body, double x, double y, double fx, double fy) {
        if (body == 0) {
            return;
        }
        int i = 3 * (body - 1);
        space.right.data[i] -= fx;
        space.right.data[i + 1] -= fy;
        space.right.data[i + 2] -= fx * (y - q[i + 1]) - fy * (x - q[i]);
    }

    /** Finds the forces that balance the loads; false when there are none: no arm, or jammed. */
    public boolean solve() {
        return solvable && space.backSolve();
    }

    /** How many numbers describe the forces found: two a joint, and the actuator's. */
    public int size() {
        return space.answer.numRows;
    }

    /** Copies the forces found last, to be combined later at the same configuration; out is overwritten [size]. */
    public void keep(double[] out) {
        System.arraycopy(space.answer.data, 0, out, 0, out.length);
    }

    /**
     * Takes a sum of forces found before at this configuration as those found last: balance is linear in the loads.
     *
     * @param base [size]; not modified
     * @param parts [part][size]; not modified
     * @param shares of each part; not modified
     */
    public void combine(double[] base, double[][] parts, double[] shares) {
        double[] sum = space.answer.data;
        System.arraycopy(base, 0, sum, 0, base.length);
        for (int k = 0; k < shares.length; k++) {
            double share = shares[k];
            double[] part = parts[k];
            for (int i = 0; i < part.length; i++) {
                sum[i] += share * part[i];
            }
        }
    }

    /** Force of the actuator, N; positive pushes its pins apart. */
    public double force() {
        return space.answer.data[2 * sense.length];
    }

    /** Force of body b on body a at a joint, along x, N. */
    public double jointX(int joint) {
        Equations.Hinge h = equations.hinges[joint];
        double[] l = space.answer.data;
        return h.slide() ? -space.turnedY(h.a(), h) * l[2 * joint + 1] : l[2 * joint];
    }

    /** Force of body b on body a at a joint, along y, N. */
    public double jointY(int joint) {
        Equations.Hinge h = equations.hinges[joint];
        double[] l = space.answer.data;
        return h.slide() ? space.turnedX(h.a(), h) * l[2 * joint + 1] : l[2 * joint + 1];
    }

    /** Moment of body b on body a at a slide, N m, positive clockwise; 0 at pins. */
    public double couple(int joint) {
        return equations.hinges[joint].slide() ? space.answer.data[2 * joint] * equations.size : 0;
    }

    /**
     * Forces in balance with the pushes.
     *
     * @param drag friction; null: none
     * @return null when the balance is singular: no arm, or jammed
     */
    public @Nullable Reactions reactions(List<Push> pushes, @Nullable Drag drag) {
        clear();
        for (Push p : pushes) {
            push(p.body(), p.at().x(), p.at().y(), p.force().x(), p.force().y());
        }
        if (drag != null) {
            drag(drag.joints(), drag.onA(), drag.onB());
        }
        return solve() ? read() : null;
    }

    /** The forces found last. */
    public Reactions read() {
        List<Vec2> forces = new ArrayList<>(sense.length);
        List<Double> couples = new ArrayList<>(sense.length);
        for (int i = 0; i < sense.length; i++) {
            forces.add(new Vec2(jointX(i), jointY(i)));
            couples.add(couple(i));
        }
        return new Reactions(force(), forces, couples);
    }
}
