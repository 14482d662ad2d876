// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;

/**
 * Whether a point is, nearly, a combination of others with shares of 0 or more.
 *
 * <p>The least sum of shares is reached with independent points only, so every small set of points is tried. Source: basic
 * solutions of a linear programme.
 */
final class Combination {
    private static final int MOST = 4;
    private static final double CLOSE = 1e-10;
    /** What is left over may be this part of what the shares leave free. */
    private static final double NEAR = 0.1;

    private Combination() {}

    /** Least sum of the shares, and what is left over counted as tenfold; infinite when it is no such combination. */
    static double least(List<double[]> points, double[] wanted) {
        double best = Double.POSITIVE_INFINITY;
        int sets = 1 << Math.min(points.size(), 10);
        for (int set = 1; set < sets; set++) {
            if (Integer.bitCount(set) <= MOST) {
                best = Math.min(best, sum(points, set, wanted));
            }
        }
        return best;
    }

    /** Orthogonalises the points of the set one after another and takes the wanted point apart. */
    private static double sum(List<double[]> points, int set, double[] wanted) {
        int n = Integer.bitCount(set);
        double[][] axis = new double[n][];
        double[][] upper = new double[n][n];
        double[] rest = wanted.clone();
        double[] along = new double[n];
        int c = 0;
        for (int i = 0; i < points.size(); i++) {
            if ((set >> i & 1) == 0) {
                continue;
            }
            double[] v = points.get(i).clone();
            double before = norm(v);
            for (int k = 0; k < c; k++) {
                upper[k][c] = dot(axis[k], v);
                subtract(v, axis[k], upper[k][c]);
            }
            upper[c][c] = norm(v);
            if (upper[c][c] <= 1e-9 * before) {
                return Double.POSITIVE_INFINITY;
            }
            for (int k = 0; k < v.length; k++) {
                v[k] /= upper[c][c];
            }
            axis[c] = v;
            along[c] = dot(v, rest);
            subtract(rest, v, along[c]);
            c++;
        }
        return shares(upper, along) + norm(rest) / (NEAR * norm(wanted));
    }

    private static double shares(double[][] upper, double[] along) {
        double sum = 0;
        double[] share = along.clone();
        for (int i = share.length - 1; i >= 0; i--) {
            for (int k = i + 1; k < share.length; k++) {
                share[i] -= upper[i][k] * share[k];
            }
            share[i] /= upper[i][i];
            if (share[i] < -CLOSE) {
                return Double.POSITIVE_INFINITY;
            }
            sum += share[i];
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double norm(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    private static void subtract(double[] from, double[] what, double times) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= times * what[i];
        }
    }
}
