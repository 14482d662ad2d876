// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * One leg of a dump as an ordinary differential equation in tilt, volume, work, energy drawn and share of the on-time: d tilt / dt =
 * v / |dL/dtilt|, dV/dt = -Q. A workspace for one run.
 *
 * <p>Share of the heat that the rated duty allows: the duty is taken over ten minutes, so running at the rated current uses it up in
 * duty x 600 s; heat goes with the square of the current. Nothing cools within a dump. Source: duty type S3 of IEC 60034-1, ten minutes (from memory); Dormand and
 * Prince, order 5(4).
 */
final class Leg implements OrdinaryDifferentialEquation {
    static final int TILT = 0;
    static final int VOLUME = 1;
    static final int WORK = 2;
    static final int ENERGY = 3;
    static final int DUTY = 4;
    static final int SIZE = 5;

    static final double DUTY_TIME = 600;
    /** Longest time that is followed, s. */
    static final double LONGEST = 86_400;

    private static final int PARTS = 4;
    /** On the volume: where the outflow follows the lip, the method's own estimate of its error is far too small. */
    private static final double SHARP = 0.1;

    /** Work and energy over the tolerance, J. */
    private static final double JOULE = 1e4;

    private static final double SHORTEST = 1e-6;

    private final Machine machine;
    private final LinkageCurve mechanism;
    private final Effort effort;
    private final Load load;
    private final Moment.Phase phase;
    private final List<Moment> moments = new ArrayList<>();
    private Now now = new Now(
            Double.NaN, Double.NaN, new Load.Standing(0, 0, 0, 0, 0, Double.NaN), DriveState.moving(0, 0), 0, 0);

    Leg(Machine machine, LinkageCurve mechanism, Effort effort, Load load, Moment.Phase phase) {
        this.machine = machine;
        this.mechanism = mechanism;
        this.effort = effort;
        this.load = load;
        this.phase = phase;
    }

    /** All that follows from tilt and volume. */
    record Now(double tilt, double volume, Load.Standing standing, DriveState draw, double against, double tiltRate) {
        double discharge(Load load) {
            return standing.discharge() + load.slide(tilt) * Math.max(0, tiltRate);
        }
    }

    Now now(double[] y) {
        if (now.tilt() != y[TILT] || now.volume() != y[VOLUME]) {
            now = at(y[TILT], y[VOLUME]);
        }
        return now;
    }

    private Now at(double tilt, double volume) {
        Load.Standing standing = load.at(tilt, volume);
        if (phase == Moment.Phase.HOLD) {
            return new Now(tilt, volume, standing, DriveState.moving(0, 0), 0, 0);
        }
        boolean raising = phase == Moment.Phase.RAISE;
        int way = raising ? mechanism.way() : -mechanism.way();
        double against = way * standing.force();
        DriveState draw = machine.draw(mechanism.length(tilt), against, way > 0, raising);
        double rate = draw.speed() / Math.abs(mechanism.arm(tilt));
        return new Now(tilt, volume, standing, draw, against, raising ? rate : -rate);
    }

    @Override
    public int getDimension() {
        return SIZE;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
        effort.count(t, y[TILT]);
        Now n = now(y);
        double heat = phase == Moment.Phase.HOLD || Double.isInfinite(machine.duty())
                ? 0
                : machine.heating(n.draw()) / (machine.duty() * DUTY_TIME);
        return new double[] {
            n.tiltRate(),
            -n.standing().discharge(),
            Math.max(0, n.against()) * n.draw().speed(),
            n.draw().power(),
            heat
        };
    }

    /** Speed of the rod as a share of its free speed. */
    double pace(double[] y) {
        return now(y).draw().speed() / machine.freeSpeed();
    }

    /**
     * Runs until a watch stops it or {@link #LONGEST} is over.
     *
     * @param longestStep s
     */
    State run(State from, double tolerance, double longestStep, List<Watch> watches) {
        double scale = Math.max(1e-6, from.y()[VOLUME]);
        double[] absolute = {tolerance, SHARP * tolerance * scale, JOULE * tolerance, JOULE * tolerance, 1e-3};
        double[] relative = {tolerance, SHARP * tolerance, tolerance, tolerance, tolerance};
        ODEIntegrator integrator = new DormandPrince54Integrator(1e-9, longestStep, absolute, relative);
        watches.forEach(integrator::addEventDetector);
        moments.add(moment(from.time(), from.y()));
        integrator.addStepHandler(this::record);
        ODEStateAndDerivative end =
                integrator.integrate(this, new ODEState(from.time(), from.y().clone()), from.time() + LONGEST);
        return new State(end.getTime(), end.getPrimaryState());
    }

    /**
     * Where a leg begins or ends.
     *
     * @param time s
     * @param y in the order of the constants
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    record State(double time, double[] y) {
        double tilt() {
            return y[TILT];
        }

        double volume() {
            return y[VOLUME];
        }

        State after(double wait) {
            return new State(time + wait, y.clone());
        }
    }

    private void record(ODEStateInterpolator step) {
        double from = step.getPreviousState().getTime();
        double to = step.getCurrentState().getTime();
        for (int i = 1; i <= PARTS; i++) {
            double t = i == PARTS ? to : from + (to - from) * i / PARTS;
            if (t > moments.get(moments.size() - 1).time() + SHORTEST) {
                moments.add(moment(t, step.getInterpolatedState(t).getPrimaryState()));
            }
        }
    }

    Moment moment(double time, double[] y) {
        Now n = now(y);
        return new Moment(
                phase,
                time,
                y[TILT],
                mechanism.length(y[TILT]),
                n.standing().volume(),
                n.standing().force(),
                n.discharge(load),
                n.standing().vacuum(),
                n.standing().level(),
                n.draw(),
                n.draw().speed() / machine.freeSpeed(),
                y[DUTY]);
    }

    List<Moment> moments() {
        return moments;
    }
}
