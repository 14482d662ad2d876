// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Ritz's method for a flat wall: the least energy of bending over sums of {@link EdgeFunctions} across and up the wall. Wall, edges
 * and pressure are alike left and right, so only even functions go across.
 *
 * <p>Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells (energy of bending, from memory).
 */
final class PlateSolver {
    private static final int ACROSS_POINTS = 25;
    private static final int UP_POINTS = 61;

    private final PlateUnderPressure plate;
    private final EdgeFunctions across;
    private final EdgeFunctions up;
    private final double sx;
    private final double sy;

    PlateSolver(PlateUnderPressure plate) {
        this.plate = plate;
        double ratio = plate.width() / plate.height();
        int most = 9 + (int) Math.ceil(1.5 * Math.max(ratio, 1 / ratio));
        across = new EdgeFunctions(plate.sides(), plate.sides(), ratio > 1 ? (most + 3) / 2 : 6, true);
        up = new EdgeFunctions(plate.bottom(), plate.top(), ratio < 1 ? most + 2 : 12, false);
        sx = 2 / plate.width();
        sy = 2 / plate.height();
    }

    PlateBending solve(double low, double high) {
        int n = across.count() * up.count();
        DMatrixRMaj stiffness = stiffness();
        double[] loadAcross = across.loads(1, 1);
        double[] loadUp = up.loads(low, high);
        DMatrixRMaj load = new DMatrixRMaj(n, 1);
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            scale[i] = 1 / Math.sqrt(stiffness.get(i, i));
            load.set(i, 0, scale[i] * loadAcross[i / up.count()] * loadUp[i % up.count()] / (sx * sy));
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                stiffness.set(i, j, stiffness.get(i, j) * scale[i] * scale[j]);
            }
        }
        DMatrixRMaj shape = new DMatrixRMaj(n, 1);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(n);
        if (!solver.setA(stiffness)) {
            throw new IllegalStateException("the wall's stiffness could not be inverted");
        }
        solver.solve(load, shape);
        for (int i = 0; i < n; i++) {
            shape.set(i, 0, scale[i] * shape.get(i, 0));
        }
        return greatest(shape);
    }

    private DMatrixRMaj stiffness() {
        double[][] x00 = across.products(0, 0);
        double[][] x11 = across.products(1, 1);
        double[][] x22 = across.products(2, 2);
        double[][] x02 = across.products(0, 2);
        double[][] y00 = up.products(0, 0);
        double[][] y11 = up.products(1, 1);
        double[][] y22 = up.products(2, 2);
        double[][] y02 = up.products(0, 2);
        double[] edge = up.at(1)[0];
        double d = plate.bendingStiffness();
        double nu = plate.poisson();
        double a = d * sx * sx * sx / sy;
        double b = d * sy * sy * sy / sx;
        double c = d * sx * sy;
        double rim = plate.rim() * sx * sx * sx;
        int m = up.count();
        int n = across.count() * m;
        DMatrixRMaj k = new DMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            int p = i / m;
            int q = i % m;
            for (int j = 0; j < n; j++) {
                int r = j / m;
                int s = j % m;
                double bent = a * x22[p][r] * y00[q][s] + b * x00[p][r] * y22[q][s];
                double mixed = nu * (x02[p][r] * y02[s][q] + x02[r][p] * y02[q][s]);
                double twisted = 2 * (1 - nu) * x11[p][r] * y11[q][s];
                k.set(i, j, bent + c * (mixed + twisted) + rim * x22[p][r] * edge[q] * edge[s]);
            }
        }
        return k;
    }

    private PlateBending greatest(DMatrixRMaj shape) {
        double direct = 0;
        double equivalent = 0;
        double moved = 0;
        double rimMoment = 0;
        double d = plate.bendingStiffness();
        double nu = plate.poisson();
        double section = 6 / (plate.thickness() * plate.thickness());
        double[][][] rows = new double[UP_POINTS][][];
        for (int j = 0; j < UP_POINTS; j++) {
            rows[j] = up.at(2.0 * j / (UP_POINTS - 1) - 1);
        }
        for (int i = 0; i < ACROSS_POINTS; i++) {
            double[][] f = across.at((double) i / (ACROSS_POINTS - 1));
            double[][] strip = strip(shape, f);
            for (int j = 0; j < UP_POINTS; j++) {
                double[][] g = rows[j];
                double wxx = sx * sx * dot(strip[2], g[0]);
                double wyy = sy * sy * dot(strip[0], g[2]);
                double mx = section * d * (wxx + nu * wyy);
                double my = section * d * (wyy + nu * wxx);
                double mxy = section * d * (1 - nu) * sx * sy * dot(strip[1], g[1]);
                direct = Math.max(direct, Math.max(Math.abs(mx), Math.abs(my)));
                equivalent = Math.max(equivalent, Math.sqrt(mx * mx - mx * my + my * my + 3 * mxy * mxy));
                moved = Math.max(moved, Math.abs(dot(strip[0], g[0])));
                if (j == UP_POINTS - 1) {
                    rimMoment = Math.max(rimMoment, plate.rim() * Math.abs(wxx));
                }
            }
        }
        return new PlateBending(direct, equivalent, moved, rimMoment, moved <= plate.thickness() / 2);
    }

    /** The shape summed across at one place: [derivative across][function up]. */
    private double[][] strip(DMatrixRMaj shape, double[][] f) {
        int m = up.count();
        double[][] strip = new double[3][m];
        for (int p = 0; p < across.count(); p++) {
            for (int q = 0; q < m; q++) {
                double c = shape.get(p * m + q, 0);
                for (int k = 0; k < 3; k++) {
                    strip[k][q] += c * f[k][p];
                }
            }
        }
        return strip;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
