// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Kind;

/**
 * The whole load leaves the tank at once. Tank and actuator then swing about the force of the empty tank by as much as the force
 * has changed: 2 F_empty - F_loaded.
 */
final class WhatIfLetGo {
    private static final String PART = "load let go at once";

    private WhatIfLetGo() {}

    static Finding find(Findings make, Analysis analysis) {
        List<Row> empty = empty(analysis);
        if (empty == null) {
            return make.missing(PART, "cases: 'empty' is skipped");
        }
        Design design = analysis.design();
        Findings.Worst worst = Findings.Worst.NOWHERE;
        double most = Double.NEGATIVE_INFINITY;
        double demand = 0;
        double capacity = 0;
        for (CaseResult result : analysis.cases()) {
            for (int i = 0; i < result.rows().size(); i++) {
                Row row = result.rows().get(i);
                double after = empty.get(i).rest().force();
                double recoil = 2 * after - row.rest().force();
                double rated = rated(design, row, recoil > 0);
                double utilisation = rated > 0 ? Math.abs(recoil) / rated : recoil < 0 ? Double.MAX_VALUE : 0;
                if (utilisation > most) {
                    most = utilisation;
                    demand = recoil;
                    capacity = rated;
                    worst = new Findings.Worst(recoil, row.tilt(), result.name());
                }
            }
        }
        double factor = design.factors().service();
        if (!(capacity > 0)) {
            String note =
                    "the cylinder cannot pull: the tank jumps up and drops back on it; keep clear, and open slowly";
            return make.given(PART, -demand, 0, factor, Kind.FORCE, 1, worst, Verdict.CLOSE, note);
        }
        String note = demand < 0 ? "the tank springs up and pulls at the rod" : "the tank springs back on the rod";
        return make.compare(PART, Math.abs(demand), capacity, factor, Kind.FORCE, worst, note);
    }

    /** What the actuators bear for a moment: the holding rating, or the moving one where that is not known. */
    private static double rated(Design design, Row row, boolean push) {
        double length = row.pose().length();
        double pull = Ratings.together(design, a -> a.ratedPull());
        if (!push && !(pull > 0)) {
            return 0;
        }
        double moving = push ? Ratings.together(design, a -> a.ratedPush(length)) : pull;
        double holding = Ratings.together(design, a -> {
            Double hold = a.ratedHold();
            return hold == null ? 0 : hold;
        });
        return Math.max(moving, holding);
    }

    private static @Nullable List<Row> empty(Analysis analysis) {
        for (CaseResult result : analysis.cases()) {
            if (result.name().equals("empty")) {
                return result.rows();
            }
        }
        return null;
    }
}
