// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.placement.PartsBox;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** Tells which actuators of the parts box would do with the pins where they are. */
public final class PartsBoxText {
    /** Beyond this share a percentage tells nothing. */
    private static final double SAYS_NOTHING = 9.99;

    private static final int TOLD = 3;
    private static final String UNDER = " ".repeat(9);

    private PartsBoxText() {}

    /**
     * The text, lines ended by '\n'.
     *
     * @param leftOut parts that were not tried, and why not
     */
    public static String of(Design design, List<PartsBox.Tried> tried, Map<String, String> leftOut, Style style) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading(design.name() + ": actuators from the parts box, pins as drawn"));
        Table table = new Table("llrrrrrrrrl");
        table.row("", "actuator", "volt", "closed", "stroke", "push", "pull", "dump", "price", "off", "most used");
        for (PartsBox.Tried t : tried) {
            row(table, t, style);
        }
        lines.addAll(table.lines(" "));
        long good = tried.stream().filter(t -> t.verdict() != Verdict.FAIL).count();
        lines.add("");
        lines.add(
                good == 0
                        ? "None of them will do with the pins where they are; 'tipwright place' looks for other places."
                        : good + " of " + tried.size() + (good == 1 ? " passes. Put its" : " pass. Put the best one's")
                                + " name after actuator: in the file and run tipwright check again.");
        lines.addAll(Prose.wrap(
                "",
                "'off' is the most that is used when every pin and the pivot are off by "
                        + Quantities.show(PartsBox.weld(design), Kind.LENGTH, style.units())
                        + " the worst way; the most margin then comes first. '*' is the design's own. Prices are in the currency of the parts"
                        + " file."));
        Map<String, List<String>> why = new LinkedHashMap<>();
        leftOut.forEach((name, reason) ->
                why.computeIfAbsent(reason, r -> new ArrayList<>()).add(Prose.safe(name)));
        why.forEach((reason, names) ->
                lines.addAll(Prose.wrap("", "Not tried: " + Prose.and(names) + " (" + reason + ").")));
        return String.join("\n", lines) + "\n";
    }

    /** How far a limit is passed: of a stroke the length that is lacking, of others the share used where it tells something. */
    private static String much(Finding f, Style style) {
        double lacking = f.needs() - f.has();
        return f.isOf("stroke") && lacking > 0
                ? ", " + Quantities.show(lacking, Kind.LENGTH, style.units()) + " short"
                : f.utilisation() > SAYS_NOTHING ? "" : " " + CheckSection.percent(f.utilisation());
    }

    /** 'Tank jams: Cross member under the frame pin: stress, 88%'. */
    private static String used(Finding f, Style style) {
        return Prose.safe(f.named()) + much(f, style);
    }

    private static void row(Table table, PartsBox.Tried t, Style style) {
        Actuator a = t.actuator().actuator();
        Finding most = t.governing();
        Double price = a.price();
        table.row(
                style.verdict(t.verdict(), CheckSection.sign(t.verdict()) + " " + CheckSection.word(t.verdict())),
                (t.own() ? "* " : "") + Prose.safe(t.actuator().name()),
                volt(a),
                Quantities.show(a.closed(), Kind.LENGTH, style.units()),
                Quantities.show(a.stroke(), Kind.LENGTH, style.units()),
                Quantities.show(a.ratedPush(), Kind.FORCE, style.units()),
                a.ratedPull() == 0 ? "-" : Quantities.show(a.ratedPull(), Kind.FORCE, style.units()),
                Double.isNaN(t.dump()) ? "-" : Math.round(t.dump()) + " s",
                price == null ? "-" : Quantities.number(price),
                Double.isNaN(t.weldsOff()) ? "-" : CheckSection.percent(t.weldsOff()),
                most == null ? "cannot be computed" : used(most, style));
        List<Finding> failing = t.failing();
        if (!failing.isEmpty()) {
            List<String> all =
                    failing.stream().map(f -> used(f, style)).distinct().toList();
            List<String> words = all.subList(0, Math.min(TOLD, all.size()));
            int more = all.size() - TOLD;
            String text = "fails: " + String.join("; ", words) + (more > 0 ? "; and " + more + " more" : "");
            table.under(Prose.wrap(UNDER, text));
        }
    }

    private static String volt(Actuator a) {
        Double volt = a instanceof ElectricActuator e ? e.voltage() : null;
        return volt == null ? "-" : Quantities.show(volt, Kind.VOLTAGE, UnitSystem.METRIC);
    }
}
