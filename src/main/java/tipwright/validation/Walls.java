// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.function.ToDoubleFunction;
import tipwright.strength.CircularPlate;
import tipwright.strength.CylinderShell;
import tipwright.strength.OutsidePressure;
import tipwright.strength.PatchLoad;
import tipwright.strength.PlateBending;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.PlateUnderPressure.Edge;
import tipwright.strength.Saddle;
import tipwright.strength.ShellForces;
import tipwright.strength.ShellPatch;
import tipwright.strength.StiffenedWall;
import tipwright.strength.StiffenerBar;

/** Round and flat walls. */
final class Walls {
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;
    private static final double MM = 1e-3;

    private Walls() {}

    static void addTo(Figures figures) {
        shells(figures);
        saddles(figures);
        plates(figures);
        vacuum(figures);
    }

    private static void shells(Figures figures) {
        figures.add("pinched-cylinder", Walls::pinched);
        double[][] rows = {
            {600, 4, 4800, 100}, {600, 4, 2400, 100}, {600, 4, 4800, 200}, {600, 6, 4800, 100}, {600, 10, 4800, 150}
        };
        for (int i = 0; i < rows.length; i++) {
            double[] row = rows[i];
            figures.add("patch-" + (i + 1), () -> middle(row).around(row[1] * MM, 1) / 1e6);
        }
        figures.add("patch-along", () -> middle(rows[0]).along(0.004, 1) / 1e6);
        figures.add("patch-dent", () -> middle(rows[0]).moved() / MM);
    }

    /** Two opposed forces on very small patches; deflection under one of them times E t / P. */
    private static double pinched() {
        CylinderShell shell = new CylinderShell(0.3, 0.003, 0.6, 3e9, 0.3);
        ShellPatch patch = new ShellPatch(shell, 0.3, 0.0003, 0.0003);
        PatchLoad one = new PatchLoad(1, 0, 0);
        double moved =
                patch.at(one, 0.3, 0).moved() + patch.at(one, 0.3, Math.PI).moved();
        return moved * 3e9 * 0.003;
    }

    /** 5 kN on a square patch at mid-length: radius, wall, length, side, mm. */
    private static ShellForces middle(double[] row) {
        CylinderShell shell = CylinderShell.steel(row[0] * MM, row[1] * MM, row[2] * MM);
        double half = row[3] / 2 * MM;
        double at = row[2] / 2 * MM;
        return new ShellPatch(shell, at, half, half).at(new PatchLoad(5000, 0, 0), at, 0);
    }

    private static void saddles(Figures figures) {
        figures.add("zick-k2-120", () -> saddle(120, 0.2).k2());
        figures.add("zick-k3-120", () -> saddle(120, 0.2).k3());
        figures.add("zick-k4-120", () -> saddle(120, 0.2).k4());
        figures.add("zick-k5-120", () -> saddle(120, 0.2).k5());
        figures.add("zick-k2-152", () -> saddle(152, 0.2).k2());
        figures.add("zick-k5-152", () -> saddle(152, 0.2).k5());
        figures.add("zick-k2-130", () -> saddle(130, 0.2).k2());
        figures.add("zick-k5-130", () -> saddle(130, 0.2).k5());
        figures.add("zick-k3-152", () -> saddle(152, 0.2).k3());
        figures.add("zick-k4-152", () -> saddle(152, 0.2).k4());
        figures.add("horn-near", () -> saddle(120, 0.3).horn(20_000, false) / 1e6);
        figures.add("horn-far", () -> saddle(120, 0.6).horn(20_000, false) / 1e6);
    }

    private static Saddle saddle(double degrees, double overhang) {
        return new Saddle(Math.toRadians(degrees), 0.6, 0.006, 0.150, 4.8, overhang);
    }

