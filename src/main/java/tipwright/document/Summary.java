// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.UnitSystem;
import tipwright.report.FillSection;
import tipwright.report.FixText;
import tipwright.report.Style;
import tipwright.report.Ticket;

/**
 * What everybody has to read, on paper and on the phone: verdict, five numbers, what to change, what is probably wrong in the file.
 *
 * @param units that numbers are shown in
 */
record Summary(Dossier dossier, UnitSystem units) {
    private Ticket ticket() {
        return Ticket.of(dossier.checked(), units);
    }

    void verdict(Markup page) {
        Ticket ticket = ticket();
        page.raw("<div class=\"verdict " + ticket.verdict().name().toLowerCase(java.util.Locale.ROOT) + "\">");
        page.line("p class=\"word\"", Words.sign(ticket.verdict()) + " " + ticket.word());
        for (Ticket.Half half : ticket.halves()) {
            page.line("p", Words.sign(half.verdict()) + " " + half.sentence());
        }
        page.raw("</div>");
        ticket.sure().forEach(line -> page.line("p", line));
    }

    void numbers(Markup page) {
        FixedTable grid = new FixedTable(
                "Numbers, with what there is",
                FixedTable.Column.text("what", 25),
                FixedTable.Column.text("how much", 75));
        ticket().numbers().forEach(line -> grid.row(line.name(), line.says()));
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
        Ticket ticket = ticket();
        boolean bad = ticket.items().stream().anyMatch(Ticket.Item::bad);
        page.line("h2 class=\"small\"", bad ? "What to change" : "Closest to failing");
        List<String> items =
                new ArrayList<>(FixText.everything(dossier.checked().fixes(), units));
        for (Ticket.Item item : ticket.items()) {
            Finding f = item.finding();
            items.add(Words.sign(f.verdict()) + " " + f.verdict().says() + ", " + Words.used(f) + " used: "
                    + item.sentence() + (item.fix().isEmpty() ? "" : " " + item.fix()));
        }
        if (ticket.more() > 0) {
            items.add(ticket.more() + " more: see all checks.");
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
