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
import tipwright.design.tank.CaseName;
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
        if (empty(analysis, "") == null) {
            return make.cannot(PART, "cases: 'empty' is skipped");
        }
        Design design = analysis.design();
        Extreme.Search search = Extreme.Search.largest();
        for (CaseResult load : loaded(analysis)) {
            List<Row> empty = Objects.requireNonNull(empty(analysis, load.name()));
            for (Row row : load.rows()) {
                double recoil = recoil(empty, row);
                double rated = rated(design, row, recoil > 0);
                double share = Math.abs(recoil) / (rated > 0 ? rated : Ratings.NOTHING);
                search.offer(share, row.tilt(), load.name(), MotionDirection.RESTING);
            }
        }
        Extreme most = search.found();
        Row there = Objects.requireNonNull(most.row(analysis.cases()), "a load case");
        List<Row> empty = Objects.requireNonNull(empty(analysis, String.valueOf(most.loadCase())));
        double demand = recoil(empty, there);
        double capacity = rated(design, there, demand > 0);
        Extreme worst = new Extreme(demand, most.tilt(), most.loadCase(), most.direction());
        double factor = design.factors().service();
        if (!(capacity > 0)) {
            String jumps = demand > 0
                    ? "the rope cannot push: with {} too much it goes slack, and the tank jumps up and drops into it"
                    : "the cylinder cannot pull: with {} too much the tank jumps up and drops back on it";
            Text note = Text.of(
                    jumps + "; keep clear, and let the load out slowly", Text.amount(Math.abs(demand), Kind.FORCE));
            return make.given(PART, Math.abs(demand), 0, factor, Kind.FORCE, 1, worst, Verdict.CLOSE, note);
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
        double moving = Ratings.together(design, length, push, a -> push ? a.ratedPush(length) : a.ratedPull());
        if (!(moving > 0)) {
            return 0;
        }
        double holding = Ratings.together(design, length, push, a -> {
            Double hold = a.ratedHold();
            return hold == null ? 0 : hold;
        });
        return Math.max(moving, holding);
    }

    /** Every load of which something leaves; the empty tank where there is no other. */
    private static List<CaseResult> loaded(Analysis analysis) {
        List<CaseResult> loaded = analysis.cases().stream()
                .filter(c -> !CaseName.EMPTY.is(c.name()))
                .toList();
        return loaded.isEmpty() ? analysis.cases() : loaded;
    }

    /** The empty tank in the wind of a load; without one where there is none in that wind. */
    private static @Nullable List<Row> empty(Analysis analysis, String load) {
        int wind = load.indexOf(", ");
        String same = CaseName.EMPTY.key() + (wind < 0 ? "" : load.substring(wind));
        List<Row> calm = null;
        for (CaseResult result : analysis.cases()) {
            if (result.name().equals(same)) {
                return result.rows();
            }
            calm = result.name().equals(CaseName.EMPTY.key()) ? result.rows() : calm;
        }
        return calm;
    }
}
