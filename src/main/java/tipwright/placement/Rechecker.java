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

    /** Whether it fails by something that the mounts could not mend. */
    boolean failsWhereverItIs(Candidate candidate) {
        return failures(candidate).stream().anyMatch(this::everywhere);
    }

    /** Whether a finding is the same with the mounts as drawn. */
    boolean everywhere(Finding f) {
        for (Finding d : drawn) {
            if (d.id().equals(f.id())) {
                return same(d, f);
            }
        }
        return false;
    }

    /**
     * Whether two findings of an id are the same but for rounding. Where no figure tells them apart, since nothing is left of what is
     * asked for (two parts that touch, a rope that would have to push), their words have to be the same.
     */
    static boolean same(Finding one, Finding other) {
        double a = one.utilisation();
        double b = other.utilisation();
        if (Double.isFinite(a) && Double.isFinite(b)) {
            return one.verdict() == other.verdict() && Math.abs(a - b) <= SAME * (1 + Math.abs(b));
        }
        return one.verdict() == other.verdict()
                && Double.compare(a, b) == 0
                && Math.abs(one.demand() - other.demand()) <= SAME * Math.abs(other.demand())
                && one.note().metric().equals(other.note().metric());
    }

    /** Describes why a candidate fails the full check. */
    String against(Candidate candidate) {
        return failures(candidate).stream().map(Finding::title).collect(Collectors.joining(", "));
    }
}
