// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/**
 * Watches one value during the integration and acts once, when it passes zero.
 *
 * <p>What has happened is watched no longer: a value that rests at zero afterwards, such as a tank that has run dry, would be found
 * to pass it again and again. A watch that is off stays on the side of zero on which the integrator believes it to be, so that no
 * passing is seen in the switching off itself. A workspace for one leg.
 */
final class Watch implements ODEEventDetector {
    private static final double CLOSE = 1e-9;

    private final ToDoubleFunction<double[]> value;
    private final boolean rising;
    private final double interval;
    private final Act act;
    private final Effort effort;
    private boolean off;
    /** 1 or -1; 0: not known yet. */
    private double side;

    /** What to do. */
    interface Act {
        Action at(double time, double[] state);
    }

    /**
     * A watch that is on.
     *
     * @param value of a state
     * @param rising whether to act on the way up; else on the way down
     * @param interval at which it is looked at, s
     * @param act told the state; says what the integrator does
     */
    Watch(ToDoubleFunction<double[]> value, boolean rising, double interval, Act act, Effort effort) {
        this.value = value;
        this.rising = rising;
        this.interval = interval;
        this.act = act;
        this.effort = effort;
    }

    void switchOff() {
        off = true;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(interval);
    }

    @Override
    public int getMaxIterationCount() {
        return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return new BracketingNthOrderBrentSolver(0, CLOSE, 0, 5);
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        double[] y = state.getPrimaryState();
        effort.count(state.getTime(), y[Leg.TILT]);
        if (off && side != 0) {
            return side;
        }
        double now = value.applyAsDouble(y);
        if (side == 0 && now != 0) {
            side = now > 0 ? 1 : -1;
        }
        return now;
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> {
            side = increasing ? 1 : -1;
            if (off || increasing != rising) {
                return Action.CONTINUE;
            }
            switchOff();
            return act.at(state.getTime(), state.getPrimaryState());
        };
    }
}
