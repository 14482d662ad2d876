// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.Locale;
import tipwright.geometry.Vec2;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** Lengths as they are read off a tape: whole millimetres, or inches and sixteenths. */
final class Lengths {
    private static final double INCH = 0.0254;

    private Lengths() {}

    static String unit(UnitSystem units) {
        return units == UnitSystem.METRIC ? "mm" : "in";
    }

    /** The nearest marks of the tape, m. */
    static Vec2 rounded(Vec2 p, UnitSystem units) {
        return new Vec2(Marks.rounded(p.x(), units), Marks.rounded(p.y(), units));
    }

    static String point(Vec2 p, UnitSystem units) {
        return "[" + Marks.show(p.x(), units) + ", " + Marks.show(p.y(), units) + "]";
    }

    /** To a tenth of a millimetre or a hundredth of an inch, for comparison. */
    static String fine(double m, UnitSystem units) {
        return units == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.1f mm", m * 1000)
                : String.format(Locale.ROOT, "%.2f in", m / INCH);
    }

    /** Distance of the ticks of an axis of some length, m. */
    static double tick(double length, UnitSystem units) {
        double[] steps = units == UnitSystem.METRIC
                ? new double[] {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1}
                : new double[] {INCH / 2, INCH, 2 * INCH, 4 * INCH, 8 * INCH, 16 * INCH, 32 * INCH};
        int i = 0;
        while (i < steps.length - 1 && length / steps[i] > 9) {
            i++;
        }
        return steps[i];
    }
}
