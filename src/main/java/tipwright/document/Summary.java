// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.check.Part;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.doubt.Sureness;
import tipwright.quantity.UnitSystem;
import tipwright.report.FillSection;
import tipwright.report.FiveNumbers;
import tipwright.report.FixText;
import tipwright.report.Style;
import tipwright.report.SurenessText;
import tipwright.report.VerdictText;

/**
 * What everybody has to read, on paper and on the phone: verdict, five numbers, what to change, what is probably wrong in the file.
 *
 * @param units that numbers are shown in
 */
record Summary(Dossier dossier, UnitSystem units) {
    private static final int MOST = 6;

    void verdict(Markup page) {
        Result result = dossier.checked().result();
        VerdictText text = new VerdictText(result.parts(), units);
        page.raw("<div class=\"verdict " + result.verdict().name().toLowerCase(java.util.Locale.ROOT) + "\">");
        page.line("p class=\"word\"", Words.sign(result.verdict()) + " " + VerdictText.word(result));
        for (Part part : result.parts().both()) {
            page.line("p", Words.sign(part.verdict()) + " " + text.sentence(part));
        }
        page.raw("</div>");
        Sureness sure = dossier.checked().sure();
        if (sure != null) {
            SurenessText.of(sure, units).forEach(line -> page.line("p", line));
        }
    }

    void numbers(Markup page) {
        FixedTable grid = new FixedTable(
                "Numbers, with what there is",
                FixedTable.Column.text("what", 25),
                FixedTable.Column.text("how much", 75));
        FiveNumbers.all(dossier.checked().result(), new Style(false, units))
                .forEach(line -> grid.row(line.name(), line.says()));
        grid.styled("five").to(page);
    }

    void howFull(Markup page) {
        page.line("h2 class=\"small\"", "How full may it be?");
        page.line(
                "p",
                new FillSection(new Style(false, units))
                        .howFull(dossier.checked().result().howFull()));
    }

    /** What fails or is close, with the fixes that were tried; else what comes closest to failing. */
    void change(Markup page) {
        Result result = dossier.checked().result();
        List<VerdictText.Told> bad = VerdictText.told(result, Set.of(Verdict.FAIL, Verdict.CLOSE));
        page.line("h2 class=\"small\"", bad.isEmpty() ? "Closest to failing" : "What to change");
        List<String> items =
                new ArrayList<>(FixText.everything(dossier.checked().fixes(), units));
        List<VerdictText.Told> told = bad.isEmpty()
                ? VerdictText.told(result, Set.of(Verdict.PASS)).stream()
                        .limit(2)
                        .toList()
                : bad.subList(0, Math.min(MOST, bad.size()));
        VerdictText text = new VerdictText(result.parts(), units);
        double close = dossier.design().limits().close();
        for (VerdictText.Told t : told) {
            Finding f = t.finding();
            String fix = FixText.of(f, dossier.checked().fixes(), units);
            items.add(Words.sign(f.verdict()) + " " + f.verdict().says() + ", " + Words.used(f) + " used: "
                    + text.sentence(t, close) + (fix.isEmpty() ? "" : " " + fix));
        }
        if (bad.size() > MOST) {
            items.add((bad.size() - MOST) + " more: see all checks.");
        }
        page.list(items);
    }

    /** What is probably a mistake in the file, and other warnings. */
    void mistakes(Markup page) {
        List<String> all = new ArrayList<>();
        dossier.checked().mistakes().forEach(m -> all.add(m.show(units)));
        all.addAll(dossier.checked().warnings());
        if (!all.isEmpty()) {
            page.line("h2 class=\"small\"", "Look at these in the file").list(all);
        }
    }

    void cannotTell(Markup page) {
        List<Finding> skipped = dossier.findings(Verdict.NOT_CHECKED);
        if (!skipped.isEmpty()) {
            String names =
                    String.join("; ", skipped.stream().map(Finding::title).toList());
            page.line("h2 class=\"small\"", "Cannot tell: sizes missing").line("p", names + ".");
        }
    }
}
