// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;

/** What bounds the mounts, by the checks themselves. */
final class LimitChecks {
    /** What a limit without a measure counts as when it is passed. */
    static final double PASSED = 2;

    private static final List<Check> CHECKS =
            Checks.all().stream().filter(LimitChecks::bounds).toList();
    private static final List<Check> OTHERS =
            Checks.all().stream().filter(c -> !bounds(c)).toList();

    private LimitChecks() {}

    /** Whether the search works it out as a limit; a check that bounds mounts otherwise is one of the others. */
    private static boolean bounds(Check check) {
        return check.traits().contains(Trait.BOUNDS_MOUNTS) && Limit.of(check, check.id()) != null;
    }

    /**
     * Utilisations of all limits but the time wanted [limit].
     *
     * @param leftOut a limit that the caller works out; null: none
     */
    static double[] utilisations(Analysis analysis, @Nullable Limit leftOut) {
        double[] all = new double[Judge.LIMITS];
        for (Check check : CHECKS) {
            if (leftOut != null && leftOut == Limit.of(check, check.id())) {
                continue;
            }
            for (Finding f : check.run(analysis)) {
                Limit limit = Limit.of(check, f.id());
                if (limit != null) {
                    all[limit.index()] = Math.max(all[limit.index()], used(f));
                }
            }
        }
        return all;
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
