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
 * Watches one value during the integration and acts when it passes zero.
 *
 * @param value of a state
 * @param rising whether to act on the way up; else on the way down
 * @param act told the state; says what the integrator does
 */
record Watch(ToDoubleFunction<double[]> value, boolean rising, double interval, Act act) implements ODEEventDetector {
    private static final double CLOSE = 1e-9;

    /** What to do. */
    interface Act {
        Action at(double time, double[] state);
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
        return value.applyAsDouble(state.getPrimaryState());
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) ->
                increasing == rising ? act.at(state.getTime(), state.getPrimaryState()) : Action.CONTINUE;
    }
}
