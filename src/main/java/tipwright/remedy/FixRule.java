// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.check.Checks;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/**
 * What counts as a fix: something passes that did not, nothing fails that passed, nothing that fails gets much worse, and nothing that
 * was checked goes unchecked.
 *
 * @param was the worst finding of each id before the change
 * @param bad ids of the findings that are to be fixed
 */
record FixRule(Map<String, Finding> was, Set<String> bad) {
    /** How much worse may get what fails anyway. */
    private static final double WORSE = 1.05;

    /**
     * What a change comes to.
     *
     * @param fixes ids of what was bad and passes
     * @param close ids of those that pass closely
     */
    record Outcome(Set<String> fixes, Set<String> close) {}

    /** For changes of one design. */
    static FixRule of(Result before, Set<String> bad) {
        return new FixRule(worst(before.findings()), Set.copyOf(bad));
    }

    /** What the change comes to that has these findings, of all checks; null when it does harm. */
    @Nullable
    Outcome outcome(List<Finding> after) {
        Map<String, Finding> is = worst(after);
        Set<String> fixes = new HashSet<>();
        Set<String> close = new HashSet<>();
        for (Finding f : is.values()) {
            Finding old = was.get(f.id());
            if (f.verdict() == Verdict.FAIL && (old == null || worseThanBefore(f, old))) {
                return null;
            }
            if (bad.contains(f.id()) && passes(f) && better(f)) {
                fixes.add(f.id());
                if (f.verdict() == Verdict.CLOSE) {
                    close.add(f.id());
                }
            }
        }
        boolean lost = was.values().stream()
                .filter(old -> old.verdict() != Verdict.NOT_CHECKED)
                .map(old -> is.get(old.id()))
                .filter(Objects::nonNull)
                .anyMatch(now -> now.verdict() == Verdict.NOT_CHECKED);
        // a check that could be made and says nothing any more tells nothing good
        boolean silent = was.values().stream()
                .filter(old -> old.verdict() != Verdict.NOT_CHECKED && !is.containsKey(old.id()))
                .anyMatch(old -> after.stream().noneMatch(now -> sameCheck(now, old)));
        return lost || silent ? null : new Outcome(fixes, close);
    }

    /** The worst of each id: several actuators may have one each; what could not be checked counts as worse than a pass. */
    static Map<String, Finding> worst(List<Finding> findings) {
        Map<String, Finding> all = new HashMap<>();
        for (Finding f : findings) {
            all.merge(f.id(), f, (a, b) -> {
                boolean first = a.worseThan(b);
                Finding worse = first ? a : b;
                Finding other = first ? b : a;
                return worse.verdict() != Verdict.FAIL && other.verdict() == Verdict.NOT_CHECKED ? other : worse;
            });
        }
        return all;
    }

    /** Whether a finding passes, if closely. */
    static boolean passes(Finding f) {
        return f.verdict() == Verdict.PASS || f.verdict() == Verdict.CLOSE;
    }

    /** Whether a finding that failed passes, or one that was close passes well. */
    boolean better(Finding f) {
        Finding old = was.get(f.id());
        return old != null && f.verdict().compareTo(old.verdict()) < 0;
    }

    private static boolean worseThanBefore(Finding now, Finding old) {
        return old.verdict() != Verdict.FAIL || now.utilisation() > old.utilisation() * WORSE;
    }

    private static boolean sameCheck(Finding now, Finding old) {
        return now.verdict() != Verdict.NOT_CHECKED
                && Checks.of(old).filter(c -> c.owns(now)).isPresent();
    }
}
