// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Finds the places that fit all readings best: least squares of (computed - measured) over the doubt. Source: C. D. Ghilani,
 * Adjustment Computations, chapters 14 (distances) and 21 (blunders); W. Baarda 1968, data snooping.
 */
public final class Adjustment {
    private static final int MOST_STEPS = 200;
    private static final double TIGHT = 1e-13;
    private static final int LAST_STEPS = 6;

    /** Singular values below this share of the largest count as none. */
    private static final double SINGULAR = 1e-9;

    private final List<Observation> observations;
    private final double[][] start;
    private final int[] slots;

    private Adjustment(double[][] start, boolean[][] free, List<Observation> observations) {
        this.observations = observations;
        this.start = start;
        int count = 0;
        int[] all = new int[3 * start.length];
        for (int i = 0; i < all.length; i++) {
            if (free[i / 3][i % 3]) {
                all[count++] = i;
            }
        }
        slots = java.util.Arrays.copyOf(all, count);
    }

    /**
     * Adjusts.
     *
     * @param start first guess and known places, points x 3, m
     * @param free which coordinates are looked for, points x 3
     * @param observations at least as many as coordinates are looked for
     * @throws WeakNetException when the readings leave a coordinate open, or nothing is found near the start
     */
    public static Adjusted solve(double[][] start, boolean[][] free, List<Observation> observations)
            throws WeakNetException {
        return new Adjustment(start, free, observations).run();
    }

    private Adjusted run() throws WeakNetException {
        if (slots.length == 0) {
            return answer(new double[0]);
        }
        double[] x = new double[slots.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = start[slots[i] / 3][slots[i] % 3];
        }
        try {
            return answer(polished(best(x)));
        } catch (MathRuntimeException lost) {
            throw new WeakNetException(-1, 0, 1);
        }
    }

    private double[] best(double[] x) {
        var problem = new LeastSquaresBuilder()
                .start(x)
                .target(new double[observations.size()])
                .model(point ->
                        new Pair<>(new ArrayRealVector(residuals(point.toArray()), false), jacobian(point.toArray())))
                .maxEvaluations(MOST_STEPS)
                .maxIterations(MOST_STEPS)
                .build();
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(TIGHT)
                .withParameterRelativeTolerance(TIGHT)
                .withOrthoTolerance(TIGHT)
                .optimize(problem)
                .getPoint()
                .toArray();
    }

    /** A few Newton steps on the spot, which bring the last digits. */
    private double[] polished(double[] x) throws WeakNetException {
        double[] at = x;
        for (int i = 0; i < LAST_STEPS; i++) {
            SingularValueDecomposition svd = decomposed(at);
            double[] step = svd.getSolver()
                    .solve(new ArrayRealVector(residuals(at), false))
                    .toArray();
            double[] next = at.clone();
            double size = 0;
            for (int j = 0; j < next.length; j++) {
                next[j] -= step[j];
                size = Math.max(size, Math.abs(step[j]));
            }
            if (!(cost(next) <= cost(at) * (1 + 1e-9) + 1e-18)) {
                return at;
            }
            at = next;
            if (size < 1e-14) {
                return at;
            }
        }
        return at;
    }

    private SingularValueDecomposition decomposed(double[] x) throws WeakNetException {
        SingularValueDecomposition svd = new SingularValueDecomposition(jacobian(x));
        double[] values = svd.getSingularValues();
        int last = slots.length - 1;
        if (values.length <= last || !(values[last] > SINGULAR * values[0])) {
            double[] weak = svd.getV().getColumn(last);
            int most = 0;
            for (int i = 1; i < weak.length; i++) {
                most = Math.abs(weak[i]) > Math.abs(weak[most]) ? i : most;
            }
            int point = slots[most] / 3;
            double[] direction = new double[3];
            for (int i = 0; i < weak.length; i++) {
                if (slots[i] / 3 == point) {
                    direction[slots[i] % 3] = weak[i];
                }
            }
            throw new WeakNetException(point, direction[0], direction[1]);
        }
        return svd;
    }

    private double cost(double[] x) {
        double sum = 0;
        for (double r : residuals(x)) {
            sum += r * r;
        }
        return sum;
    }

    private double[][] places(double[] x) {
        double[][] places = new double[start.length][];
        for (int i = 0; i < places.length; i++) {
            places[i] = start[i].clone();
        }
        for (int i = 0; i < x.length; i++) {
            places[slots[i] / 3][slots[i] % 3] = x[i];
        }
        return places;
    }

    /** (Computed - measured) / doubt. */
    private double[] residuals(double[] x) {
        double[][] places = places(x);
        double[] all = new double[observations.size()];
        for (int i = 0; i < all.length; i++) {
            Observation o = observations.get(i);
            all[i] = (o.computed(places) - o.measured()) / o.doubt();
        }
        return all;
    }

    private RealMatrix jacobian(double[] x) {
        double[][] places = places(x);
        double[][] rows = new double[observations.size()][slots.length];
        for (int i = 0; i < rows.length; i++) {
            Observation o = observations.get(i);
            double[][] by = new double[places.length][3];
            o.derivatives(places, by);
            for (int j = 0; j < slots.length; j++) {
                rows[i][j] = by[slots[j] / 3][slots[j] % 3] / o.doubt();
            }
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private Adjusted answer(double[] x) throws WeakNetException {
        double[][] places = places(x);
        int n = observations.size();
        double[][] covariance = new double[3 * start.length][3 * start.length];
        double[] misfit = new double[n];
        double[] redundancy = new double[n];
        double[] weighted = residuals(x);
        if (slots.length > 0) {
            SingularValueDecomposition svd = decomposed(x);
            RealMatrix cofactor = svd.getCovariance(0);
            RealMatrix rows = jacobian(x);
            RealMatrix hat = rows.multiply(cofactor).multiplyTransposed(rows);
            for (int i = 0; i < slots.length; i++) {
                for (int j = 0; j < slots.length; j++) {
                    covariance[slots[i]][slots[j]] = cofactor.getEntry(i, j);
                }
            }
            for (int i = 0; i < n; i++) {
                redundancy[i] = 1 - hat.getEntry(i, i);
            }
        }
        for (int i = 0; i < n; i++) {
            misfit[i] = weighted[i] * observations.get(i).doubt();
        }
        return new Adjusted(places, covariance, misfit, weighted, redundancy, n - slots.length);
    }
}
