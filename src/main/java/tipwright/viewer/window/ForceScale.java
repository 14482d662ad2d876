// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;
import tipwright.quantity.UnitSystem;

/**
 * One scale of force for all load cases of a design.
 *
 * @param low N; below 0 where it pulls
 * @param high N
 * @param ratedPush of all actuators together after the service factor, N; NaN: it is not known, or nothing pushes
 * @param ratedPull the same for a pull, N
 */
record ForceScale(double low, double high, double ratedPush, double ratedPull) {
    private static final double ROOM = 1.08;
    private static final double[] STEPS = {1, 2, 2.5, 5, 10};
    private static final int MOST = 5;

    /** Of an analysed design, with the findings that tell what its actuators are rated for. */
    static ForceScale of(Analysis analysis, List<Finding> findings) {
        double low = 0;
        double high = 0;
        for (CaseResult c : analysis.cases()) {
            for (Row row : c.rows()) {
                low = Math.min(low, Math.min(row.raise().force(), row.lower().force()));
                high = Math.max(high, Math.max(row.raise().force(), row.lower().force()));
            }
        }
        double push = rated("push", findings);
        double pull = rated("pull", findings);
        high = push > 0 ? Math.max(high, push) : high;
        low = pull > 0 && low < 0 ? Math.min(low, -pull) : low;
        return new ForceScale(low * ROOM, Math.max(high * ROOM, 1), push, pull);
    }

    /** What the actuators are rated for by the finding of a check, N; NaN: it does not tell. */
    static double rated(String id, List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.id().equals(id) && f.has() > 0)
                .mapToDouble(Finding::has)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Round forces across it, N, a few. */
    List<Double> ticks(UnitSystem units) {
        UnitLabel unit = Quantities.unit(Kind.FORCE, units);
        double one = 1 / unit.fromSi(1);
        double span = (high - low) / one;
        double ten = Math.pow(10, Math.floor(Math.log10(span / MOST)));
        double step = ten * STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            step = span / (ten * STEPS[i]) <= MOST ? ten * STEPS[i] : step;
        }
        List<Double> all = new ArrayList<>();
        for (double at = Math.ceil(low / one / step) * step; at <= high / one; at += step) {
            all.add(at * one);
        }
        return all;
    }
}
