// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/**
 * Checks candidates in full. What fails in the very same way with the mounts as drawn does not depend on them. Several threads may use
 * it at a time.
 */
final class Rechecker {
    private static final double SAME = 1e-9;

    private final Design design;
    private final List<Finding> drawn;
    private final Map<Candidate, List<Finding>> known = new ConcurrentHashMap<>();

    Rechecker(Design design) {
        this.design = design;
        drawn = find(design);
    }

    /** Findings of a design; none when it cannot be computed. */
    private static List<Finding> find(Design design) {
        try {
            return Checker.findings(design);
        } catch (CannotComputeException impossible) {
            return List.of();
        }
    }

    /** The findings of the full check; none when it cannot be computed there. */
    List<Finding> findings(Candidate candidate) {
        return known.computeIfAbsent(candidate, c -> find(c.in(design)));
    }

    private List<Finding> failures(Candidate candidate) {
        return findings(candidate).stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .toList();
    }

    /** Whether a design can be computed and fails by nothing that does not fail everywhere. */
    boolean passes(Design moved) {
        List<Finding> all = find(moved);
        return !all.isEmpty() && all.stream().allMatch(f -> f.verdict() != Verdict.FAIL || everywhere(f));
    }

    boolean passes(Candidate candidate) {
        return !findings(candidate).isEmpty() && failures(candidate).isEmpty();
    }

    /** Whether it fails, and by nothing that the mounts could mend. */
    boolean failsWhereverItIs(Candidate candidate) {
        List<Finding> failures = failures(candidate);
        return !failures.isEmpty() && failures.stream().allMatch(this::everywhere);
    }

    /** Whether a finding is the same with the mounts as drawn. */
    boolean everywhere(Finding f) {
        for (Finding d : drawn) {
            if (d.id().equals(f.id())) {
                return d.verdict() == f.verdict() && same(d.utilisation(), f.utilisation());
            }
        }
        return false;
    }

    /** Whether two utilisations are the same but for rounding; infinite ones and missing ones are. */
    static boolean same(double a, double b) {
        return Double.compare(a, b) == 0 || Math.abs(a - b) <= SAME * (1 + Math.abs(b));
    }

    /** Describes why a candidate fails the full check. */
    String against(Candidate candidate) {
        return failures(candidate).stream().map(Finding::title).collect(Collectors.joining(", "));
    }
}
