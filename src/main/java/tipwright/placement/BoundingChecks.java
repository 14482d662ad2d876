// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** What bounds the mounts, by the checks themselves. */
final class BoundingChecks {
    /** What a limit without a measure counts as when it is passed. */
    static final double PASSED = 2;

    private static final Set<String> IDS =
            Stream.of(Limit.values()).map(Limit::check).collect(Collectors.toSet());
    private static final List<Check> CHECKS =
            Checks.all().stream().filter(c -> bounds(c.id())).toList();
    private static final List<Check> OTHERS =
            Checks.all().stream().filter(c -> !bounds(c.id())).toList();

    private BoundingChecks() {}

    private static boolean bounds(String check) {
        return IDS.stream().anyMatch(id -> id.equals(check) || id.startsWith(check + "/"));
    }

    /** Utilisations of all limits but the time wanted [limit]. */
    static double[] utilisations(Analysis analysis) {
        double[] all = new double[Limit.COUNT];
        for (Check check : CHECKS) {
            take(check.run(analysis), all);
        }
        return all;
    }

    /** Puts what some findings say of the limits into their utilisations [limit]. */
    static void take(List<Finding> findings, double[] all) {
        for (Finding f : findings) {
            for (Limit limit : Limit.values()) {
                if (limit.tells(f)) {
                    all[limit.index()] = Math.max(all[limit.index()], used(f));
                }
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
        return OTHERS.stream()
                .flatMap(c -> c.run(analysis).stream())
                .filter(f -> f.verdict() == Verdict.FAIL)
                .toList();
    }
}
