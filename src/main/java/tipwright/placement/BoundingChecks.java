// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.stream.Stream;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;

/** What bounds the mounts, by the checks themselves. */
final class BoundingChecks {
    /** What a limit without a measure counts as when it is passed. */
    static final double PASSED = 2;

    private static final List<Check> CHECKS =
            Checks.all().stream().filter(Limit::bounds).toList();
    private static final List<Check> OTHERS =
            Checks.all().stream().filter(c -> !Limit.bounds(c)).toList();

    private static final List<Check> LATE = OTHERS.stream()
            .filter(c -> !c.traits().contains(Trait.NEEDS_TIME) && !c.traits().contains(Trait.SLOW))
            .filter(c -> Stream.of(Trait.BEARS_DRIVE, Trait.CARRIES_TANK, Trait.ASKED_LATE)
                    .anyMatch(c.traits()::contains))
            .toList();

    private BoundingChecks() {}

    /** What the checks find that judge no candidate, of what bears the drive, carries the tank or bounds the mounts besides. */
    static List<Finding> late(Analysis analysis) {
        return Checks.run(LATE, analysis);
    }

    /** Utilisations of all limits but the time wanted [limit]. */
    static double[] utilisations(Analysis analysis) {
        double[] all = new double[Limit.COUNT];
        for (Check check : CHECKS) {
            take(check, Checks.run(List.of(check), analysis), all);
        }
        return all;
    }

    /** What findings say of the limits [limit]; those of checks that bound no mounts do not count. */
    static double[] utilisations(List<Finding> findings) {
        double[] all = new double[Limit.COUNT];
        for (Finding f : findings) {
            Checks.of(f).ifPresent(check -> take(check, List.of(f), all));
        }
        return all;
    }

    /** Puts what a check's findings say of the limits into their utilisations [limit]. */
    static void take(Check check, List<Finding> findings, double[] all) {
        for (Finding f : findings) {
            Limit limit = Limit.of(check, f.id());
            if (limit != null) {
                all[limit.index()] = Math.max(all[limit.index()], used(f));
            }
        }
    }

    private static double used(Finding f) {
        if (f.verdict() == Verdict.NOT_CHECKED) {
            return 0;
        }
        return f.verdict() == Verdict.FAIL && !(f.utilisation() > 1)
                ? PASSED
                : Double.isNaN(f.utilisation()) ? 0 : f.utilisation();
    }

    /** The other checks that fail, those in time left out. */
    static List<Finding> otherFailures(Analysis analysis) {
        return Checks.run(OTHERS, analysis).stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .toList();
    }
}
