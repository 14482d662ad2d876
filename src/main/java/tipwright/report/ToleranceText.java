// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tipwright.design.Design;
import tipwright.doubt.SampledShare;
import tipwright.placement.Limit;
import tipwright.placement.OtherChecks;
import tipwright.placement.Tolerance;

/** Tells in plain words what welds that are off do. */
public final class ToleranceText {
    /** What is taken of mechanisms with links. */
    public static final String LINKS = "Assumes you cut links and cranks to fit after the pins are welded.";

    /** From here on a share tells nothing any more. */
    private static final double MOST = 9.995;

    private ToleranceText() {}

    /** The text, lines ended by '\n'. */
    public static String of(Design design, Tolerance t, OtherChecks others, Style style) {
        List<String> lines = new ArrayList<>();
        String by = PasteText.length(t.tolerance(), style.units());
        lines.add(style.heading(design.name() + ": welds that are off by up to " + by));
        lines.add("  as in the file: used " + percent(t.utilisation()) + " ("
                + t.governing().words() + ")");
        lines.add("  all pins off the worst way: " + percent(t.worstCorner()) + " ("
                + t.cornerLimit().words() + ")");
        lines.add("  chance that a check fails: " + percent(t.chance()) + " in " + t.runs() + " runs ("
                + SampledShare.of(t.chance(), t.runs()).words() + ")");
        for (Limit limit : Limit.values()) {
            Double chance = t.chances().get(limit);
            if (chance != null) {
                lines.add("    " + limit.words() + ": " + percent(chance));
            }
        }
        lines.add(
                t.largest() > 0
                        ? "  all that is looked at here still passes with every pin within "
                                + PasteText.length(t.largest(), style.units()) + " either way"
                        : "  it fails as drawn");
        if (!design.drive().direct()) {
            lines.add("  " + LINKS);
        }
        for (String other : others(others)) {
            lines.addAll(Prose.wrap("  ", other));
        }
        lines.addAll(Prose.wrap("  looked at: ", lookedAt(others)));
        lines.add("");
        lines.add(style.heading("Which dimension matters most"));
        Table table = new Table("llrrl");
        table.row("", "by", "lower", "higher", "affects");
        for (Tolerance.Swing s : t.swings()) {
            Limit most = most(s);
            String size = s.place() ? PasteText.length(s.size(), style.units()) : Math.round(100 * s.size()) + " %";
            table.row(
                    s.name(),
                    size,
                    percent(s.low()),
                    percent(s.high()),
                    most.words() + " " + points(s.slopes().getOrDefault(most, 0.0) * s.size()));
        }
        lines.addAll(table.lines("  "));
        lines.addAll(
                Prose.wrap(
                        "  ",
                        "lower, higher: how much is used with that dimension so much lower or higher; points: of that percentage"));
        return String.join("\n", lines) + "\n";
    }

    private static Limit most(Tolerance.Swing s) {
        Limit most = Limit.values().get(0);
        for (Limit limit : Limit.values()) {
            if (Math.abs(s.slopes().getOrDefault(limit, 0.0))
                    > Math.abs(s.slopes().getOrDefault(most, 0.0))) {
                most = limit;
            }
        }
        return most;
    }

    private static String points(double share) {
        return (share > 0 ? "+" : "") + Math.round(1000 * share) / 10.0 + " points";
    }

    private static String percent(double share) {
        return share >= MOST ? "over 999 %" : Math.round(1000 * share) / 10.0 + " %";
    }

    /** What the checks say that are only made in the worst ways, a sentence each. */
    public static List<String> others(OtherChecks others) {
        String ways = "the " + others.tried() + " worst of these ways";
        List<String> all = new ArrayList<>();
        for (OtherChecks.Other o : others.spoilt()) {
            all.add("in " + o.fails() + " of " + ways + " fails: "
                    + Prose.safe(o.drawn().title()) + ", " + percent(o.used()) + " used ("
                    + percent(o.drawn().utilisation()) + " as in the file)");
        }
        OtherChecks.Other most = others.all().stream()
                .filter(o -> !Double.isNaN(o.used()))
                .findFirst()
                .orElse(null);
        if (all.isEmpty() && most != null) {
            all.add("in " + ways + " nothing else fails that passes as in the file; the most used: "
                    + Prose.safe(most.drawn().title()) + ", " + percent(most.used()) + " used ("
                    + percent(most.drawn().utilisation()) + " as in the file)");
        }
        return all;
    }

    /** What is tried with the pins off, and what is not. */
    public static String lookedAt(OtherChecks others) {
        String late = others.parts().collect(Collectors.joining(", "));
        return Limit.values().stream().map(Limit::words).distinct().collect(Collectors.joining(", "))
                + (late.isEmpty() ? "" : "; in the " + others.tried() + " worst ways alone: " + Prose.safe(late))
                + "; not looked at with the pins off: clearances, how it stands, the dump in time, what may go wrong. Check"
                + " the places as welded";
    }
}
