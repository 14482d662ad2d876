// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/** Numbers with their units, as they are read back from a text. */
final class PrintedNumbers {
    private static final Map<String, UnitLabel> UNITS = units();
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\p{L}\\d./'_-])(-?)(?:(\\d+) (\\d+)/(\\d+)|(\\d+)/(\\d+)|(\\d+)(?:\\.(\\d+))?)"
                    + "(?: ?("
                    + String.join(
                            "|",
                            UNITS.keySet().stream()
                                    .sorted((a, b) -> b.length() - a.length())
                                    .map(Pattern::quote)
                                    .toList())
                    + "))(?![\\p{L}\\d/])");
    private static final Pattern BARE = Pattern.compile("-?(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)");

    private PrintedNumbers() {}

    /**
     * A number.
     *
     * @param text as printed
     * @param unit that it is in
     * @param si in SI
     * @param half of its last digit, or of the next mark of the tape, in SI
     */
    record Number(String text, String unit, double si, double half) {
        /** Another number with as many digits, that nobody means. */
        Number wrong(double by) {
            double step = 2 * half;
            return new Number(text, unit, Math.rint(si * by / step) * step, half);
        }
    }

    private static Map<String, UnitLabel> units() {
        Map<String, UnitLabel> all = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            if (kind != Kind.TEMPERATURE) {
                Quantities.units(kind).forEach(u -> all.putIfAbsent(u.name(), u));
            }
        }
        all.remove("");
        return all;
    }

    /** All numbers that have a unit. */
    static List<Number> of(String text) {
        List<Number> all = new ArrayList<>();
        Matcher m = NUMBER.matcher(text);
        while (m.find()) {
            UnitLabel unit = UNITS.get(m.group(9));
            String number = m.group().substring(0, m.start(9) - m.start()).strip();
            all.add(number(number, m.group(), unit));
        }
        return all;
    }

    /**
     * Numbers without a unit, if the text is nothing else.
     *
     * @param unit that they are in
     */
    static List<Number> bare(String text, String unit) {
        List<Number> all = new ArrayList<>();
        Matcher m = BARE.matcher(text.strip());
        if (m.matches()) {
            all.add(number(m.group(), text.strip() + " bare", UNITS.get(unit)));
        }
        return all;
    }

    private static Number number(String number, String text, UnitLabel label) {
        boolean minus = number.startsWith("-");
        String[] parts = (minus ? number.substring(1) : number).split(" ");
        double value = 0;
        double half = 0.5;
        double unit = label.toSi(1);
        for (String part : parts) {
            int slash = part.indexOf('/');
            int point = part.indexOf('.');
            if (slash > 0) {
                double whole = Double.parseDouble(part.substring(slash + 1));
                value += Double.parseDouble(part.substring(0, slash)) / whole;
                half = 1.0 / 32;
            } else {
                value += Double.parseDouble(part);
                half = 0.5 * Math.pow(10, point < 0 ? 0 : -(part.length() - point - 1));
            }
        }
        return new Number(text, label.name(), (minus ? -value : value) * unit, half * unit);
    }
}
