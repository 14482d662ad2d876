// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is said about a text that is no quantity.
 *
 * @param written the text, tidied
 * @param shown the text as written, in quotes, shortened
 * @param kind what is needed
 */
record Complaint(String written, String shown, Kind kind) {
    private static final int LONGEST = 40;
    private static final List<String> TONS = List.of("ton", "tons");
    private static final Map<String, String> SISTERS =
            Map.of("lb", "lbf", "lbs", "lbf", "lbf", "lb", "kg", "kgf", "kgf", "kg");

    static Complaint about(String written, String tidy, Kind kind) {
        return new Complaint(tidy, "'" + shortened(written) + "'", kind);
    }

    QuantityException nothing() {
        return new QuantityException("nothing given; " + needed() + suchAs());
    }

    QuantityException tooLong() {
        return new QuantityException(shown + " is no quantity; " + needed() + suchAs());
    }

    QuantityException noNumber() {
        return new QuantityException("no number in " + shown + "; " + needed() + suchAs());
    }

    QuantityException twoNumbers() {
        return new QuantityException("two numbers in " + shown + "; " + needed() + suchAs());
    }

    QuantityException overNothing() {
        return new QuantityException("a fraction over 0 in " + shown + "; " + needed() + suchAs());
    }

    QuantityException tooLarge() {
        return new QuantityException(shown + " is too large; is the unit right?");
    }

    QuantityException comma() {
        boolean thousands = written.indexOf(',') != written.lastIndexOf(',');
        return new QuantityException("comma in " + shown
                + "; write decimals with a point and no thousands marks, such as '"
                + written.replace(",", thousands ? "" : ".") + "': a ',' starts the next value");
    }

    QuantityException noUnit(String usedMost) {
        String likely = usedMost.isEmpty() ? UnitTable.of(kind).get(0).name() : usedMost;
        return new QuantityException(
                "no unit in " + shown + "; " + needed() + "; did you mean '" + written + " " + likely + "'?");
    }

    /**
     * A unit of another kind, or one that nobody knows.
     *
     * @param number as written
     */
    QuantityException wrongUnit(String number, String label) {
        String sister = SISTERS.get(label);
        String hint = sister != null && UnitTable.find(sister, kind) != null
                ? "; did you mean '" + number + " " + sister + "'?"
                : suchAs();
        if (kind == Kind.MASS && TONS.contains(label)) {
            return new QuantityException("unit '" + label + "' in " + shown + " may be 1000 kg or 2000 lb; write '"
                    + number + " t' or '" + number + " ton (US)'");
        }
        List<UnitLabel> others = UnitTable.named(label);
        if (!others.isEmpty()) {
            return new QuantityException(shown + " is " + article(others.get(0).kind()) + "; " + needed() + hint);
        }
        List<String> names = new ArrayList<>();
        for (UnitLabel unit : UnitTable.of(kind)) {
            names.add(unit.name());
        }
        String nearest = Spelling.nearest(label, names);
        if (nearest != null) {
            hint = "; did you mean '" + number + " " + nearest + "'?";
        }
        return new QuantityException(
                "unit '" + shortened(label) + "' in " + shown + " is not known; " + needed() + hint);
    }

    private String needed() {
        return article(kind) + " is needed";
    }

    private String suchAs() {
        return ", such as '" + kind.example() + "'";
    }

    private static String article(Kind kind) {
        return ("aeiou".indexOf(kind.word().charAt(0)) >= 0 ? "an " : "a ") + kind.word();
    }

    private static String shortened(String written) {
        String head = written.length() <= LONGEST ? written : written.substring(0, LONGEST - 3) + "...";
        return head.replaceAll("\\p{Cntrl}", " ");
    }
}
