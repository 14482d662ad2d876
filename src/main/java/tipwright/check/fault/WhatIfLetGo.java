// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

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
            return make.cannot(PART, "cases: 'empty' is skipped");
        }
        Design design = analysis.design();
        Extreme most = Extreme.largest(analysis.cases(), MotionDirection.RESTING, row -> {
            double recoil = recoil(empty, row);
            double rated = rated(design, row, recoil > 0);
            return rated > 0 ? Math.abs(recoil) / rated : recoil < 0 ? Double.MAX_VALUE : 0;
        });
        Row there = Objects.requireNonNull(most.row(analysis.cases()), "a load case");
        double demand = recoil(empty, there);
        double capacity = rated(design, there, demand > 0);
        Extreme worst = new Extreme(demand, most.tilt(), most.loadCase(), most.direction());
        double factor = design.factors().service();
        if (!(capacity > 0)) {
            Text note = Text.of(
                    "the cylinder cannot pull: with {} too much the tank jumps up and drops back on it; keep clear, and let"
                            + " the load out slowly",
                    Text.amount(-demand, Kind.FORCE));
            return make.given(PART, -demand, 0, factor, Kind.FORCE, 1, worst, Verdict.CLOSE, note);
        }
        String note = demand < 0 ? "the tank springs up and pulls at the rod" : "the tank springs back on the rod";
        return make.compare(PART, Math.abs(demand), capacity, factor, Kind.FORCE, worst, note);
    }

    /** Force of the actuators as the load of a row leaves, N. */
    private static double recoil(List<Row> empty, Row row) {
        double after = empty.stream()
                .filter(r -> r.tilt() == row.tilt())
                .findFirst()
                .orElseThrow()
                .rest()
                .force();
        return 2 * after - row.rest().force();
    }

    /** What the actuators bear for a moment: the holding rating, or the moving one where that is not known. */
    private static double rated(Design design, Row row, boolean push) {
        double length = row.pose().length();
        double pull = Ratings.together(design, length, false, a -> a.ratedPull());
        if (!push && !(pull > 0)) {
            return 0;
        }
        double moving = push ? Ratings.together(design, length, true, a -> a.ratedPush(length)) : pull;
        double holding = Ratings.together(design, length, push, a -> {
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
