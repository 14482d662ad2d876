// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.fluid.OilColumn;
import tipwright.fluid.OilLine;
import tipwright.fluid.OilViscosity;
import tipwright.fluid.ViscosityIndex;
import tipwright.strength.Impact;

/** Oil in the cold and in hoses; what stops a moving load. */
final class Oils {
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;
    private static final double GPM = 231 * INCH * INCH * INCH / 60;
    private static final double FOOT = 0.3048;

    private static final OilViscosity FORTY_SIX = oil(40, 46, 100, 6.7617);

    private Oils() {}

    static void addTo(Figures figures) {
        viscosity(figures);
        lines(figures);
        stops(figures);
    }

    private static void viscosity(Figures figures) {
        figures.add("oil-404", () -> cst(oil(40, 404, 100, 28), 60));
        OilViscosity sixtyEight = oil(40, 68, 80, 14.85);
        figures.add("oil-68", () -> cst(sixtyEight, 100));
        figures.add("oil-68-index", sixtyEight::index);
        figures.add("oil-68-8.6-index", () -> ViscosityIndex.of(68e-6, 8.6e-6));
        figures.add("oil-30-5.23", () -> cst(oil(40, 30, 100, 5.23), 60));
        figures.add("oil-68-8.6", () -> cst(oil(40, 68, 100, 8.6), 60));
        figures.add("oil-d2270", () -> ViscosityIndex.of(73.30e-6, 8.86e-6));
        figures.add("oil-46-100", () -> cst(OilViscosity.ofGrade(46e-6, 100), 100));
        figures.add("oil-46-20", () -> cst(FORTY_SIX, 20));
        figures.add("oil-46-0", () -> cst(FORTY_SIX, 0));
        figures.add("oil-46-cold", () -> cst(FORTY_SIX, -20));
    }

    private static OilViscosity oil(double celsius1, double cst1, double celsius2, double cst2) {
        return OilViscosity.through(273.15 + celsius1, cst1 * 1e-6, 273.15 + celsius2, cst2 * 1e-6);
    }

    private static double cst(OilViscosity oil, double celsius) {
        return oil.at(273.15 + celsius) * 1e6;
    }

    private static void lines(Figures figures) {
        OilLine chart = new OilLine(0.625 * INCH, 10 * FOOT);
        figures.add("hose-chart", () -> chart.loss(8 * GPM, 20e-6, 850) / PSI);
        OilLine own = new OilLine(0.010, 5);
        for (int celsius : new int[] {40, 0, -10}) {
            figures.add("hose-" + celsius, () -> own.loss(1e-2 / 60, FORTY_SIX.at(273.15 + celsius), 870) / 1e5);
        }
        figures.add("trapped", () -> new OilColumn(1, 1, 3.0e5 * PSI, 0).warming(0.00046 * 1.8, 50 / 1.8) / PSI);
        figures.add("hammer", () -> OilColumn.hammer(870, 1.4e9, 3) / 1e5);
        figures.add("oil-stop", () -> new OilColumn(0.002, 0.5e-3, 1.4e9, 0).stopping(2000, 0.05) / 1e5);
    }

    private static void stops(Figures figures) {
        double weight = 10 * 9.81;
        double sag = weight / 200e3;
        figures.add("drop-force", () -> weight * Impact.factor(0.012, sag));
        figures.add("drop-stress", () -> weight * Impact.factor(0.012, sag) / 1000 * 158);
        figures.add("drop-2.5", () -> Impact.factor(2.5, 1));
        figures.add("drop-7.5", () -> Impact.factor(7.5, 1));
        figures.add("drop-10", () -> Impact.factor(10, 1));
        figures.add("stop-weight", () -> Impact.force(1000, 0.3, 2e6, 9806.65));
        figures.add("stop-alone", () -> Impact.force(1000, 0.3, 2e6));
    }
}
