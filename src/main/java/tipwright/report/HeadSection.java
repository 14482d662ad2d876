// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.doubt.Sureness;

/** What the job is, and the verdict. */
final class HeadSection {
    private final Checked checked;
    private final Result result;
    private final Style style;

    HeadSection(Checked checked, Style style) {
        this.checked = checked;
        this.result = checked.result();
        this.style = style;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        Design design = result.analysis().design();
        lines.add(style.heading(Prose.safe(design.name())));
        if (design.about() != null) {
            lines.addAll(Prose.wrap("  ", Prose.safe(design.about())));
        }
        lines.addAll(Prose.wrap("  ", new Job(design, style.units()).sentence()));
        lines.add("");
        lines.addAll(verdict());
        Sureness sure = checked.sure();
        if (sure != null) {
            SurenessText.of(sure, style.units()).forEach(text -> lines.addAll(Prose.wrap("  ", text)));
        }
        for (String warning : checked.warnings()) {
            lines.addAll(Prose.wrap("  ! ", Prose.safe(warning)));
        }
        return lines;
    }

    private List<String> verdict() {
        Map<Verdict, List<String>> by = new LinkedHashMap<>();
        for (Finding f : result.findings()) {
            by.computeIfAbsent(f.verdict(), v -> new ArrayList<>()).add(Prose.safe(f.title()));
        }
        List<String> failed = by.getOrDefault(Verdict.FAIL, List.of());
        List<String> close = by.getOrDefault(Verdict.CLOSE, List.of());
        int skipped = by.getOrDefault(Verdict.NOT_CHECKED, List.of()).size();
        int made = result.findings().size() - skipped;
        StringBuilder text = new StringBuilder();
        if (!failed.isEmpty()) {
            text.append(failed.size() + " of " + made + " checks " + (failed.size() == 1 ? "fails" : "fail") + ": "
                    + Prose.and(failed) + ".");
        } else {
            text.append("All " + made + " checks that could be made pass.");
        }
        if (!close.isEmpty()) {
            text.append(" Close to the limit: " + Prose.and(close) + ".");
        }
        if (skipped > 0) {
            text.append(" " + skipped + " not checked, for lack of data: see below.");
        }
        List<String> lines = new ArrayList<>();
        lines.add(verdictLine(result, style));
        lines.addAll(Prose.wrap("  ", text.toString()));
        return lines;
    }

    /** '+ VERDICT: PASS, 2 not checked'. */
    static String verdictLine(Result result, Style style) {
        long skipped = result.findings().stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                .count();
        Verdict verdict = result.verdict();
        String word = verdict.word().toUpperCase(Locale.ROOT);
        String line = CheckSection.sign(verdict) + " VERDICT: " + word;
        return style.verdict(verdict, skipped == 0 ? line : line + ", " + skipped + " not checked");
    }
}
