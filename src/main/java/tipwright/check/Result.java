// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.time.Timing;

/**
 * A checked design.
 *
 * @param analysis forces over the tilts
 * @param findings of all checks
 * @param howFull null when nothing passes even when empty, or when it was not asked for
 * @param timing the dump in time
 * @param parts both halves of the verdict
 */
public record Result(Analysis analysis, List<Finding> findings, @Nullable HowFull howFull, Timing timing, Parts parts) {
    /** With the halves that follow from the findings. */
    public Result(Analysis analysis, List<Finding> findings, @Nullable HowFull howFull, Timing timing) {
        this(analysis, findings, howFull, timing, Parts.of(analysis, timing, findings));
    }

    /** Copies the list. */
    public Result {
        findings = List.copyOf(findings);
    }

    /** The same with how full it may be. */
    Result with(@Nullable HowFull most) {
        return new Result(analysis, findings, most, timing, parts);
    }

    /** The worst of all findings; what was not checked does not count, and is said apart. */
    public Verdict verdict() {
        Verdict worst = Verdict.PASS;
        for (Finding f : findings) {
            if (f.verdict() != Verdict.NOT_CHECKED && f.verdict().compareTo(worst) > 0) {
                worst = f.verdict();
            }
        }
        return worst;
    }
}
