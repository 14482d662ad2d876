// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;

/** Looks for the worst over all load cases, tilts and ways of moving. */
public final class Sweep {
    private Sweep() {}

    /** Largest of a value over every row. */
    public static Findings.Worst rows(Analysis analysis, ToDoubleFunction<Row> value) {
        Findings.Worst worst = new Findings.Worst(Double.NEGATIVE_INFINITY, Double.NaN, null);
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                double v = value.applyAsDouble(row);
                if (v > worst.value()) {
                    worst = new Findings.Worst(v, row.tilt(), result.name());
                }
            }
        }
        return worst;
    }

    /** Largest of a value over every row at rest, raising and lowering. */
    public static Findings.Worst balances(Analysis analysis, ToDoubleFunction<Balance> value) {
        return rows(
                analysis, row -> balances(row).stream().mapToDouble(value).max().orElse(Double.NEGATIVE_INFINITY));
    }

    public static List<Balance> balances(Row row) {
        return List.of(row.rest(), row.raise(), row.lower());
    }

    /** The largest push at rest, raising and lowering, of all actuators together, N; 0: none. */
    public static double push(Row row) {
        double push = 0;
        for (Balance b : balances(row)) {
            push = Math.max(push, b.force());
        }
        return push;
    }

    /** The pose at a tilt of the table; the first when there is none. */
    public static Pose poseAt(Analysis analysis, double tilt) {
        for (Pose p : analysis.poses()) {
            if (p.tilt() == tilt) {
                return p;
            }
        }
        return analysis.poses().get(0);
    }

    /** The row where something is worst. */
    public static Optional<Row> rowAt(Analysis analysis, Findings.Worst worst) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(worst.loadCase()))
                .flatMap(c -> c.rows().stream())
                .filter(r -> r.tilt() == worst.tilt())
                .findFirst();
    }
}
