// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tipwright.check.Early;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** What is known at once, for a person who waits; no verdict yet, because that needs the dump in time too. */
public final class EarlyText {
    /** How many failing checks are named. */
    private static final int MOST = 5;

    private EarlyText() {}

    /** The text, lines ended by a line feed, with an empty line at its end. */
    public static String of(Early early, Style style) {
        Design design = early.analysis().design();
        List<String> lines = new ArrayList<>();
        lines.add(style.heading(Prose.safe(design.name()) + ", so far"));
        lines.addAll(Prose.wrap("  ", new Job(design, style.units()).sentence()));
        lines.addAll(Prose.wrap("  ", soFar(early.findings())));
        lines.add("");
        lines.addAll(FiveNumbers.of(early, style));
        lines.add("");
        lines.addAll(Prose.wrap(
                "",
                "The dump in time is still being worked out, and with it how full the tank may be; the whole answer"
                        + " follows. Ctrl-C ends it here: what stands above stays, but it is no verdict."));
        lines.add("");
        return String.join("\n", lines) + "\n";
    }

    private static String soFar(List<Finding> findings) {
        List<String> failed = findings.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .sorted(Comparator.comparingDouble(f -> -f.utilisation()))
                .map(f -> Prose.safe(f.title()))
                .distinct()
                .toList();
        List<String> told = new ArrayList<>(failed.subList(0, Math.min(MOST, failed.size())));
        if (failed.size() > MOST) {
            told.add((failed.size() - MOST) + " more");
        }
        return failed.isEmpty()
                ? "No verdict yet: none of the checks that need no time fails."
                : "It fails already: " + Prose.and(told) + ".";
    }
}
