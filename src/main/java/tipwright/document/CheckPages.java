// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.report.CannotTell;
import tipwright.report.Scale;

/** Every check: a table, then how each was worked out. */
final class CheckPages {
    /** Of those that pass with less used, the short report gives the names alone. */
    private static final double HARDLY = 0.10;

    private final Dossier dossier;
    private final UnitSystem units;

    CheckPages(Dossier dossier, UnitSystem units) {
        this.dossier = dossier;
        this.units = units;
    }

    /**
     * All of them, worst first.
     *
     * @param whole whether those that hardly use what there is stand in the table too, or only their names below it
     */
    void table(Markup page, boolean whole) {
        List<Finding> made = new ArrayList<>();
        for (Verdict v : List.of(Verdict.FAIL, Verdict.CLOSE)) {
            made.addAll(dossier.findings(v));
        }
        List<Finding> hardly = new ArrayList<>();
        for (Finding f : dossier.findings(Verdict.PASS)) {
            (whole || !(f.utilisation() < HARDLY) ? made : hardly).add(f);
        }
        table("Checks: those that fail, then close ones, then those that pass", made)
                .to(page);
        if (!hardly.isEmpty()) {
            page.line(
                    "p",
                    Words.sign(Verdict.PASS) + " " + Verdict.PASS.says() + " too, with less than "
                            + Scale.percent().show(HARDLY) + " used: "
                            + String.join(
                                    "; ", hardly.stream().map(Finding::title).toList()) + ".");
        }
        for (CannotTell why : CannotTell.values()) {
            List<Finding> skipped = why.of(dossier.findings(Verdict.NOT_CHECKED));
            if (!skipped.isEmpty()) {
                FixedTable grid = new FixedTable(
                        why.heading(), FixedTable.Column.text("check", 35), FixedTable.Column.text(why.column(), 65));
                skipped.forEach(f -> grid.row(
                        Words.sign(f.verdict()) + " " + f.title(), f.note().show(units)));
                grid.to(page);
            }
        }
    }

    private FixedTable table(String caption, List<Finding> findings) {
        FixedTable grid = new FixedTable(
                caption,
                FixedTable.Column.text("check", 31),
                FixedTable.Column.text("verdict", 11),
                FixedTable.Column.number("used", 7),
                FixedTable.Column.number("needs", 10),
                FixedTable.Column.number("has", 10),
                FixedTable.Column.number("factor", 6),
                FixedTable.Column.text("worst at", 25));
        for (Finding f : findings) {
            grid.row(
                    f.title(),
                    Words.sign(f.verdict()) + " " + f.verdict().says(),
                    Words.used(f),
                    Words.show(f, f.needs(), units),
                    Words.show(f, f.has(), units),
                    factor(f),
                    Words.where(f, dossier.design().tank()));
        }
        return grid;
    }

    private static String factor(Finding f) {
        return Double.isFinite(f.factor()) ? Quantities.number(f.factor()) : "-";
    }

    /** Clearances and where the load lands. */
    void room(Markup page) {
        group(page, "Clearances", Trait.ABOUT_SURROUNDINGS);
    }

    /** Tipping over and hanging. */
    void stand(Markup page) {
        group(page, "Overturning and lifting", Trait.ABOUT_STANDING);
    }

    private void group(Markup page, String caption, Trait trait) {
        List<Finding> all = dossier.checked().result().findings().stream()
                .filter(f ->
                        Checks.of(f).filter(c -> c.traits().contains(trait)).isPresent())
                .toList();
        if (all.isEmpty()) {
            page.line("p", "Not checked: the design gives nothing to check it by.");
            return;
        }
        FixedTable grid = new FixedTable(
                caption,
                FixedTable.Column.text("check", 26),
                FixedTable.Column.text("verdict", 14),
                FixedTable.Column.number("needs", 12),
                FixedTable.Column.number("has", 12),
                FixedTable.Column.text("what was found", 36));
        for (Finding f : all) {
            grid.row(
                    f.title(),
                    Words.sign(f.verdict()) + " " + f.verdict().says(),
                    Words.show(f, f.needs(), units),
                    Words.show(f, f.has(), units),
                    f.note().show(units));
        }
        grid.to(page);
    }

    /** Rule, formula with the numbers put in, and source of each kind of check. */
    void workings(Markup page) {
        for (Check check : Checks.all()) {
            List<Finding> made = dossier.checked().result().findings().stream()
                    .filter(f -> check.owns(f) && f.verdict() != Verdict.NOT_CHECKED)
                    .toList();
            if (made.isEmpty()) {
                continue;
            }
            page.line("h3", check.title()).line("p", check.rule());
            page.line("p class=\"formula\"", check.formula());
            page.list(made.stream().map(f -> working(check, f)).toList());
            page.line("p class=\"caption\"", "Source: " + check.source() + ".");
        }
    }

    private String working(Check check, Finding f) {
        String numbers = "";
        if (Double.isFinite(f.demand()) && Double.isFinite(f.capacity())) {
            String demand = Words.show(f, f.byRatio() ? f.demand() : f.needs(), units);
            String capacity = Words.show(f, f.byRatio() ? f.capacity() : f.has(), units);
            numbers = f.byRatio()
                    ? ": " + demand + " / (" + capacity + " / " + factor(f) + ") = " + Words.used(f)
                    : ": needs " + demand + ", has " + capacity + ", by the rule " + Words.used(f) + " used";
        }
        String where = Words.where(f, dossier.design().tank());
        String at = where.isEmpty() ? "" : " at " + where;
        String worked = check.worked(dossier.analysis(), f, units);
        String put = worked.isEmpty() ? "" : ". Put in: " + worked;
        return f.title() + numbers + at + ": " + f.verdict().says()
                + (f.note().isEmpty() ? "" : "; " + f.note().show(units)) + put + ".";
    }
}
