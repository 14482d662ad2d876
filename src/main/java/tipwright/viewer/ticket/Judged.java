// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.Early;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.report.Checked;
import tipwright.viewer.editor.Solved;

/**
 * What is known of the design on the editor, and what is still being worked out.
 *
 * @param early what is known without time and part fills
 * @param checked the whole check; null: not yet
 * @param fixes that were tried, the least change first
 * @param asked ids of findings for which alone fixes were looked for
 * @param waits in words, what is still to come; empty: nothing
 */
public record Judged(Early early, @Nullable Checked checked, List<ReadyFix> fixes, Set<String> asked, String waits) {
    /** Copies the collections. */
    public Judged {
        fixes = List.copyOf(fixes);
        asked = Set.copyOf(asked);
    }

    /** The whole check, with the fixes that were tried for all that is to be fixed. */
    Judged(Early early, @Nullable Checked checked, List<ReadyFix> fixes, String waits) {
        this(early, checked, fixes, Set.of(), waits);
    }

    /** The same with what was tried for one finding alone. */
    Judged plus(Finding finding, Checked with, List<ReadyFix> more) {
        return new Judged(
                early,
                with,
                Stream.concat(fixes.stream(), more.stream()).toList(),
                Stream.concat(asked.stream(), Stream.of(finding.id())).collect(Collectors.toSet()),
                waits);
    }

    /** What is known at once. */
    static Judged first(Analysis analysis, List<Finding> findings, String waits) {
        return new Judged(new Early(analysis, findings), null, List.of(), waits);
    }

    /** What is known while something is being moved. */
    public static Judged moving(Solved solved) {
        return first(
                solved.analysis(), solved.findings(), "updates when you let go: " + String.join(", ", solved.later()));
    }

    /** All findings that there are, the whole check's where it is there. */
    public List<Finding> findings() {
        Checked all = checked;
        return all == null ? early.findings() : all.result().findings();
    }

    /** The verdict as far as it is known: without the whole check only that something fails is certain, and anything else cannot be told. */
    public Verdict verdict() {
        Checked all = checked;
        if (all != null) {
            return all.result().verdict();
        }
        boolean fails = early.findings().stream().anyMatch(f -> f.verdict() == Verdict.FAIL);
        return fails ? Verdict.FAIL : Verdict.NOT_CHECKED;
    }
}
