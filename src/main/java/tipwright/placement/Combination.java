// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * Whether a point is, nearly, a combination of others with shares of 0 or more: a linear programme of the shares, and of the most
 * that is left over along an axis.
 */
final class Combination {
    /** What is left over may be this part of what the shares leave free. */
    private static final double NEAR = 0.1;

    private static final int STEPS = 1000;

    private Combination() {}

    /** Least sum of the shares, and what is left over, as a part of the point, counted as tenfold; infinite when none is found. */
    static double least(List<double[]> points, double[] wanted) {
        double size = Arrays.stream(wanted).map(Math::abs).max().orElse(0);
        if (!(size > 0)) {
            return 0;
        }
        double length =
                Math.sqrt(Arrays.stream(wanted).map(w -> w * w / (size * size)).sum());
        int shares = points.size();
        int axes = wanted.length;
        double[] cost = new double[shares + 1];
        Arrays.fill(cost, 0, shares, 1);
        cost[shares] = 1 / (NEAR * length);
        List<LinearConstraint> meets = new ArrayList<>(2 * axes);
        for (int axis = 0; axis < axes; axis++) {
            double[] over = new double[cost.length];
            double[] under = new double[cost.length];
            for (int i = 0; i < shares; i++) {
                over[i] = points.get(i)[axis] / size;
                under[i] = over[i];
            }
            over[shares] = 1;
            under[shares] = -1;
            meets.add(new LinearConstraint(over, Relationship.GEQ, wanted[axis] / size));
            meets.add(new LinearConstraint(under, Relationship.LEQ, wanted[axis] / size));
        }
        try {
            return new SimplexSolver()
                    .optimize(
                            new MaxIter(STEPS),
                            new LinearObjectiveFunction(cost, 0),
                            new LinearConstraintSet(meets),
                            GoalType.MINIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue();
        } catch (MathIllegalStateException stuck) {
            // a load that is not known to be a mix of others is kept
            return Double.POSITIVE_INFINITY;
        }
    }
}
