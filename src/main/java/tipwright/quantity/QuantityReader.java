// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import org.jspecify.annotations.Nullable;

/** Reads a quantity as written by a builder. */
final class QuantityReader {
    private static final int LONGEST = 80;
    private static final double LARGEST = 1e15;
    private static final String[] FEET = {"ft", "foot", "feet", "'"};

    private QuantityReader() {}

    /**
     * A number of a unit.
     *
     * @param unit null for a bare number
     */
    record Parsed(double number, @Nullable UnitLabel unit, double si) {}

    /** A quantity with its doubt; a thickness may also be a gauge or called plate. */
    static Estimate estimate(String written, Kind kind, String likely, boolean thickness) throws QuantityException {
        Doubt doubt = Doubt.in(written);
        if (!thickness && kind == Kind.LENGTH && SheetThickness.isGauge(doubt.base())) {
            throw new QuantityException("'" + written.strip()
                    + "' is a gauge of steel sheet, which only tells a thickness; a length is needed, such as '"
                    + kind.example() + "'");
        }
        if (kind == Kind.AREA && WireGauge.isNamed(doubt.base())) {
            throw new QuantityException("'" + written.strip() + "' is a gauge of wire: write it under 'awg:', as 'awg: "
                    + WireGauge.asNumber(doubt.base()) + "'; an area is needed here, such as '" + kind.example() + "'");
        }
        Parsed value = read(thickness ? SheetThickness.asLength(doubt.base()) : doubt.base(), kind, likely);
        UnitLabel unit = value.unit();
        return new Estimate(value.si(), doubt.standard(value, kind, written), unit == null ? "" : unit.name());
    }

    static Parsed read(String written, Kind kind) throws QuantityException {
        return read(written, kind, "");
    }

    private static Parsed read(String written, Kind kind, String likely) throws QuantityException {
        String text = tidy(written);
        boolean signed = text.startsWith("-") || text.startsWith("+");
        int start = !signed ? 0 : text.startsWith(" ", 1) ? 2 : 1;
        NumberText number = text.length() > LONGEST ? null : NumberText.at(text, start);
        if (number == null) {
            throw notANumber(Complaint.about(written, text, kind), start);
        }
        double sign = text.startsWith("-") ? -1 : 1;
        String label = text.substring(number.end()).strip();
        NumberText inches = kind == Kind.LENGTH ? inches(label) : null;
        if (inches != null) {
            UnitLabel inch = UnitTable.find("in", Kind.LENGTH);
            return finish(sign * (12 * number.value() + inches.value()), inch, written, text, kind);
        }
        UnitLabel unit = UnitTable.find(label, kind);
        if (unit == null && !(label.isEmpty() && kind == Kind.RATIO)) {
            Complaint complaint = Complaint.about(written, text, kind);
            throw label.isEmpty()
                    ? complaint.noUnit(likely)
                    : notAUnit(complaint, text.substring(0, number.end()), label);
        }
        return finish(sign * number.value(), unit, written, text, kind);
    }

    private static QuantityException notANumber(Complaint complaint, int start) {
        String text = complaint.written();
        if (text.isEmpty()) {
            return complaint.nothing();
        }
        if (text.length() > LONGEST) {
            return complaint.tooLong();
        }
        int comma = text.indexOf(',');
        boolean decimal = comma > start
                && comma + 1 < text.length()
                && Character.isDigit(text.charAt(comma - 1))
                && Character.isDigit(text.charAt(comma + 1));
        return decimal ? complaint.comma() : complaint.noNumber();
    }

    private static QuantityException notAUnit(Complaint complaint, String number, String label) {
        return Character.isDigit(label.charAt(0)) ? complaint.twoNumbers() : complaint.wrongUnit(number, label);
    }

    private static Parsed finish(double number, @Nullable UnitLabel unit, String written, String text, Kind kind)
            throws QuantityException {
        double si = unit == null ? number : unit.toSi(number);
        if (!(Math.abs(si) <= LARGEST)) {
            Complaint complaint = Complaint.about(written, text, kind);
            throw text.indexOf('/') >= 0 ? complaint.overNothing() : complaint.tooLarge();
        }
        return new Parsed(number, unit, si);
    }

    /** The inches in what follows the feet's number: 'ft 4 1/2 in', '\' - 4"'; null when it is nothing of the kind. */
    private static @Nullable NumberText inches(String label) {
        for (String feet : FEET) {
            if (label.startsWith(feet)) {
                String rest = label.substring(feet.length()).strip();
                String bare = rest.startsWith("-") ? rest.substring(1).strip() : rest;
                NumberText number = NumberText.at(bare, 0);
                UnitLabel unit = number == null
                        ? null
                        : UnitTable.find(bare.substring(number.end()).strip(), Kind.LENGTH);
                return unit != null && unit.name().equals("in") ? number : null;
            }
        }
        return null;
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
}
