// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tipwright.check.Checks;
import tipwright.check.Part;
import tipwright.check.Result;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Verdict;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** A verdict in plain sentences: the normal dump, and if something goes wrong. Text, JSON, document and window share it. */
public final class VerdictText {
    private static final String SHUT = ", outlet shut";
    private static final String STILL_IN = ", load still in it";

    /** The worst first. */
    static final Comparator<Told> WORST_FIRST = (a, b) -> {
        int verdicts = b.finding.verdict().compareTo(a.finding.verdict());
        return verdicts != 0 ? verdicts : Finding.BY_USE.compare(b.finding, a.finding);
    };

    private final List<String> skipped;
    private final Tank tank;
    private final UnitSystem units;

    public VerdictText(Result result, UnitSystem units) {
        this(result.parts().skipped(), result.analysis().design().tank(), units);
    }

    /**
     * For findings alone.
     *
     * @param skipped what the design says does not happen
     */
    VerdictText(List<String> skipped, Tank tank, UnitSystem units) {
        this.skipped = skipped;
        this.tank = tank;
        this.units = units;
    }

    /** 'Normal dump: passes. 48 of 48 checks pass. Closest to failing: ...'. */
    public String sentence(Part part) {
        String name = Text.capital(part.occasion().word());
        if (part.findings().isEmpty()) {
            return name + ": nothing to check.";
        }
        StringBuilder text = new StringBuilder(name + ": " + part.verdict().says() + ". " + counts(part));
        String governing = governing(part);
        if (!governing.isEmpty()) {
            text.append(part.verdict() == Verdict.FAIL ? " Worst: " : " Closest to failing: ")
                    .append(governing)
                    .append(".");
        }
        if (part.occasion() == Occasion.FAULT && !skipped.isEmpty()) {
            text.append(" Not looked at, because the file says that it does not happen: ")
                    .append(String.join(
                            "; ",
                            skipped.stream().map(c -> CaseName.shown(c, tank)).toList()))
                    .append(".");
        }
        return text.toString();
    }

    /** '5 of 28 checks fail, 1 is close.' */
    private static String counts(Part part) {
        int made = part.made();
        int failed = part.count(Verdict.FAIL);
        int close = part.count(Verdict.CLOSE);
        if (made == 0) {
            return "No check has the sizes that it needs.";
        }
        String text = failed == 0
                ? (made - close) + " of " + made + (made == 1 ? " check passes" : " checks pass")
                : failed + " of " + made + (made == 1 ? " check" : " checks") + (failed == 1 ? " fails" : " fail");
        return text + (close == 0 ? "" : ", " + close + (close == 1 ? " is close" : " are close")) + ".";
    }

    /** The finding that governs, in a sentence without its full stop; empty when nothing could be checked. */
    public String governing(Part part) {
        Finding worst = part.governing();
        return worst == null ? "" : says(worst, part.occasion());
    }

    /** 'full, outlet still shut at 64 deg: the actuator must pull 2929 lbf and is good for 1500 lbf'. */
    public String says(Finding f, Occasion occasion) {
        Text says = Checks.of(f).map(c -> c.says(f)).orElse(Text.words(f.title()));
        String where = where(f, occasion);
        String said = Prose.safe(says.show(units));
        String load = f.loadCase() == null ? "" : CaseName.shown(f.loadCase(), tank);
        String trouble = Checks.of(f).map(c -> c.trouble(f)).orElse("");
        if (!trouble.isEmpty()) {
            boolean same = load.equalsIgnoreCase(trouble);
            // a load of that name may say more, such as how full
            boolean more = load.regionMatches(true, 0, trouble + ", ", 0, trouble.length() + 2);
            String there = same ? tilt(f) : more ? where.substring(trouble.length() + 2) : where;
            return trouble + (there.isEmpty() ? "" : " (" + there + ")") + ": " + said;
        }
        if (!load.isEmpty() && said.regionMatches(true, 0, load + ": ", 0, load.length() + 2)) {
            said = said.substring(load.length() + 2);
        }
        return where.isEmpty() ? said : f.loadCase() == null ? said + " (" + where + ")" : where + ": " + said;
    }

    /** A finding and the half of the verdict that it is worst in. */
    public record Told(Finding finding, Occasion occasion) {}

    /** The findings with some of the verdicts, each once, where it is worst; the worst first. */
    public static List<Told> told(Result result, Set<Verdict> verdicts) {
        // a part holds the very finding, or its twin
        Set<Finding> own = Collections.newSetFromMap(new IdentityHashMap<>());
        own.addAll(result.findings());
        List<Told> all = new ArrayList<>();
        for (Part part : result.parts().both()) {
            part.findings().stream()
                    .filter(f -> verdicts.contains(f.verdict()))
                    .filter(own::contains)
                    .forEach(f -> all.add(new Told(f, part.occasion())));
        }
        all.sort(WORST_FIRST);
        return all;
    }

    /** A finding in a sentence, with how near it is where it is close. */
    public String sentence(Told told, double close) {
        String near = near(told.finding, close);
        return Text.capital(says(told.finding, told.occasion) + (near.isEmpty() ? "" : "; " + near)) + ".";
    }

    /** How near a close one is in its own quantity; empty where its words tell all. */
    private String near(Finding f, double close) {
        return f.verdict() == Verdict.CLOSE && f.toldByShare(close)
                ? f.nearness().show(units)
                : "";
    }

    private String where(Finding f, Occasion occasion) {
        Check check = Checks.of(f).orElse(null);
        String name = f.loadCase();
        String load = name == null ? "" : CaseName.shown(name, tank);
        boolean outlet = name != null
                && occasion == Occasion.FAULT
                && check != null
                && List.of("held", "settled", "slid").contains(name);
        if (outlet) {
            load = tank.pours()
                    ? load + (load.endsWith(STILL_IN) ? "" : STILL_IN)
                    : (load.endsWith(SHUT) ? load.substring(0, load.length() - SHUT.length()) : load)
                            + ", outlet still shut";
        }
        String tilt = tilt(f);
        return load.isEmpty() ? tilt : tilt.isEmpty() ? load : load + ", " + tilt;
    }

    private static String tilt(Finding f) {
        return Double.isNaN(f.tilt()) ? "" : "at " + Scale.angle().show(f.tilt());
    }

    /** 'PASSES SO FAR, 2 checks cannot tell'. */
    public static String word(Result result) {
        long skipped = result.findings().stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                .count();
        Verdict verdict = result.verdict();
        String word = verdict.says().toUpperCase(Locale.ROOT);
        String missing = skipped == 1 ? "1 check cannot tell" : skipped + " checks cannot tell";
        return skipped == 0 ? word : word + (verdict == Verdict.FAIL ? "" : " SO FAR") + ", " + missing;
    }
}
