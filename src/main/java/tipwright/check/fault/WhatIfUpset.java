// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.around.Site;
import tipwright.quantity.Kind;

/**
 * Loads that come about only if something goes wrong: each takes the place of all load cases, and every check that looks at the load
 * is asked again. Half of the cake stuck along one side is looked at with the ground sloping down to that side too, as steep as the
 * site says that it may.
 */
final class WhatIfUpset {
    private static final Map<String, String> WORDS = Map.of(
            "frozen", "frozen solid",
            "brim", "full of rainwater",
            "bridged", "outlet blocks on the way",
            "stuck-plus-z", "cake stuck along the +z side",
            "stuck-minus-z", "cake stuck along the -z side");

    private final List<Check> rules;

    private WhatIfUpset(List<Check> rules) {
        this.rules = rules.stream()
                .filter(c -> c.traits().contains(Trait.DEPENDS_ON_FILL))
                .filter(c -> !c.traits().contains(Trait.ABOUT_SURROUNDINGS))
                .filter(c -> !c.traits().contains(Trait.SLOW) && !c.traits().contains(Trait.NEEDS_TIME))
                .toList();
    }

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        WhatIfUpset upset = new WhatIfUpset(rules);
        List<Finding> all = new ArrayList<>();
        try {
            for (CaseResult load : Analyser.upsets(analysis)) {
                List<Finding> found = new ArrayList<>(upset.under(analysis, load));
                double side = side(load);
                Site site = analysis.design().site();
                if (side != 0 && site.anyWay() > 0) {
                    Site lower = site.leaning(site.grade(), side * Math.max(site.anyWay(), side * site.crossSlope()));
                    Analysis there = Analyser.analyse(WhatIfWheel.coarse(analysis.design().withSite(lower)));
                    for (CaseResult same : Analyser.upsets(there)) {
                        if (same.name().equals(load.name())) {
                            found.addAll(upset.under(there, same));
                        }
                    }
                }
                found.removeIf(f -> f.verdict() == Verdict.NOT_CHECKED);
                if (!found.isEmpty()) {
                    all.add(WorstOfAll.of(make, WORDS.getOrDefault(load.name(), load.name()), found));
                }
            }
        } catch (CannotComputeException stuck) {
            String why = String.valueOf(stuck.getMessage());
            all.add(make.given("upset loads", 1, 0, 1, Kind.RATIO, 2, Extreme.NOWHERE, Verdict.FAIL, why));
        }
        return all;
    }

    /** +1 or -1 for cake that sticks along a side. */
    private static double side(CaseResult load) {
        return load.name().equals("stuck-plus-z") ? 1 : load.name().equals("stuck-minus-z") ? -1 : 0;
    }

    private List<Finding> under(Analysis analysis, CaseResult load) {
        Analysis only = new Analysis(
                analysis.design(),
                analysis.mechanism(),
                analysis.poses(),
                List.of(load),
                analysis.emptying(),
                analysis.stop(),
                analysis.warnings(),
                analysis.wind());
        boolean holds = holds(only);
        return rules.stream()
                .flatMap(c -> c.run(only).stream())
                .map(f -> holds ? stalled(f) : f)
                .toList();
    }

    /** Whether the actuators are known to hold the load where it is. */
    private static boolean holds(Analysis analysis) {
        Double rated = HoldCheck.rated(analysis.design());
        if (rated == null) {
            return false;
        }
        double worst = Extreme.largest(
                        analysis.cases(),
                        MotionDirection.RESTING,
                        r -> Math.abs(r.rest().force()))
                .value();
        return HoldCheck.usage(worst, rated, analysis.design().factors()).utilisation() <= 1;
    }

    /** An actuator that is too weak for a push but holds it only stalls. */
    private static Finding stalled(Finding f) {
        if (f.verdict() != Verdict.FAIL || !f.id().equals("push")) {
            return f;
        }
        return new Finding(
                f.id(),
                f.title(),
                f.demand(),
                f.capacity(),
                f.factor(),
                f.kind(),
                f.sense(),
                f.utilisation(),
                f.worst(),
                Verdict.CLOSE,
                f.source(),
                f.note());
    }
}
