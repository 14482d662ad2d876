// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.design.joint.Lug;
import tipwright.strength.Beam;
import tipwright.strength.Column;
import tipwright.strength.LugStress;
import tipwright.strength.PinStress;
import tipwright.strength.RectangularTube;

/** Columns, pins, lugs and beams. */
final class Strength {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168361e6;
    private static final double LBF = 4.4482216152605;
    private static final Lug LUG = new Lug(0.06, 0.012, 0.025, 0.035, 1, 235e6);

    private Strength() {}

    static void addTo(Figures figures) {
        figures.add("hibbeler-13-1", () -> pipe(7.2, 0.150, 0.140, 200e9, 250e6));
        // The book asks for the elastic load, so the yield is set high enough for Euler to govern.
        figures.add("gere-11-4-2", () -> pipe(1.2, 0.040, 0.036, 210e9, 600e6));
        figures.add("faires-johnson", () -> rod(25, 1.096, 48));
        figures.add("faires-euler", () -> rod(50, 1.507, 48));
        figures.add("faires-strong", () -> rod(25, 1.0657, 150));
        figures.add("stepped", () -> Column.stepped(1, 0.5, 2, 0.5) / (Math.PI * Math.PI));
        figures.add("rod-and-body", Strength::rodAndBody);
        figures.add("shigley-3-40", () -> PinStress.bending(INCH / 2, 1000 * LBF * (0.5 / 4 + 0.75 / 8) * INCH) / KSI);
        figures.add("shigley-3-40-shear", () -> PinStress.shear(INCH / 2, 500 * LBF) / KSI);
        figures.add("shigley-3-41", () -> PinStress.bending(0.012, 4000 * (0.006 / 4 + 0.018 / 8)) / 1e6);
        figures.add("shigley-3-41-shear", () -> PinStress.shear(0.012, 2000) / 1e6);
        // The mean shear is three quarters of the largest; half of the force goes through each face.
        figures.add("double-shear", () -> 385e6 / (0.75 * PinStress.shear(0.015, 0.5)) / 1000);
        figures.add("lug-bearing", () -> LugStress.bearing(new Lug(0.03, 0.005, 0.006, 0.02, 2, 235e6), 5000) / 1e6);
        figures.add("lug-tear-out", () -> LugStress.tearOut(LUG, 30_000) / 1e6);
        figures.add("lug-net", () -> LugStress.netSection(LUG, 30_000) / 1e6);
        beams(figures);
    }

    private static void beams(Figures figures) {
        RectangularTube tube = new RectangularTube(0.1, 0.05, 0.004);
        Beam beam = new Beam(-0.4, 0.4);
        double[] middle = {0};
        double[] nine = {9000};
        double[] two = {-0.15, 0.15};
        double[] four = {4000, 4000};
        figures.add("tube-inertia", () -> tube.inertia() * 1e12);
        figures.add("tube-stress", () -> 2000 / tube.modulus() / 1e6);
        figures.add("middle-load", () -> beam.moment(0, middle, nine));
        figures.add("middle-sag", () -> beam.deflection(0, middle, nine, 5e5) * 1000);
        figures.add("two-loads-sag", () -> beam.deflection(0, two, four, 5e5) * 1000);
        figures.add("overhang", () -> new Beam(0, 1).second(new double[] {1.3}, new double[] {1000}));
    }

    /** kN. */
    private static double pipe(double length, double outside, double inside, double modulus, double yield) {
        double area = Math.PI * (outside * outside - inside * inside) / 4;
        return Column.uniform(length, area, inertia(outside, inside), modulus, yield) / 1000;
    }

    /** kip, from inches and ksi. */
    private static double rod(double length, double diameter, double yield) {
        double d = diameter * INCH;
        double area = Math.PI * d * d / 4;
        return Column.uniform(length * INCH, area, inertia(d, 0), 30e3 * KSI, yield * KSI) / (1000 * LBF);
    }

    private static double rodAndBody() {
        return Column.stepped(205e9 * inertia(0.025, 0), 0.400, 205e9 * inertia(0.060, 0.050), 0.450) / 1000;
    }

    private static double inertia(double outside, double inside) {
        return Math.PI * (Math.pow(outside, 4) - Math.pow(inside, 4)) / 64;
    }
}
