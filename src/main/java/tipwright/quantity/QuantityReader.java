// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a quantity as written by a builder. */
final class QuantityReader {
    /** A number: '12', '-0.5', '.5', '1e3', '3/8', '12 3/8', '12-3/8'. Groups: sign, rest. */
    private static final String NUMBER =
            "(?:\\d{1,18}[ -])?\\d{1,18}/\\d{1,18}|(?:\\d{1,40}(?:\\.\\d{0,40})?|\\.\\d{1,40})(?:[eE][+-]?\\d{1,5})?";

    private static final Pattern FEET_INCHES = Pattern.compile(
            "([+-]?) ?(" + NUMBER + ") ?(?:ft|foot|feet|') ?-? ?(" + NUMBER + ") ?(?:in|inch|inches|\")");
    private static final Pattern PLAIN = Pattern.compile("([+-]?) ?(" + NUMBER + ")(?![\\d.,/])(.*)");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d[\\d.]*,\\d.*");
    private static final int LONGEST = 80;
    private static final Map<String, String> SISTERS =
            Map.of("lb", "lbf", "lbs", "lbf", "lbf", "lb", "kg", "kgf", "kgf", "kg");

    private QuantityReader() {}

    /**
     * A number of a unit.
     *
     * @param unit null for a bare number
     */
    record Parsed(double number, @Nullable UnitLabel unit, double si) {}

    static Parsed read(String written, Kind kind) throws QuantityException {
        String text = tidy(written);
        String shown = "'" + shorten(written) + "'";
        if (text.isEmpty()) {
            throw new QuantityException("nothing given; " + needed(kind) + suchAs(kind));
        }
        if (text.length() > LONGEST) {
            throw new QuantityException(shown + " is no quantity; " + needed(kind) + suchAs(kind));
        }
        if (COMMA.matcher(text).matches()) {
            boolean thousands = text.indexOf(',') != text.lastIndexOf(',');
            throw new QuantityException("comma in " + shown
                    + "; write decimals with a point and no thousands marks, such as '"
                    + text.replace(",", thousands ? "" : ".") + "'");
        }
        Matcher both = FEET_INCHES.matcher(text);
        if (both.matches() && kind == Kind.LENGTH) {
            double inches = number(both.group(2), shown, kind) * 12 + number(both.group(3), shown, kind);
            UnitLabel inch = UnitTable.find("in", Kind.LENGTH);
            return finish(signed(both.group(1), inches), inch, shown);
        }
        Matcher plain = PLAIN.matcher(text);
        if (!plain.matches()) {
            throw new QuantityException("no number in " + shown + "; " + needed(kind) + suchAs(kind));
        }
        double number = signed(plain.group(1), number(plain.group(2), shown, kind));
        String label = plain.group(3).strip();
        if (label.isEmpty()) {
            if (kind == Kind.RATIO) {
                return finish(number, null, shown);
            }
            throw new QuantityException("no unit in " + shown + "; " + needed(kind) + "; did you mean '" + text + " "
                    + UnitTable.of(kind).get(0).name() + "'?");
        }
        if (Character.isDigit(label.charAt(0))) {
            throw new QuantityException("two numbers in " + shown + "; " + needed(kind) + suchAs(kind));
        }
        UnitLabel unit = UnitTable.find(label, kind);
        if (unit == null) {
            String as = text.substring(0, text.length() - plain.group(3).length());
            throw new QuantityException(wrongUnit(shown, as.strip(), label, kind));
        }
        return finish(number, unit, shown);
    }

    private static Parsed finish(double number, @Nullable UnitLabel unit, String shown) throws QuantityException {
        double si = unit == null ? number : unit.toSi(number);
        if (!(Math.abs(si) <= 1e15)) {
            throw new QuantityException(shown + " is too large for anything that is built");
        }
        return new Parsed(number, unit, si);
    }

    private static double signed(String sign, double number) {
        return sign.equals("-") ? -number : number;
    }

    private static double number(String text, String shown, Kind kind) throws QuantityException {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return Double.parseDouble(text);
        }
        int gap = Math.max(text.indexOf(' '), text.indexOf('-'));
        double whole = gap < 0 ? 0 : Double.parseDouble(text.substring(0, gap));
        double over = Double.parseDouble(text.substring(gap + 1, slash));
        double under = Double.parseDouble(text.substring(slash + 1));
        if (under == 0) {
            throw new QuantityException("a fraction over 0 in " + shown + "; " + needed(kind) + suchAs(kind));
        }
        return whole + over / under;
    }

    private static String wrongUnit(String shown, String number, String label, Kind kind) {
        String sister = SISTERS.get(label);
        String hint = sister != null && UnitTable.find(sister, kind) != null
                ? "; did you mean '" + number + " " + sister + "'?"
                : suchAs(kind);
        List<UnitLabel> others = UnitTable.named(label);
        if (!others.isEmpty()) {
            return shown + " is " + article(others.get(0).kind()) + "; " + needed(kind) + hint;
        }
        List<String> names = new ArrayList<>();
        for (UnitLabel unit : UnitTable.of(kind)) {
            names.add(unit.name());
        }
        String nearest = Spelling.nearest(label, names);
        if (nearest != null) {
            hint = "; did you mean '" + number + " " + nearest + "'?";
        }
        return "unit '" + shorten(label) + "' in " + shown + " is not known; " + needed(kind) + hint;
    }

    private static String needed(Kind kind) {
        return article(kind) + " is needed";
    }

    private static String suchAs(Kind kind) {
        return ", such as '" + kind.example() + "'";
    }

    private static String article(Kind kind) {
        return ("aeiou".indexOf(kind.word().charAt(0)) >= 0 ? "an " : "a ") + kind.word();
    }

    /** The text with typographic signs in their plain form and single blanks. */
    private static String tidy(String written) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < written.length() && text.length() <= LONGEST; i++) {
            char c = written.charAt(i);
            switch (c) {
                case '\u2212', '\u2013' -> text.append('-');
                case '\u2033', '\u201d', '\u201c' -> text.append('"');
                case '\u2032', '\u2019', '\u2018' -> text.append('\'');
                case '\u00b0' -> text.append(" deg");
                case '\u00b2' -> text.append('2');
                case '\u00b3' -> text.append('3');
                case '\u00b7' -> text.append(' ');
                case '\u00bc' -> text.append(" 1/4");
                case '\u00bd' -> text.append(" 1/2");
                case '\u00be' -> text.append(" 3/4");
                case '\u03a9', '\u2126' -> text.append("ohm");
                default -> text.append(Character.isWhitespace(c) || c == '\u00a0' || c == '\u202f' ? ' ' : c);
            }
        }
        String tidy = text.toString();
        while (tidy.contains("  ")) {
            tidy = tidy.replace("  ", " ");
        }
        return tidy.replace("deg C", "degC").replace("deg F", "degF").strip();
    }

    private static String shorten(String written) {
        boolean odd = written.chars().anyMatch(Character::isISOControl);
        String clean = odd ? written.replaceAll("\\p{Cntrl}", " ") : written;
        return clean.length() <= 40 ? clean : clean.substring(0, 37) + "...";
    }
}
