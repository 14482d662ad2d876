// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;
import tipwright.quantity.UnitSystem;

/**
 * One unit for a whole column of numbers.
 *
 * @param label the unit
 * @param decimals that are shown
 */
public record Scale(UnitLabel label, int decimals) {
    /** Whole millimetres, or sixteenths of an inch. */
    public static Scale length(UnitSystem system) {
        return system == UnitSystem.US ? of("in", Kind.LENGTH, 2) : of("mm", Kind.LENGTH, 0);
    }

    /** kN with two decimals, or whole lbf. */
    public static Scale force(UnitSystem system) {
        return system == UnitSystem.US ? of("lbf", Kind.FORCE, 0) : of("kN", Kind.FORCE, 2);
    }

    /** Degrees with one decimal. */
    public static Scale angle() {
        return of("deg", Kind.ANGLE, 1);
    }

    static Scale time() {
        return of("s", Kind.TIME, 1);
    }

    /** Percent with one decimal. */
    public static Scale percent() {
        return of("%", Kind.RATIO, 1);
    }

    private static Scale of(String unit, Kind kind, int decimals) {
        return new Scale(Quantities.unit(kind, unit), decimals);
    }

    /** As shown in the column's head. */
    public String unit() {
        return label.name();
    }

    /** The number alone, rounded; '-' where there is none. Zeros after the point stay, so that columns line up; inches are on marks. */
    public String number(double si) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        if (label.name().equals("in")) {
            return Marks.bare(si, UnitSystem.US);
        }
        return new BigDecimal(label.fromSi(si))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The number without needless zeros, and its unit: '7.9 kN'. */
    public String show(double si) {
        return plain(si) + " " + unit();
    }

    /** The number without needless zeros. */
    public String plain(double si) {
        String number = number(si);
        int end = number.length();
        if (number.indexOf('.') >= 0) {
            while (number.charAt(end - 1) == '0') {
                end--;
            }
            if (number.charAt(end - 1) == '.') {
                end--;
            }
        }
        return number.substring(0, end);
    }
}
