// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Quadrature on [-1, 1] for integrands that may end in a square root at either end: x = sin t takes the root away, then
 * Gauss-Legendre in t.
 *
 * <p>Source: Gauss-Legendre nodes by Newton's method on the Legendre polynomial, Numerical Recipes 4.5 (from memory).
 */
final class Nodes {
    static final int COUNT = 16;

    private final double[] place = new double[COUNT];
    private final double[] weight = new double[COUNT];

    Nodes() {
        for (int i = 0; i < COUNT; i++) {
            double t = Math.cos(Math.PI * (i + 0.75) / (COUNT + 0.5));
            double slope = 0;
            for (int newton = 0; newton < 6; newton++) {
                double before = 0;
                double now = 1;
                for (int k = 1; k <= COUNT; k++) {
                    double older = before;
                    before = now;
                    now = ((2 * k - 1) * t * before - (k - 1) * older) / k;
                }
                slope = COUNT * (t * now - before) / (t * t - 1);
                t -= now / slope;
            }
            double angle = 0.5 * Math.PI * t;
            place[i] = Math.sin(angle);
            weight[i] = 0.5 * Math.PI * Math.cos(angle) * 2 / ((1 - t * t) * slope * slope);
        }
    }

    /** Node number i, in (-1, 1). */
    double place(int i) {
        return place[i];
    }

    /** Weight of node i; the weights add up to 2. */
    double weight(int i) {
        return weight[i];
    }
}
