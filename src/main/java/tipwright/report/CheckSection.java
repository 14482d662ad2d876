// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.remedy.TriedFixes;

/** The checks, worst first. */
final class CheckSection {
    private static final int BAR = 10;
    private static final int TITLE = 28;
    private static final int WHERE = 16;
    private static final String NOTE = "         ";
    /** Under this share a check has no row of its own. */
    private static final double IDLE = 0.05;
    /** Under this one its note says more than its figures. */
    private static final double NOTHING = 0.0005;

    private final Style style;
    private final Design design;
    private final TriedFixes fixes;

    /** Titles of what no fix was found for. */
    private final Set<String> unfixed = new LinkedHashSet<>();

    /** Says what fixes what fails, as far as it was tried. */
    CheckSection(Style style, Design design, TriedFixes fixes) {
        this.design = design;
        this.fixes = fixes;
        this.style = style;
    }

    List<String> lines(List<Finding> findings) {
        List<Finding> made = new ArrayList<>();
        for (Finding f : findings) {
            if (f.verdict() != Verdict.NOT_CHECKED) {
                made.add(f);
            }
        }
        made.sort(Comparator.comparing(Finding::verdict)
                .thenComparingDouble(f -> Double.isNaN(f.utilisation()) ? -1 : f.utilisation())
                .reversed());
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("Checks: those that fail, then close ones, then those that pass; the most used first"));
        Table table = new Table("llrlrrl");
        table.row("", "used", "", "check", "needs", "has", "worst at");
        List<Finding> idle = new ArrayList<>();
        for (Finding f : made) {
            if (f.verdict() == Verdict.PASS && f.utilisation() < IDLE) {
                idle.add(f);
            } else {
                row(table, f);
            }
        }
        lines.addAll(table.lines(" "));
        lines.addAll(Term.legend(List.of("needs", "has", "used")));
        if (!unfixed.isEmpty()) {
            lines.addAll(Prose.wrap(
                    "  ",
                    "No one change that was tried fixes these without making something else fail: "
                            + String.join("; ", unfixed) + "."));
        }
        if (!idle.isEmpty()) {
            List<String> words = idle.stream()
                    .map(f ->
                            Prose.safe(f.title()) + (f.utilisation() < NOTHING ? " (" + Prose.safe(note(f)) + ")" : ""))
                    .toList();
            lines.addAll(Prose.wrap(" + ", "passes, under 5 % used: " + String.join("; ", words)));
        }
        for (CannotTell why : CannotTell.values()) {
            Set<String> told = new LinkedHashSet<>();
            why.of(findings).forEach(f -> told.add(Prose.safe(f.title()) + ": " + Prose.safe(note(f))));
            if (!told.isEmpty()) {
                lines.add("");
                lines.add(style.heading(why.heading()));
                told.forEach(text -> lines.addAll(Prose.wrap("  " + sign(Verdict.NOT_CHECKED) + " ", text)));
            }
        }
        return lines;
    }

    private String note(Finding f) {
        return f.note().show(style.units());
    }

    private void row(Table table, Finding f) {
        List<String> title = Prose.wrap("", Prose.safe(f.title()), TITLE);
        List<String> where = Prose.wrap("", where(f), WHERE);
        boolean told = f.toldByShare(design.limits().close());
        table.row(
                style.verdict(f.verdict(), sign(f.verdict()) + " " + word(f.verdict())),
                told ? bar(f.utilisation()) : "",
                told ? percent(f.utilisation()) : "",
                title.get(0),
                show(f, f.needs()),
                show(f, f.has()),
                where.get(0));
        for (int i = 1; i < Math.max(title.size(), where.size()); i++) {
            table.row("", "", "", line(title, i), "", "", line(where, i));
        }
        if (f.verdict() != Verdict.PASS) {
            String near = told ? f.nearness().show(style.units()) : "";
            String note = note(f);
            String both = near.isEmpty() || note.isEmpty() ? near + note : near + "; " + note;
            List<String> under = new ArrayList<>(Prose.wrap(NOTE, Prose.safe(both)));
            String fix = FixText.of(f, fixes, style.units());
            if (fix.equals(FixText.NONE_KNOWN)) {
                unfixed.add(Prose.safe(f.title()));
            } else if (!fix.isEmpty()) {
                under.addAll(Prose.wrap(NOTE, Prose.safe(fix)));
            }
            table.under(under);
        }
    }

    private static String line(List<String> lines, int i) {
        return i < lines.size() ? lines.get(i) : "";
    }

    /** A sign that tells the verdict without colour. */
    static String sign(Verdict verdict) {
        return switch (verdict) {
            case PASS -> "+";
            case CLOSE -> "!";
            case FAIL -> "X";
            case NOT_CHECKED -> "?";
        };
    }

    static String word(Verdict verdict) {
        return verdict == Verdict.FAIL ? "FAILS" : verdict.says();
    }

    /** Ten cells; one more, an arrow, when it is over. */
    static String bar(double utilisation) {
        if (Double.isNaN(utilisation)) {
            return "";
        }
        int filled = (int) Math.min(BAR, Math.max(0, Math.round(utilisation * BAR)));
        return "[" + "#".repeat(filled) + ".".repeat(BAR - filled) + (utilisation > 1 ? ">" : "]");
    }

    static String percent(double utilisation) {
        if (Double.isNaN(utilisation)) {
            return "";
        }
        return utilisation > 9.99 ? ">999%" : Math.round(100 * utilisation) + "%";
    }

    private String show(Finding f, double si) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        return f.kind() == Kind.RATIO ? Scale.percent().show(si) : f.figure(si).show(style.units());
    }

    private String where(Finding f) {
        String tilt = Double.isNaN(f.tilt()) ? "" : Scale.angle().show(f.tilt());
        String loadCase = f.loadCase() == null ? "" : CaseName.shown(f.loadCase(), design.tank());
        return tilt + (tilt.isEmpty() || loadCase.isEmpty() ? "" : ", ") + loadCase;
    }
}
