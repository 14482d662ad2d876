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
import tipwright.report.Ticket;
import tipwright.report.VerdictText;

/**
 * What everybody has to read, on paper and on the phone: verdict, five numbers, what to change, what is probably wrong in the file.
 *
 * @param units that numbers are shown in
 */
record Summary(Dossier dossier, UnitSystem units) {
    private static final int MOST = 6;
    static final String MISTAKES = "Look at these in the file";

    void verdict(Markup page) {
        Result result = dossier.checked().result();
        VerdictText text = new VerdictText(result, units);
        page.raw("<div class=\"verdict " + result.verdict().name().toLowerCase(java.util.Locale.ROOT) + "\">");
        page.line("p class=\"word\"", Words.sign(result.verdict()) + " " + VerdictText.word(result));
        for (Part part : result.parts().both()) {
            page.line("p", Words.sign(part.verdict()) + " " + text.sentence(part));
        }
        page.raw("</div>");
        sureness().forEach(line -> page.line("p", line));
    }

    /** How sure the verdict is; nothing where no value may be off. */
    List<String> sureness() {
        Sureness sure = dossier.checked().sure();
        return sure == null ? List.of() : SurenessText.of(sure, units);
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

    private List<VerdictText.Told> bad() {
        return VerdictText.told(dossier.checked().result(), Set.of(Verdict.FAIL, Verdict.CLOSE));
    }

    String changeHeading() {
        List<VerdictText.Told> bad = bad();
        if (bad.isEmpty()) {
            return "Closest to failing";
        }
        return bad.stream().anyMatch(t -> t.finding().verdict() == Verdict.FAIL) ? "What to change" : "What is close";
    }

    /** What fails or is close, the worst of it, with the fixes that were tried; else what comes closest to failing. */
    void change(Markup page) {
        List<VerdictText.Told> bad = bad();
        List<String> items = changes(false);
        int more = Math.max(0, bad.size() - MOST);
        page.line("h2 class=\"small\"", changeHeading());
        List<String> shown = new ArrayList<>(items.subList(0, items.size() - more));
        if (more > 0) {
            shown.add(more + " more: see all checks.");
        }
        page.list(shown);
    }

    /**
     * All that fails or is close, the worst first, with the fixes that were tried; else what comes closest to failing.
     *
     * @param least whether only the least change is told of each, and none where one change is told that helps against all
     */
    List<String> changes(boolean least) {
        Result result = dossier.checked().result();
        List<String> everything = FixText.everything(dossier.checked(), units);
        List<String> items = new ArrayList<>(everything);
        List<VerdictText.Told> told = Ticket.told(result);
        VerdictText text = new VerdictText(result, units);
        double close = dossier.design().limits().close();
        for (VerdictText.Told t : told) {
            Finding f = t.finding();
            String fix = least && !everything.isEmpty()
                    ? ""
                    : least
                            ? FixText.least(f, dossier.checked().fixes(), units)
                            : FixText.of(f, dossier.checked().fixes(), units);
            items.add(Words.sign(f.verdict()) + " " + f.verdict().says() + ", " + Words.used(f) + " used: "
                    + text.sentence(t, close) + (fix.isEmpty() ? "" : " " + fix));
        }
        return items;
    }

    /** What is probably a mistake in the file, and other warnings. */
    List<String> allMistakes() {
        List<String> all = new ArrayList<>();
        dossier.checked().mistakes().forEach(m -> all.add(m.show(units)));
        all.addAll(dossier.checked().warnings());
        return all;
    }

    void mistakes(Markup page) {
        List<String> all = allMistakes();
        if (!all.isEmpty()) {
            page.line("h2 class=\"small\"", MISTAKES).list(all);
        }
    }

    /** What cannot be told. */
    List<String> missing() {
        return dossier.findings(Verdict.NOT_CHECKED).stream()
                .map(Finding::title)
                .toList();
    }

    void cannotTell(Markup page) {
        List<String> missing = missing();
        if (!missing.isEmpty()) {
            page.line("h2 class=\"small\"", "Cannot tell").line("p", String.join("; ", missing) + ".");
        }
    }
}
