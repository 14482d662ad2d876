// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Lengths as a tape shows them: whole millimetres, or sixteenths of an inch. */
public final class Marks {
    private static final double INCH = 0.0254;
    private static final double MM = 0.001;
    private static final int PARTS = 16;
    private static final int FINE_PARTS = 32;
    private static final int FIGURES = 4;
    /** From this on, m, whole millimetres will do. */
    private static final double WHOLE_FROM = 0.01;

    /** Decimals of an inch that is on no mark, and the most of any length. */
    private static final int FINEST = 3;

    private static final int MOST = 7;

    /** Two lengths nearer than this, as a share, are one. */
    private static final double SAME = 1e-9;

    private static final double FOOT = 12;
    private static final double QUARTER = 0.25;
    /** As near to a mark as this, in parts of 1/32 in, a length is on it. */
    private static final double ON_MARK = 0.016;

    private Marks() {}

    /** From one mark of the tape to the next, m. */
    public static double step(UnitSystem units) {
        return units == UnitSystem.METRIC ? MM : INCH / PARTS;
    }

    /** The nearest mark of the tape, m. */
    public static double rounded(double m, UnitSystem units) {
        double step = step(units);
        return Math.rint(m / step) * step;
    }

    /** As on the tape, with its unit: '412 mm', '16 1/4 in'. */
    public static String show(double m, UnitSystem units) {
        return bare(m, units) + (units == UnitSystem.METRIC ? " mm" : " in");
    }

    /** As on the tape, without unit. */
    public static String bare(double m, UnitSystem units) {
        if (units == UnitSystem.METRIC) {
            return Long.toString(Math.round(m / MM));
        }
        return fraction(m, PARTS);
    }

    /**
     * Inches as a shop says them, without unit: to the nearest 1/16, under a foot to the nearest 1/32, under a quarter to a thousandth
     * where it is on no mark. Source: common practice, no source.
     */
    static String inches(double m) {
        double size = Math.abs(m) / INCH;
        double marks = size * FINE_PARTS;
        if (size < QUARTER && Math.abs(marks - Math.rint(marks)) > ON_MARK) {
            return new BigDecimal(m / INCH)
                    .setScale(3, RoundingMode.HALF_UP)
                    .stripTrailingZeros()
                    .toPlainString();
        }
        return fraction(m, size < FOOT ? FINE_PARTS : PARTS);
    }

    /**
     * A size that something else must fit, with its unit: inches on a mark of 1/32 as a fraction, others with four digits, since a bore of
     * 25 mm is none of 31/32 in.
     */
    static String fitting(double m, UnitSystem units) {
        double marks = Math.abs(m) / INCH * FINE_PARTS;
        if (units == UnitSystem.METRIC || Math.abs(marks - Math.rint(marks)) < 1e-3) {
            return Quantities.show(m, Kind.LENGTH, units);
        }
        return new BigDecimal(m / INCH)
                        .round(new MathContext(FIGURES, RoundingMode.HALF_UP))
                        .stripTrailingZeros()
                        .toPlainString()
                + " in";
    }

    /**
     * A length that was worked out, with its unit, as a tape reads it: whole millimetres from 10 mm on, tenths below; inches as a shop
     * says them. Beside another it has as many more digits as it takes not to read as that one, so that what is over a limit is never
     * told as what is on it.
     *
     * @param beside m; NaN: none
     */
    static String apart(double m, double beside, UnitSystem units) {
        if (!Double.isFinite(m)) {
            return Quantities.number(m) + " "
                    + Quantities.unit(Kind.LENGTH, units).name();
        }
        boolean alone = !Double.isFinite(beside) || Math.abs(m - beside) <= SAME * Math.abs(m);
        if (units == UnitSystem.US && (alone || !inches(m).equals(inches(beside)))) {
            return inches(m) + " in";
        }
        double unit = units == UnitSystem.METRIC ? MM : INCH;
        int decimals = units == UnitSystem.US ? FINEST : Math.abs(m) >= WHOLE_FROM ? 0 : 1;
        BigDecimal read = decimals(m / unit, decimals);
        while (decimals < MOST
                && ((read.signum() == 0 && m != 0)
                        || (!alone && read.compareTo(decimals(beside / unit, decimals)) == 0))) {
            decimals++;
            read = decimals(m / unit, decimals);
        }
        return (read.signum() == 0 ? "0" : read.stripTrailingZeros().toPlainString())
                + (units == UnitSystem.METRIC ? " mm" : " in");
    }

    private static BigDecimal decimals(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String fraction(double m, int parts) {
        long all = Math.round(Math.abs(m) / INCH * parts);
        long part = all % parts;
        String text = Long.toString(all / parts);
        if (part > 0) {
            long over = parts;
            while (part % 2 == 0) {
                part /= 2;
                over /= 2;
            }
            text = (all < parts ? "" : text + " ") + part + "/" + over;
        }
        return m < 0 && all > 0 ? "-" + text : text;
    }
}
