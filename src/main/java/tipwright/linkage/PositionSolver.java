// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * Follows the bodies from tilt to tilt: Euler prediction, Newton correction, steps that halve on failure. Mutable: owned by one
 * sweep.
 */
final class PositionSolver {
    private static final double SMALLEST_STEP = 1e-10;
    private static final int MOST_STEPS = 10_000;
    private static final double JAMMED = 1e-5;
    private static final int ITERATIONS = 12;

    private final Equations equations;
    private final Workspace space;
    private final double[] predicted;
    private double[] trial;
    private double[] q;
    private double[] rates;
    private double tilt;
    private double handedness;

    PositionSolver(Equations equations) {
        this.equations = equations;
        this.space = new Workspace(equations.unknowns);
        this.q = new double[equations.unknowns];
        this.trial = new double[equations.unknowns];
        this.predicted = new double[equations.unknowns];
        this.rates = new double[equations.unknowns];
        start();
    }

    /** Goes to the stowed position. */
    void start() {
        tilt = 0;
        Arrays.fill(q, 0);
        equations.jacobian(q, false, space);
        boolean solvable = space.factor();
        handedness = space.handedness();
        if (solvable) {
            takeRates();
        }
    }

    /** Restores an earlier configuration. */
    void restart(Configuration from) {
        tilt = from.tilt();
        for (int i = 0; i < q.length; i++) {
            double scale = i % 3 == 2 ? 1 : equations.size;
            q[i] = from.q()[i] / scale;
            rates[i] = from.rates()[i] / scale;
        }
    }

    /** Moves on to a tilt; null when it gets there, else why not and how far it got. */
    @Nullable
    SweepStop moveTo(double goal) {
        double step = goal - tilt;
        for (int i = 0; tilt < goal; i++) {
            if (i == MOST_STEPS) {
                return new SweepStop(SweepStop.Kind.NOT_FOLLOWED, tilt);
            }
            double next = step >= goal - tilt ? goal : tilt + step;
            if (step(next)) {
                tilt = next;
                continue;
            }
            step = 0.5 * (next - tilt);
            if (step < SMALLEST_STEP) {
                equations.jacobian(q, false, space);
                boolean jammed = space.condition() < Math.sqrt(JAMMED);
                return new SweepStop(jammed ? SweepStop.Kind.JAMMED : SweepStop.Kind.BRANCH_JUMP, tilt);
            }
        }
        return null;
    }

    private boolean step(double next) {
        double h = next - tilt;
        double travel = h;
        for (int i = 0; i < trial.length; i++) {
            trial[i] = q[i] + h * rates[i];
            predicted[i] = trial[i];
            travel = Math.max(travel, Math.abs(h * rates[i]));
        }
        if (travel > 0.35 || !newton(next)) {
            return false;
        }
        double off = 0;
        for (int i = 0; i < trial.length; i++) {
            off = Math.max(off, Math.abs(trial[i] - predicted[i]));
        }
        equations.jacobian(trial, false, space);
        boolean solvable = space.factor();
        if (off > 0.5 * travel + 1e-12 || space.handedness() != handedness || !solvable || !takeRates()) {
            return false;
        }
        double[] reached = trial;
        trial = q;
        q = reached;
        return true;
    }

    /** Newton's method on the trial. */
    private boolean newton(double goal) {
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ITERATIONS; i++) {
            equations.residuals(trial, goal, space);
            double worst = 0;
            for (double r : space.residual) {
                worst = Math.max(worst, Math.abs(r));
            }
            if (worst < 1e-15 || (worst < 1e-13 && worst >= before)) {
                return true;
            }
            before = worst;
            equations.jacobian(trial, false, space);
            for (int k = 0; k < trial.length; k++) {
                space.right.data[k] = -space.residual[k];
            }
            if (!space.factor() || !space.backSolve()) {
                return false;
            }
            for (int k = 0; k < trial.length; k++) {
                trial[k] += space.answer.data[k];
            }
        }
        return before < 1e-12;
    }

    /** Rates where the space was factored last; leaves them as they are on failure. */
    private boolean takeRates() {
        space.right.zero();
        space.right.data[rates.length - 1] = 1;
        if (!space.backSolve()) {
            return false;
        }
        System.arraycopy(space.answer.data, 0, rates, 0, rates.length);
        return true;
    }

    /** The configuration reached, in metres. */
    Configuration configuration() {
        int n = q.length;
        double size = equations.size;
        double[] place = new double[n];
        double[] rate = new double[n];
        for (int i = 0; i < n; i++) {
            double scale = i % 3 == 2 ? 1 : size;
            place[i] = q[i] * scale;
            rate[i] = rates[i] * scale;
        }
        Strut strut = equations.skeleton.actuator();
        space.turnTo(q);
        Equations.Hinge endA = equations.endA;
        Equations.Hinge endB = equations.endB;
        Vec2 a = new Vec2(space.x(q, endA.a(), endA.x(), endA.y()), space.y(q, endA.a(), endA.x(), endA.y()))
                .times(size);
        Vec2 b = new Vec2(space.x(q, endB.b(), endB.x(), endB.y()), space.y(q, endB.b(), endB.x(), endB.y()))
                .times(size);
        Configuration bare =
                new Configuration(tilt, place, rate, a, b, b.minus(a).norm(), 0, 0);
        Vec2 relative = bare.velocity(strut.b(), strut.onB()).minus(bare.velocity(strut.a(), strut.onA()));
        return new Configuration(tilt, place, rate, a, b, bare.length(), relative.dot(bare.line()), relative.norm());
    }
}
