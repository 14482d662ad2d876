// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.check.Checks;
import tipwright.check.Result;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;

/** A result on one screen: the verdict, five numbers, what fails or is close and how to fix it, what cannot be told. */
public final class ShortReport {
    /** Lines that a screen shows. */
    static final int SCREEN = 45;

    private final Checked checked;
    private final Result result;
    private final Style style;
    private final VerdictText verdict;

    private ShortReport(Checked checked, Style style) {
        this.checked = checked;
        this.result = checked.result();
        this.style = style;
        this.verdict = new VerdictText(result, style.units());
    }

    /** The whole text, lines ended by a line feed. */
    public static String of(Checked checked, Style style) {
        return String.join("\n", new ShortReport(checked, style).lines()) + "\n";
    }

    private List<String> lines() {
        HeadSection head = new HeadSection(checked, style);
        List<String> lines = new ArrayList<>(head.job());
        lines.add("");
        lines.addAll(head.verdict());
        List<String> tail = tail();
        List<String> numbers = FiveNumbers.of(result, style);
        List<String> remarks = head.remarks();
        int room = SCREEN - lines.size() - tail.size() - numbers.size() - 2;
        lines.addAll(remarks.subList(0, Math.min(remarks.size(), Math.max(0, room / 3))));
        lines.add("");
        lines.addAll(numbers);
        List<String> toBuy = ShoppingList.lines(checked, style);
        if (!toBuy.isEmpty()) {
            lines.add("");
            lines.addAll(toBuy);
        }
        lines.addAll(bad(SCREEN - lines.size() - tail.size()));
        lines.addAll(tail);
        return lines;
    }

    /** What fails or is close, each once, where it is worst; what does not fit is counted. */
    private List<String> bad(int room) {
        List<VerdictText.Told> all = VerdictText.told(result, Set.of(Verdict.FAIL, Verdict.CLOSE));
        if (all.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(style.heading("What fails or is close, and how to fix it"));
        int shown = 0;
        String before = "";
        for (VerdictText.Told bad : all) {
            String fix = FixText.least(bad.finding(), checked.fixes(), style.units());
            List<String> next = told(bad, !fix.isEmpty() && fix.equals(before) ? "Fix, tried: the same." : fix);
            before = fix;
            boolean last = shown == all.size() - 1;
            if (lines.size() + next.size() + (last ? 0 : 1) > room) {
                break;
            }
            lines.addAll(next);
            shown++;
        }
        if (shown < all.size()) {
            lines.add("  " + (all.size() - shown) + " more: add --full to see "
                    + (all.size() - shown == 1 ? "it" : "them"));
        }
        return lines;
    }

    private List<String> told(VerdictText.Told bad, String fix) {
        Finding f = bad.finding();
        List<String> lines = new ArrayList<>(Prose.wrap(
                " " + CheckSection.sign(f.verdict()) + " " + CheckSection.word(f.verdict()) + "  ",
                verdict.sentence(bad, result.analysis().design().limits().close())));
        if (!fix.isEmpty()) {
            lines.addAll(Prose.wrap("         ", Prose.safe(fix)));
        }
        return lines;
    }

    private List<String> tail() {
        List<String> lines = new ArrayList<>();
        Set<String> drops = new LinkedHashSet<>();
        Set<String> rest = new LinkedHashSet<>();
        for (Finding f : result.findings()) {
            if (f.verdict() == Verdict.NOT_CHECKED) {
                boolean carries =
                        Checks.of(f).map(Check::traits).orElse(Set.of()).contains(Trait.CARRIES_TANK);
                (carries ? drops : rest).add(Checks.of(f).map(c -> c.shortly(f)).orElse(f.title()));
            }
        }
        if (!drops.isEmpty() || !rest.isEmpty()) {
            List<String> said = new ArrayList<>();
            if (!drops.isEmpty()) {
                said.add(String.join(", ", drops)
                        + (drops.size() == 1
                                ? " (if it breaks, the tank comes down)"
                                : " (if one breaks, the tank comes down)"));
            }
            if (!rest.isEmpty()) {
                said.add(String.join(", ", rest));
            }
            lines.add("");
            lines.addAll(Prose.wrap(
                    " ? ",
                    "Cannot tell: " + String.join("; ", said) + ". --full tells "
                            + CannotTell.toldInFull(result.findings()) + "."));
        }
        lines.add("");
        lines.addAll(Prose.wrap("   ", Cautions.SHORT));
        lines.addAll(Prose.wrap(
                "   ",
                "--full shows every check, force and tilt; 'tipwright explain WORD' explains any word printed here."));
        return lines;
    }
}
