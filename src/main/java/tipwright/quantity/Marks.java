// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/** Lengths as a tape shows them: whole millimetres, or sixteenths of an inch. */
public final class Marks {
    private static final double INCH = 0.0254;
    private static final double MM = 0.001;
    private static final int PARTS = 16;

    private Marks() {}

    /** The nearest mark of the tape, m. */
    public static double rounded(double m, UnitSystem units) {
        double step = units == UnitSystem.METRIC ? MM : INCH / PARTS;
        return Math.rint(m / step) * step;
    }

    /** Whether a length lies on a mark of the tape, to a thousandth of the way to the next. */
    static boolean on(double m, UnitSystem units) {
        double step = units == UnitSystem.METRIC ? MM : INCH / PARTS;
        double marks = m / step;
        return Math.abs(marks - Math.rint(marks)) < 1e-3;
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
        long sixteenths = Math.round(Math.abs(m) / INCH * PARTS);
        long part = sixteenths % PARTS;
        String text = Long.toString(sixteenths / PARTS);
        if (part > 0) {
            long over = PARTS;
            while (part % 2 == 0) {
                part /= 2;
                over /= 2;
            }
            text = (sixteenths < PARTS ? "" : text + " ") + part + "/" + over;
        }
        return m < 0 && sixteenths > 0 ? "-" + text : text;
    }
}
