// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.function.ToDoubleFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the least of a function within bounds, from a guess; the same for the same seed.
 *
 * <p>Method: CMA-ES (N. Hansen, The CMA Evolution Strategy: A Tutorial, 2016) as in Hipparchus.
 */
final class Evolution {
    private static final int SETTLED = 40;
    private static final double SAME = 1e-7;

    private Evolution() {}

    /**
     * The best point found; null when it never settled on one.
     *
     * @param guess first point, taken into the bounds
     * @param step how far to look around it at first, each coordinate at most its bounds apart
     * @param generations at most
     */
    static double @Nullable [] least(
            ToDoubleFunction<double[]> cost,
            double[] guess,
            double[] low,
            double[] high,
            double step,
            long seed,
            int generations) {
        double[] sigma = new double[low.length];
        double[] top = new double[low.length];
        double[] first = new double[low.length];
        for (int i = 0; i < low.length; i++) {
            top[i] = Math.max(high[i], low[i] + 1e-6);
            first[i] = Math.max(low[i], Math.min(top[i], guess[i]));
            sigma[i] = Math.min(step, top[i] - low[i]);
        }
        int family = 4 + 2 * low.length;
        CMAESOptimizer optimiser = new CMAESOptimizer(
                generations,
                0,
                true,
                0,
                0,
                new Well19937c(seed),
                false,
                (i, before, after) -> i > SETTLED && Math.abs(before.getValue() - after.getValue()) < SAME);
        try {
            return optimiser
                    .optimize(
                            new MaxEval((generations + 1) * family),
                            GoalType.MINIMIZE,
                            new ObjectiveFunction(cost::applyAsDouble),
                            new InitialGuess(first),
                            new SimpleBounds(low, top),
                            new CMAESOptimizer.Sigma(sigma),
                            new CMAESOptimizer.PopulationSize(family))
                    .getPoint();
        } catch (MathRuntimeException outOfTries) {
            return null;
        }
    }
}
