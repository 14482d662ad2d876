// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import tipwright.check.rule.Finding;

/**
 * By the plane that fits the samples best (least squares): what is tried anyway tells what each value does, over as far as it may be
 * off. Samples in which a check does not say how much is used are left out of its plane.
 */
final class SampledChanges {
    private static final double SINGULAR = 1e-9;

    private final Sampling sampling;
    private final List<Map<String, Double>> used;
    private final DecompositionSolver all;

    /**
     * Of samples.
     *
     * @param used utilisations by finding of each
     */
    SampledChanges(Sampling sampling, List<Map<String, Double>> used) {
        this.sampling = sampling;
        this.used = List.copyOf(used);
        List<Integer> every = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            every.add(i);
        }
        all = solver(every);
    }

    /** Change of a finding's utilisation by one standard doubt of each value, in their order; 0 where it does not say. */
    double[] of(Finding finding) {
        int values = sampling.values();
        List<Integer> told = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            if (used.get(i).containsKey(finding.id())) {
                told.add(i);
            }
        }
        if (!Double.isFinite(finding.utilisation()) || told.size() < 2 * (values + 1)) {
            return new double[values];
        }
        DecompositionSolver solver = told.size() == used.size() ? all : solver(told);
        ArrayRealVector right = new ArrayRealVector(told.size());
        for (int k = 0; k < told.size(); k++) {
            right.setEntry(k, Objects.requireNonNull(used.get(told.get(k)).get(finding.id())));
        }
        return solver.isNonSingular()
                ? solver.solve(right).getSubVector(1, values).toArray()
                : new double[values];
    }

    private DecompositionSolver solver(List<Integer> samples) {
        Array2DRowRealMatrix left = new Array2DRowRealMatrix(samples.size(), sampling.values() + 1);
        for (int k = 0; k < samples.size(); k++) {
            left.setEntry(k, 0, 1);
            for (int v = 0; v < sampling.values(); v++) {
                left.setEntry(k, v + 1, sampling.offset(v, samples.get(k)));
            }
        }
        return new QRDecomposition(left, SINGULAR).getSolver();
    }
}
