// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Words with quantities among them, which whoever shows it writes in the reader's units.
 *
 * @param pieces in order
 */
public record Text(List<Piece> pieces) {
    /** Nothing. */
    public static final Text NONE = new Text(List.of());

    private static final String GAP = "{}";

    /** Copies the list. */
    public Text {
        pieces = List.copyOf(pieces);
    }

    /** Words as they begin a line: with a capital letter. */
    public static String capital(String words) {
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Words or a quantity. */
    public sealed interface Piece permits Words, Amount, Rounded, Length, Marked, Sized {
        String show(UnitSystem units);
    }

    /** What is the same in all units. */
    public record Words(String words) implements Piece {
        @Override
        public String show(UnitSystem units) {
            return words;
        }
    }

    /** A quantity in the unit that suits its kind and size, four significant digits; a length as the tape reads it. */
    public record Amount(double si, Kind kind) implements Piece {
        @Override
        public String show(UnitSystem units) {
            return kind == Kind.LENGTH ? Marks.apart(si, Double.NaN, units) : Quantities.show(si, kind, units);
        }
    }

    /** A length as the tape reads it, with the digits that tell it from another beside it, m. */
    public record Length(double si, double beside) implements Piece {
        @Override
        public String show(UnitSystem units) {
            return Marks.apart(si, beside, units);
        }
    }

    /**
     * A quantity that is rounded to so many decimals of one metric unit; in US units with four significant digits, but where both
     * systems measure it alike.
     *
     * @param unit as its label is read, of the kind
     */
    public record Rounded(double si, Kind kind, String unit, int decimals) implements Piece {
        @Override
        public String show(UnitSystem units) {
            boolean alike = Quantities.unit(kind, UnitSystem.METRIC)
                    .name()
                    .equals(Quantities.unit(kind, UnitSystem.US).name());
            if (units == UnitSystem.METRIC || alike) {
                return fixed(Quantities.unit(kind, unit).fromSi(si), decimals) + " " + unit;
            }
            return switch (unit) {
                case "m2" -> Quantities.show(si, Quantities.unit(kind, "ft2"));
                case "m/s" -> Quantities.show(si, Quantities.unit(kind, "ft/s"));
                default -> Quantities.show(si, kind, units);
            };
        }
    }

    /** A length to the nearest mark of the reader's tape, m. */
    public record Marked(double si) implements Piece {
        @Override
        public String show(UnitSystem units) {
            return Marks.show(si, units);
        }
    }

    /** A length as a shop says it, m: '37.5 mm', '3/8 in', and '0.03 in' where no mark of the tape is that long. */
    public record Sized(double si) implements Piece {
        @Override
        public String show(UnitSystem units) {
            return Marks.fitting(si, units);
        }
    }

    /** Words alone; a quantity in them would not follow the reader's units. */
    public static Text words(String words) {
        return words.isEmpty() ? NONE : new Text(List.of(new Words(words)));
    }

    /** A length beside another that it must not read like unless it is the same, m. */
    public static Text length(double si, double beside) {
        return new Text(List.of(new Length(si, beside)));
    }

    /** A quantity, four significant digits; a length as the tape reads it. */
    public static Text amount(double si, Kind kind) {
        return new Text(List.of(new Amount(si, kind)));
    }

    /** A quantity with so many decimals in a metric unit. */
    public static Text amount(double si, Kind kind, String unit, int decimals) {
        return new Text(List.of(new Rounded(si, kind, unit, decimals)));
    }

    /** A length to the nearest mark of the reader's tape. */
    public static Text mark(double si) {
        return new Text(List.of(new Marked(si)));
    }

    /** A length as a shop says it. */
    public static Text size(double si) {
        return new Text(List.of(new Sized(si)));
    }

    /** An angle in degrees. */
    public static Text degrees(double rad, int decimals) {
        return amount(rad, Kind.ANGLE, "deg", decimals);
    }

    /** A plain number. */
    public static Text number(double value, int decimals) {
        return words(fixed(value, decimals));
    }

    /**
     * Words with gaps that are filled.
     *
     * @param words each '{}' among them is a gap
     * @param fill one for each gap
     */
    public static Text of(String words, Text... fill) {
        Text all = NONE;
        int from = 0;
        for (Text f : fill) {
            int gap = words.indexOf(GAP, from);
            if (gap < 0) {
                throw new IllegalArgumentException(words);
            }
            all = all.plus(words.substring(from, gap)).plus(f);
            from = gap + GAP.length();
        }
        if (words.indexOf(GAP, from) >= 0) {
            throw new IllegalArgumentException(words);
        }
        return all.plus(words.substring(from));
    }

    /** All of them, with words between. */
    public static Text join(String between, List<Text> texts) {
        Text all = NONE;
        for (Text t : texts) {
            all = all.isEmpty() || t.isEmpty() ? all.plus(t) : all.plus(between).plus(t);
        }
        return all;
    }

    /** This and then that. */
    public Text plus(Text then) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(then.pieces);
        return new Text(all);
    }

    /** This and then words. */
    public Text plus(String then) {
        return plus(words(then));
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** In the reader's units. */
    public String show(UnitSystem units) {
        return pieces.stream().map(p -> p.show(units)).collect(Collectors.joining());
    }

    /** In metric units, as files have it. */
    public String metric() {
        return show(UnitSystem.METRIC);
    }

    /** Rounded half up: '0.10' with two decimals. */
    private static String fixed(double value, int decimals) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                : Double.toString(value);
    }
}
