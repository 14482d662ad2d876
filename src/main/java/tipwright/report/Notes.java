// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tipwright.check.rule.Finding;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/** What the checks note, which they write in metric units, in the units of the reader. */
public final class Notes {
    private static final Map<String, Kind> KINDS = Map.ofEntries(
            Map.entry("mm", Kind.LENGTH),
            Map.entry("N", Kind.FORCE),
            Map.entry("kN", Kind.FORCE),
            Map.entry("N m", Kind.MOMENT),
            Map.entry("N/mm", Kind.STIFFNESS),
            Map.entry("kg", Kind.MASS),
            Map.entry("m2", Kind.AREA),
            Map.entry("L", Kind.VOLUME),
            Map.entry("L/s", Kind.FLOW),
            Map.entry("m/s", Kind.SPEED),
            Map.entry("Pa", Kind.PRESSURE),
            Map.entry("kPa", Kind.PRESSURE),
            Map.entry("MPa", Kind.PRESSURE),
            Map.entry("bar", Kind.PRESSURE));

    /** The longest unit first, so that 'N m' is not taken for 'N'. */
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)? ("
            + KINDS.keySet().stream()
                    .sorted(Comparator.comparing(String::length).reversed())
                    .collect(Collectors.joining("|"))
            + ")(?![\\w/])");

    private Notes() {}

    /** A finding's note. */
    public static String of(Finding finding, UnitSystem units) {
        return units == UnitSystem.METRIC ? finding.note() : us(finding.note());
    }

    private static String us(String note) {
        return QUANTITY.matcher(note).replaceAll(found -> {
            try {
                return Matcher.quoteReplacement(us(found.group(), Objects.requireNonNull(KINDS.get(found.group(1)))));
            } catch (QuantityException e) {
                return Matcher.quoteReplacement(found.group());
            }
        });
    }

    private static String us(String quantity, Kind kind) throws QuantityException {
        double si = Quantities.parse(quantity, kind);
        return switch (kind) {
            case SPEED -> Quantities.show(si, Quantities.unit(kind, "ft/s"));
            case AREA -> Quantities.show(si, Quantities.unit(kind, "ft2"));
            default -> Quantities.show(si, kind, UnitSystem.US);
        };
    }
}
