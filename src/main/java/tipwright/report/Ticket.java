// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.List;
import java.util.Set;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.doubt.Sureness;
import tipwright.quantity.UnitSystem;

/**
 * What everybody has to read of a machine: page 1 on paper, the head of the page for the phone, and beside the picture in the window.
 *
 * @param verdict the worst of all
 * @param word the verdict in a few words
 * @param halves the normal dump, and if something goes wrong
 * @param sure how sure it is; empty where no value may be off
 * @param numbers the five numbers
 * @param items what fails or is close, the worst first; when nothing does, what comes closest to failing
 * @param more how many others fail or are close
 * @param cannotTell titles of what could not be checked
 */
public record Ticket(
        Verdict verdict,
        String word,
        List<Half> halves,
        List<String> sure,
        List<FiveNumbers.Line> numbers,
        List<Item> items,
        int more,
        List<String> cannotTell) {
    private static final int MOST = 6;
    private static final int CLOSEST = 2;

    /** Copies the lists. */
    public Ticket {
        halves = List.copyOf(halves);
        sure = List.copyOf(sure);
        numbers = List.copyOf(numbers);
        items = List.copyOf(items);
        cannotTell = List.copyOf(cannotTell);
    }

    /** One half of the verdict in a sentence. */
    public record Half(Verdict verdict, String sentence) {}

    /**
     * One check.
     *
     * @param sentence what it says, with its numbers
     * @param fix what fixes it, only what was tried; empty when nothing is known
     */
    public record Item(Finding finding, String sentence, String fix) {
        /** Whether it fails or is close. */
        public boolean bad() {
            return finding.verdict() == Verdict.FAIL || finding.verdict() == Verdict.CLOSE;
        }
    }

    /** What fails or is close, the worst first; when nothing does, what comes closest to failing. */
    public static List<VerdictText.Told> told(Result result) {
        List<VerdictText.Told> bad = VerdictText.told(result, Set.of(Verdict.FAIL, Verdict.CLOSE));
        return bad.isEmpty()
                ? VerdictText.told(result, Set.of(Verdict.PASS)).stream()
                        .limit(CLOSEST)
                        .toList()
                : bad;
    }

    /** The ticket of a checked design. */
    public static Ticket of(Checked checked, UnitSystem units) {
        Result result = checked.result();
        VerdictText text = new VerdictText(result, units);
        Sureness sure = checked.sure();
        List<VerdictText.Told> all = told(result);
        List<VerdictText.Told> told = all.subList(0, Math.min(MOST, all.size()));
        double close = result.analysis().design().limits().close();
        return new Ticket(
                result.verdict(),
                VerdictText.word(result),
                result.parts().both().stream()
                        .map(part -> new Half(part.verdict(), text.sentence(part)))
                        .toList(),
                sure == null ? List.of() : SurenessText.of(sure, units),
                FiveNumbers.all(result, new Style(false, units)),
                told.stream()
                        .map(t -> new Item(
                                t.finding(), text.sentence(t, close), FixText.of(t.finding(), checked.fixes(), units)))
                        .toList(),
                all.size() - told.size(),
                result.findings().stream()
                        .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                        .map(Finding::title)
                        .toList());
    }
}
