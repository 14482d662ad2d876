// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** Matrices and solvers for one skeleton, reused from tilt to tilt. Mutable: owned by one caller at a time. */
final class Workspace {
    final DMatrixRMaj jacobian;
    final DMatrixRMaj transposed;
    final DMatrixRMaj right;
    final DMatrixRMaj answer;
    final double[] residual;
    private final DMatrixRMaj copy;
    private final LinearSolverDense<DMatrixRMaj> lu;
    private final SingularValueDecomposition_F64<DMatrixRMaj> svd;

    Workspace(int n) {
        jacobian = new DMatrixRMaj(n, n);
        transposed = new DMatrixRMaj(n, n);
        right = new DMatrixRMaj(n, 1);
        answer = new DMatrixRMaj(n, 1);
        residual = new double[n];
        copy = new DMatrixRMaj(n, n);
        lu = LinearSolverFactory_DDRM.lu(n);
        svd = DecompositionFactory_DDRM.svd(n, n, false, false, false);
    }

    /**
     * Solves a x = right into answer.
     *
     * @param a not modified
     * @return false when a is singular to working precision
     */
    boolean solve(DMatrixRMaj a) {
        return factor(a) && backSolve();
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
        return finite();
    }

    /** Sign of the determinant of the jacobian: it changes only through a singular place. */
    double handedness() {
        return Math.signum(CommonOps_DDRM.det(jacobian));
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

    private boolean finite() {
        for (int i = 0; i < answer.numRows; i++) {
            if (!Double.isFinite(answer.data[i])) {
                return false;
            }
        }
        return true;
    }
}