    private static void plates(Figures figures) {
        Edge held = Edge.SUPPORTED;
        Edge fixed = Edge.CLAMPED;
        figures.add("plate-square", () -> beta(1, 1, held, held, held, 1));
        figures.add("plate-1.6", () -> beta(1, 1.6, held, held, held, 1));
        figures.add("plate-2", () -> beta(1, 2, held, held, held, 1));
        figures.add("plate-5", () -> beta(1, 5, held, held, held, 1));
        figures.add("plate-square-sag", () -> alpha(1, 1, held, 1));
        figures.add("plate-5-sag", () -> alpha(1, 5, held, 1));
        figures.add("plate-clamped", () -> beta(1, 1, fixed, fixed, fixed, 1));
        figures.add("plate-clamped-2", () -> beta(1, 2, fixed, fixed, fixed, 1));
        figures.add("plate-clamped-sag", () -> alpha(1, 1, fixed, 1));
        figures.add("wall-half", () -> beta(1, 0.5, held, held, held, 0));
        figures.add("wall-quarter", () -> beta(1, 0.25, held, held, held, 0));
        figures.add("wall-open-even-half", () -> beta(1, 0.5, held, held, Edge.FREE, 1));
        figures.add("wall-open-even-square", () -> beta(1, 1, held, held, Edge.FREE, 1));
        figures.add("wall-open-even-4", () -> beta(1, 4, held, held, Edge.FREE, 1));
        figures.add("wall-open-0.667", () -> beta(1, 0.667, held, held, Edge.FREE, 0));
        figures.add("wall-open-square", () -> beta(1, 1, held, held, Edge.FREE, 0));
        figures.add("wall-clamped-square", () -> beta(1, 1, fixed, fixed, fixed, 0));
        // The page takes the table's row for half as high as wide.
        figures.add(
                "side-wall",
                () -> 98.425 * Math.sqrt(beta(1, 0.5, held, held, held, 0) * 47.244 * 0.036 / 20_000) * 25.4);
        figures.add("lid", () -> lid(PlateBending::direct) / PSI);
        figures.add("lid-sag", () -> lid(PlateBending::moved) / INCH);
        figures.add("flat-end-free", () -> end(false).direct());
        figures.add("flat-end-held", () -> end(true).direct());
        // Deflection in q a4 over the plate's stiffness, E t3 / (12 (1 - 0.3^2)).
        figures.add("flat-end-sag", () -> end(false).moved() * 200e9 / (12 * 0.91));
        figures.add("stiffener-inertia", () -> stiffened().inertia() * 1e12);
        figures.add("stiffener-moment", () -> stiffened().moment(0, 10_000));
    }

    /** Greatest bending stress over q s^2 / t^2 with s the width; pressure 1 at the bottom. */
    private static double beta(double width, double height, Edge sides, Edge bottom, Edge top, double high) {
        return PlateUnderPressure.steel(width, height, 0.01, sides, bottom, top)
                        .under(1, high)
                        .direct()
                * 1e-4
                / (width * width);
    }

    private static double alpha(double width, double height, Edge edge, double high) {
        return PlateUnderPressure.steel(width, height, 0.01, edge, edge, edge)
                        .under(1, high)
                        .moved()
                * 200e9
                * 1e-6;
    }

    /** A round plate as thick as its radius under 1 Pa: figures over q a2/t2. */
    private static PlateBending end(boolean held) {
        return CircularPlate.steel(1, 1, held).under(1);
    }

    private static double lid(ToDoubleFunction<PlateBending> figure) {
        Edge held = Edge.SUPPORTED;
        double modulus = 27.5e6 * PSI;
        double width = 177.2 * INCH;
        return figure.applyAsDouble(
                new PlateUnderPressure(width, 39.3 * INCH, 0.39 * INCH, modulus, 0.3, held, held, held, 0)
                        .under(0.19 * PSI, 0.19 * PSI));
    }

    private static StiffenedWall stiffened() {
        return new StiffenedWall(StiffenerBar.flat(0.006, 0.060), 0.004, 0.4, 1.2, 200e9, 235e6);
    }

    private static void vacuum(Figures figures) {
        figures.add(
                "long-tube",
                () -> new OutsidePressure(13.5 * INCH, 0.375 * INCH, 40, 29e6 * PSI, 0.29).critical() / PSI);
        figures.add("drum-290", () -> cavesIn(290, 0.61, 380));
        figures.add("drum-505", () -> cavesIn(505, 0.91, 250));
        figures.add("drum-571-851", () -> cavesIn(571, 1.21, 851));
        figures.add("drum-571-284", () -> cavesIn(571, 1.21, 284));
        figures.add("drum-571-213", () -> cavesIn(571, 1.21, 213));
        figures.add("drum-571-thin", () -> cavesIn(571, 0.91, 284));
        figures.add("drum-10-gauge", () -> cavesIn(1219.2, 3.416, 1828.8));
        figures.add("drum-quarter-inch", () -> cavesIn(1219.2, 6.35, 1828.8));
    }

    /** Critical pressure of a steel shell, kPa, from mm. */
    private static double cavesIn(double diameter, double wall, double length) {
        return OutsidePressure.steel(diameter * MM, wall * MM, length * MM).critical() / 1e3;
    }
}
