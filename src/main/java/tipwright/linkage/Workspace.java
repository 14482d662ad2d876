// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.linsol.lu.LinearSolverLu_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/** Matrices and solvers for one skeleton, reused from tilt to tilt. Mutable: owned by one caller at a time. */
final class Workspace {
    final DMatrixRMaj jacobian;
    final DMatrixRMaj transposed;
    final DMatrixRMaj right;
    final DMatrixRMaj answer;
    final double[] residual;
    private final double[] cos;
    private final double[] sin;
    private final DMatrixRMaj copy;
    private final LUDecompositionAlt_DDRM decomposition;
    private final LinearSolverLu_DDRM lu;
    private final SingularValueDecomposition_F64<DMatrixRMaj> svd;

    Workspace(int n) {
        jacobian = new DMatrixRMaj(n, n);
        transposed = new DMatrixRMaj(n, n);
        right = new DMatrixRMaj(n, 1);
        answer = new DMatrixRMaj(n, 1);
        residual = new double[n];
        cos = new double[n / 3 + 1];
        sin = new double[n / 3 + 1];
        cos[0] = 1;
        copy = new DMatrixRMaj(n, n);
        decomposition = new LUDecompositionAlt_DDRM();
        lu = new LinearSolverLu_DDRM(decomposition);
        svd = DecompositionFactory_DDRM.svd(n, n, false, false, false);
    }

    /** Takes the angles of all bodies; the methods below place points by them. */
    void turnTo(double[] q) {
        for (int b = 1; b < cos.length; b++) {
            cos[b] = Math.cos(q[3 * b - 1]);
            sin[b] = Math.sin(q[3 * b - 1]);
        }
    }

    /** x of a stowed point of a body, in units of size. */
    double x(double[] q, int body, double px, double py) {
        return body == 0 ? px : q[3 * body - 3] + cos[body] * px + sin[body] * py;
    }

    /** y of a stowed point of a body, in units of size. */
    double y(double[] q, int body, double px, double py) {
        return body == 0 ? py : q[3 * body - 2] - sin[body] * px + cos[body] * py;
    }

    /** x of a slide's direction, turned with a body. */
    double turnedX(int body, Equations.Hinge h) {
        return cos[body] * h.alongX() + sin[body] * h.alongY();
    }

    /** y of a slide's direction, turned with a body. */
    double turnedY(int body, Equations.Hinge h) {
        return -sin[body] * h.alongX() + cos[body] * h.alongY();
    }

    /** Prepares for jacobian x = right; false when singular to working precision. */
    boolean factor() {
        return factor(jacobian);
    }

    /** Prepares for jacobian^T x = right; false when singular to working precision. */
    boolean factorTransposed() {
        CommonOps_DDRM.transpose(jacobian, transposed);
        return factor(transposed);
    }

    private boolean factor(DMatrixRMaj a) {
        copy.setTo(a);
        return lu.setA(copy) && lu.quality() > 1e-15;
    }

    /** Solves for the matrix factored last, right into answer; false when the answer is not finite. */
    boolean backSolve() {
        lu.solve(right, answer);
        for (int i = 0; i < answer.numRows; i++) {
            if (!Double.isFinite(answer.data[i])) {
                return false;
            }
        }
        return true;
    }

    /** Sign of the determinant of the matrix factored last: it changes only through a singular place. */
    double handedness() {
        return Math.signum(decomposition.computeDeterminant().real);
    }

    /** Smallest over largest singular value of the jacobian; 0 when the decomposition fails. */
    double condition() {
        copy.setTo(jacobian);
        if (!svd.decompose(copy)) {
            return 0;
        }
        double[] values = svd.getSingularValues();
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int i = 0; i < svd.numberOfSingularValues(); i++) {
            low = Math.min(low, values[i]);
            high = Math.max(high, values[i]);
        }
        return high > 0 ? low / high : 0;
    }
}
