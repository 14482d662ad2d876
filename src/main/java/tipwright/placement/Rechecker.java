// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
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
 * Checks spots in full. What fails in the very same way with the mounts as drawn does not depend on them. Several threads may use
 * it at a time.
 */
final class Rechecker {
    private static final double SAME = 1e-9;

    private final Design design;
    private final List<Finding> drawn;
    private final Map<Spot, List<Finding>> known = new ConcurrentHashMap<>();

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
    List<Finding> findings(Spot spot) {
        return known.computeIfAbsent(spot, s -> find(s.in(design)));
    }

    /** Checks that fail there and would not everywhere. */
    List<Finding> failures(Spot spot) {
        List<Finding> failed = new ArrayList<>();
        for (Finding f : findings(spot)) {
            if (f.verdict() == Verdict.FAIL && !everywhere(f)) {
                failed.add(f);
            }
        }
        return failed;
    }

    boolean passes(Spot spot) {
        return !findings(spot).isEmpty() && failures(spot).isEmpty();
    }

    /** Whether a finding is the same with the mounts as drawn. */
    boolean everywhere(Finding f) {
        for (Finding d : drawn) {
            if (d.id().equals(f.id())) {
                return d.verdict() == f.verdict()
                        && Math.abs(d.utilisation() - f.utilisation()) <= SAME * (1 + Math.abs(f.utilisation()));
            }
        }
        return false;
    }

    /** Describes why a spot fails the full check. */
    String against(Spot spot) {
        return failures(spot).stream().map(Finding::title).collect(Collectors.joining(", "));
    }
}
