// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tipwright.design.Design;
import tipwright.doubt.SampledShare;
import tipwright.placement.Limit;
import tipwright.placement.Tolerance;

/** Tells in plain words what welds that are off do. */
public final class ToleranceText {
    /** What is taken of mechanisms with links. */
    public static final String LINKS = "Assumes you cut links and cranks to fit after the pins are welded.";

    private ToleranceText() {}

    /** The text, lines ended by '\n'. */
    public static String of(Design design, Tolerance t, Style style) {
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
        lines.addAll(Prose.wrap("  looked at: ", lookedAt()));
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
        return Math.round(1000 * share) / 10.0 + " %";
    }

    /** What is tried with the pins off, and that other checks are not. */
    public static String lookedAt() {
        return Limit.values().stream().map(Limit::words).distinct().collect(Collectors.joining(", "))
                + "; no other check is made with the pins off: check the places as welded";
    }
}
