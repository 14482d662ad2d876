// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * Functions over -1..1 that keep to the edges of a wall: Legendre polynomials times (1 + x)^p (1 - x)^q, where p and q are 0 for a free
 * edge, 1 for a supported one and 2 for a clamped one. Their integrals are taken by Gauss's rule, exactly.
 */
final class EdgeFunctions {
    private final int low;
    private final int high;
    private final int[] degrees;

    /** @param evenOnly whether only polynomials of even degree take part (for what is alike on both sides) */
    EdgeFunctions(PlateUnderPressure.Edge low, PlateUnderPressure.Edge high, int count, boolean evenOnly) {
        this.low = low.order;
        this.high = high.order;
        degrees = new int[count];
        for (int i = 0; i < count; i++) {
            degrees[i] = evenOnly ? 2 * i : i;
        }
    }

    int count() {
        return degrees.length;
    }

    /** Values, first and second derivatives at a place: [3][function]. */
    double[][] at(double x) {
        int top = degrees[degrees.length - 1];
        double[][] p = legendre(x, top);
        double[] factor = factor(x);
        double[][] all = new double[3][degrees.length];
        for (int i = 0; i < degrees.length; i++) {
            int n = degrees[i];
            all[0][i] = factor[0] * p[0][n];
            all[1][i] = factor[1] * p[0][n] + factor[0] * p[1][n];
            all[2][i] = factor[2] * p[0][n] + 2 * factor[1] * p[1][n] + factor[0] * p[2][n];
        }
        return all;
    }

    /** (1 + x)^p (1 - x)^q and its two derivatives. */
    private double[] factor(double x) {
        double[] a = power(1 + x, low, 1);
        double[] b = power(1 - x, high, -1);
        return new double[] {a[0] * b[0], a[1] * b[0] + a[0] * b[1], a[2] * b[0] + 2 * a[1] * b[1] + a[0] * b[2]};
    }

    private static double[] power(double base, int exponent, int inner) {
        return switch (exponent) {
            case 0 -> new double[] {1, 0, 0};
            case 1 -> new double[] {base, inner, 0};
            default -> new double[] {base * base, 2 * inner * base, 2};
        };
    }

    private static double[][] legendre(double x, int top) {
        double[][] p = new double[3][top + 1];
        p[0][0] = 1;
        if (top > 0) {
            p[0][1] = x;
            p[1][1] = 1;
        }
        for (int n = 1; n < top; n++) {
            for (int d = 0; d < 3; d++) {
                double inner = d == 0 ? 0 : d * p[d - 1][n];
                p[d][n + 1] = ((2 * n + 1) * (x * p[d][n] + inner) - n * p[d][n - 1]) / (n + 1);
            }
        }
        return p;
    }

    /** Integrals over -1..1 of derivative a of function i times derivative b of function j: [i][j]. */
    double[][] products(int a, int b) {
        double[][] rule = gauss(degrees[degrees.length - 1] + 5);
        double[][] sum = new double[count()][count()];
        for (int g = 0; g < rule[0].length; g++) {
            double[][] f = at(rule[0][g]);
            for (int i = 0; i < count(); i++) {
                for (int j = 0; j < count(); j++) {
                    sum[i][j] += rule[1][g] * f[a][i] * f[b][j];
                }
            }
        }
        return sum;
    }

    /** Integrals over -1..1 of each function times (from (1 - x) + to (1 + x)) / 2. */
    double[] loads(double from, double to) {
        double[][] rule = gauss(degrees[degrees.length - 1] + 5);
        double[] sum = new double[count()];
        for (int g = 0; g < rule[0].length; g++) {
            double x = rule[0][g];
            double load = rule[1][g] * (from * (1 - x) + to * (1 + x)) / 2;
            double[] f = at(x)[0];
            for (int i = 0; i < count(); i++) {
                sum[i] += load * f[i];
            }
        }
        return sum;
    }

    /** Places and weights of Gauss's rule; Newton's steps from the usual first guess. */
    private static double[][] gauss(int points) {
        double[][] rule = new double[2][points];
        for (int i = 0; i < points; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (points + 0.5));
            for (int step = 0; step < 8; step++) {
                double[][] p = legendre(x, points);
                x -= p[0][points] / p[1][points];
            }
            double slope = legendre(x, points)[1][points];
            rule[0][i] = x;
            rule[1][i] = 2 / ((1 - x * x) * slope * slope);
        }
        return rule;
    }
}
