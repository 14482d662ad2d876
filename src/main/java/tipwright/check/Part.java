// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Verdict;

/**
 * One half of a verdict.
 *
 * @param occasion when it comes about
 * @param findings of it, each check where it is worst then
 */
public record Part(Occasion occasion, List<Finding> findings) {
    /** Copies the list. */
    public Part {
        findings = List.copyOf(findings);
    }

    /** The finding that governs: the worst one that could be made; null when none could. */
    public @Nullable Finding governing() {
        Finding worst = null;
        for (Finding f : findings) {
            if (f.verdict() != Verdict.NOT_CHECKED && (worst == null || f.worseThan(worst))) {
                worst = f;
            }
        }
        return worst;
    }

    /** The worst of all; what was not checked does not count. */
    public Verdict verdict() {
        Finding worst = governing();
        return worst == null ? Verdict.NOT_CHECKED : worst.verdict();
    }

    /** How many say so. */
    public int count(Verdict verdict) {
        return (int) findings.stream().filter(f -> f.verdict() == verdict).count();
    }

    /** How many could be made. */
    public int made() {
        return findings.size() - count(Verdict.NOT_CHECKED);
    }
}
