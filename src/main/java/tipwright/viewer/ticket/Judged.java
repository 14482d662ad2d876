// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.check.Early;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.report.Checked;
import tipwright.viewer.editor.Solved;

/**
 * What is known of the design on the editor, and what is still being worked out. It comes in stages: the numbers with the quick checks,
 * every check that needs no time, all checks, how full it may be, and the fixes.
 *
 * @param stage how far it has come
 * @param early what is known without the dump in time
 * @param all checks, from {@link Stage#CHECKED} on, until then null; how full it may be is in it from {@link Stage#FILLED} on
 * @param fixes that were tried, the least change first
 * @param asked ids of findings for which alone fixes were looked for
 * @param waits in words, what is still to come; empty: nothing
 */
public record Judged(
        Stage stage, Early early, @Nullable Checked all, List<ReadyFix> fixes, Set<String> asked, String waits) {
    private static final String MOVING =
            "updates when you let go: gaps, part fills, what needs the dump in time, and what happens if something goes wrong";
    private static final String QUICK = "the checks are still being worked out";
    private static final String AT_REST =
            "what needs the dump in time, and what happens if something goes wrong, is still being worked out";
    private static final String CHECKED = "how full it may be is still being worked out";

    /** How far the answer has come. */
    public enum Stage {
        /** Numbers, and some of the checks. */
        QUICK,
        /** Every check that needs no time, over all fills. */
        AT_REST,
        /** All checks, so the verdict. */
        CHECKED,
        /** How full it may be too. */
        FILLED
    }

    /** Copies the collections. */
    public Judged {
        fixes = List.copyOf(fixes);
        asked = Set.copyOf(asked);
    }

    /** The same with what was tried for one finding alone. */
    Judged plus(Finding finding, Checked with, List<ReadyFix> more) {
        return new Judged(
                stage,
                early,
                with,
                Stream.concat(fixes.stream(), more.stream()).toList(),
                Stream.concat(asked.stream(), Stream.of(finding.id())).collect(Collectors.toSet()),
                waits);
    }

    private static Judged quick(Solved solved, String waits) {
        return new Judged(
                Stage.QUICK, new Early(solved.analysis(), solved.findings()), null, List.of(), Set.of(), waits);
    }

    /** What is known while something is being moved. */
    public static Judged moving(Solved solved) {
        return quick(solved, MOVING);
    }

    /** What is known at once. */
    static Judged asked(Solved solved) {
        return quick(solved, QUICK);
    }

    /** What is known without the dump in time. */
    Judged atRest(Early rest) {
        return new Judged(Stage.AT_REST, rest, null, List.of(), Set.of(), AT_REST);
    }

    /** What all checks say. */
    Judged checked(Checked verdict) {
        return new Judged(Stage.CHECKED, early, verdict, List.of(), Set.of(), CHECKED);
    }

    /** The same with how full it may be. */
    Judged filled(Checked whole, List<ReadyFix> tried, String still) {
        return new Judged(Stage.FILLED, early, whole, tried, Set.of(), still);
    }

    /** What is known when the rest cannot be had. */
    Judged endsWith(String why) {
        return new Judged(stage, early, all, fixes, asked, why);
    }

    /** The whole check, with how full it may be; null: not yet. */
    public @Nullable Checked checked() {
        return stage == Stage.FILLED ? all : null;
    }

    /** All findings that there are, the whole check's where it is there. */
    public List<Finding> findings() {
        Checked known = all;
        return known == null ? early.findings() : known.result().findings();
    }

    /**
     * The verdict as far as it is known: before all checks are made only that something fails is certain, and anything else cannot be
     * told.
     */
    public Verdict verdict() {
        Checked known = all;
        if (known != null) {
            return known.result().verdict();
        }
        return early.fails() ? Verdict.FAIL : Verdict.NOT_CHECKED;
    }
}
