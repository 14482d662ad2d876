// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.check.Result;
import tipwright.design.file.Assumption;

/** A result as a text that needs no manual: verdict first, then why. */
public final class TextReport {
    private TextReport() {}

    /**
     * The whole text, lines ended by a line feed.
     *
     * @param style colours and units
     */
    public static String of(Checked checked, Style style) {
        Result result = checked.result();
        Analysis analysis = result.analysis();
        List<String> lines = new ArrayList<>(new HeadSection(checked, style).lines());
        List<String> toBuy = ShoppingList.lines(checked, style);
        if (!toBuy.isEmpty()) {
            lines.add("");
            lines.addAll(toBuy);
        }
        lines.add("");
        lines.addAll(new CheckSection(style, result.analysis().design(), checked.fixes()).lines(result.findings()));
        lines.add("");
        lines.addAll(new ForceSection(analysis, style).lines());
        lines.add("");
        lines.addAll(new EnvelopeSection(analysis, style).lines());
        lines.add("");
        lines.addAll(new FillSection(style).lines(result));
        lines.add("");
        lines.addAll(new TimeSection(analysis.design(), style).lines(result.timing()));
        lines.addAll(MeasuredSection.lines(checked, style));
        if (!checked.taken().isEmpty()) {
            lines.add("");
            lines.add(
                    style.heading("Assumed, because the file does not say. Change any that do not fit your machine:"));
            lines.addAll(assumptions(checked.taken(), style));
        }
        lines.add("");
        lines.add(style.heading("Before you dump"));
        for (String caution : Cautions.all()) {
            lines.addAll(Prose.wrap("  * ", caution));
        }
        lines.addAll(Prose.wrap("  * ", "'tipwright explain limits' lists the ways to fail that no check here knows."));
        lines.add("");
        lines.add(HeadSection.verdictLine(result, style));
        return String.join("\n", lines) + "\n";
    }

    /** By the part of the file that they stand in; entries of a list together. */
    private static List<String> assumptions(List<Assumption> all, Style style) {
        Map<String, Set<String>> groups = new LinkedHashMap<>();
        for (Assumption a : all.stream().filter(a -> !a.measured()).toList()) {
            String path = a.path().replaceAll("\\[\\d+\\]", "");
            int dot = path.lastIndexOf('.');
            groups.computeIfAbsent(dot < 0 ? "" : path.substring(0, dot), k -> new LinkedHashSet<>())
                    .add(Prose.tied(path.substring(dot + 1) + " " + a.shown(style.units())));
        }
        List<String> lines = new ArrayList<>();
        groups.forEach((group, values) ->
                lines.addAll(Prose.wrap("  " + (group.isEmpty() ? "" : group + ": "), String.join("; ", values))));
        return lines;
    }
}
