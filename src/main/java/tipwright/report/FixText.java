// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;

/** What fixes what fails, in words: only what was tried. */
public final class FixText {
    /** Where something was looked for and nothing found. */
    static final String NONE_KNOWN = "No one change that was tried fixes it without making something else fail.";

    private static final String CLOSE = "then it is close";

    private static final int MOST = 3;

    private FixText() {}

    /** What fixes one finding, the least change first; empty when nothing was looked for. */
    public static String of(Finding f, TriedFixes fixes, UnitSystem units) {
        List<TriedFix> all = fixes.of(f);
        if (all.isEmpty()) {
            return f.verdict() == Verdict.FAIL && fixes.looked() ? NONE_KNOWN : "";
        }
        List<String> ways = new ArrayList<>();
        for (TriedFix fix : all.subList(0, Math.min(MOST, all.size()))) {
            ways.add(fix.said().show(units) + (fix.close().contains(f.id()) ? " (" + CLOSE + ")" : ""));
        }
        return (ways.size() == 1 ? "Fix, tried: " : "Fix, tried, any of: ") + String.join("; or ", ways) + ".";
    }

    /** The least change that fixes one finding; what it takes where none of those that were tried does; else empty. */
    public static String least(Finding f, TriedFixes fixes, UnitSystem units) {
        return fixes.of(f).stream()
                .findFirst()
                .map(fix -> "Fix, tried: " + said(fix, f, units) + ".")
                .orElseGet(() -> f.verdict() == Verdict.FAIL && fixes.looked() ? takes(f, units) : "");
    }

    private static String takes(Finding f, UnitSystem units) {
        String said = Checks.of(f).map(c -> c.takes(f)).orElse(Text.NONE).show(units);
        return said.isEmpty() ? "" : "No one change that was tried fixes it: " + said + ".";
    }

    /** A change in full, with what comes of it: '...; then every check passes'. */
    public static String said(TriedFix fix, Finding f, UnitSystem units) {
        String comes = comesOf(fix, f);
        return fix.said().show(units) + (comes.isEmpty() ? "" : "; ") + comes;
    }

    /** What comes of a change beside that the finding passes; not of a finding that passes anyway that every check does; may be empty. */
    public static String comesOf(TriedFix fix, Finding f) {
        boolean close = fix.close().contains(f.id());
        if (fix.everything() && f.verdict() == Verdict.FAIL) {
            return close ? "then every check passes, this one closely" : "then every check passes";
        }
        return close ? CLOSE : "";
    }

    /** The changes with which nothing fails any more, the least first; none when there is none, or nothing fails anyway. */
    public static List<String> everything(Checked checked, UnitSystem units) {
        Set<String> kinds = new HashSet<>();
        return checked.fixes().ofEverything(checked.result()).stream()
                .filter(f -> kinds.add(f.kind()))
                .limit(MOST)
                .map(f ->
                        "With this change alone every check passes" + (f.close().isEmpty() ? ": " : ", if closely: ")
                                + f.said().show(units) + ".")
                .toList();
    }
}
