// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes quantities as builders read them. */
final class QuantityWriter {
    private static final int DIGITS = 4;

    private QuantityWriter() {}

    static String show(double si, Kind kind, UnitSystem system) {
        return kind == Kind.RATIO
                ? number(si)
                : kind == Kind.LENGTH && system == UnitSystem.US && Double.isFinite(si)
                        ? Marks.inches(si) + " in"
                        : show(si, suited(si, kind, system));
    }

    /** Two significant digits below ten, else three. */
    static String rough(double si, Kind kind, UnitSystem system) {
        UnitLabel unit = suited(si, kind, system);
        double value = unit.fromSi(si);
        return number(value, Math.abs(value) < 10 ? 2 : 3) + " " + unit.name();
    }

    static String show(double si, UnitLabel unit) {
        return number(unit.fromSi(si)) + " " + unit.name();
    }

    /** Four significant digits, all digits before the point, no exponent, no needless zeros. */
    static String number(double value) {
        return number(value, DIGITS);
    }

    static String number(double value, int digits) {
        if (Double.isNaN(value)) {
            return "not known";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "unlimited" : "-unlimited";
        }
        BigDecimal exact = new BigDecimal(value);
        int whole = exact.precision() - exact.scale();
        BigDecimal round = exact.round(new MathContext(Math.max(digits, whole), RoundingMode.HALF_UP));
        if (round.abs().compareTo(new BigDecimal("0.0001")) < 0) {
            return "0";
        }
        return round.stripTrailingZeros().toPlainString();
    }

    /** The unit that suits a value's size. */
    private static UnitLabel suited(double si, Kind kind, UnitSystem system) {
        UnitLabel main = main(kind, system);
        double size = Math.abs(si);
        String better =
                switch (main.name()) {
                    case "N" -> size >= 1000 ? "kN" : "N";
                    case "W" -> size >= 1000 ? "kW" : "W";
                    case "MPa" -> size < 1e4 ? "Pa" : size < 1e6 ? "kPa" : "MPa";
                    case "psi" -> size >= 6.9e7 ? "ksi" : "psi";
                    default -> main.name();
                };
        UnitLabel unit = UnitTable.find(better, kind);
        return unit == null ? main : unit;
    }

    /** The usual unit of a kind. */
    static UnitLabel main(Kind kind, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        String name =
                switch (kind) {
                    case LENGTH -> us ? "in" : "mm";
                    case AREA -> us ? "in2" : "cm2";
                    case VOLUME -> us ? "gal" : "L";
                    case MASS -> us ? "lb" : "kg";
                    case DENSITY -> us ? "lb/ft3" : "kg/m3";
                    case FORCE -> us ? "lbf" : "N";
                    case MOMENT -> us ? "lbf ft" : "N m";
                    case PRESSURE -> us ? "psi" : "MPa";
                    case ANGLE -> "deg";
                    case SPEED -> us ? "in/s" : "mm/s";
                    case FLOW -> us ? "gpm" : "L/min";
                    case TIME -> "s";
                    case VOLTAGE -> "V";
                    case CURRENT -> "A";
                    case POWER -> us ? "hp" : "W";
                    case ENERGY -> "Wh";
                    case CHARGE -> "Ah";
                    case RESISTANCE -> "mohm";
                    case TEMPERATURE -> us ? "degF" : "degC";
                    case STIFFNESS -> us ? "lbf/in" : "N/mm";
                    case ANGULAR_STIFFNESS -> us ? "lbf ft/deg" : "N m/deg";
                    case VISCOSITY -> "mm2/s";
                    case PRESSURE_VELOCITY -> us ? "psi ft/min" : "MPa m/s";
                    case RATIO -> "%";
                };
        UnitLabel unit = UnitTable.find(name, kind);
        if (unit == null) {
            throw new IllegalStateException(name);
        }
        return unit;
    }
}
