// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

/**
 * An oil's viscosity over temperature, from two points of it: log log (nu + 0.7) = A - B log T, nu in mm2/s.
 *
 * <p>Source: ASTM D341, after C. Walther (worked values on public pages, read). Between the two points it is good to a few percent;
 * below 0 C it is an extrapolation and 15 % off is nothing unusual (from memory). Below its pour point an oil does not flow at all,
 * which the formula does not know.
 *
 * @param a the line's height
 * @param b its slope
 */
public record OilViscosity(double a, double b) {
    private static final double MM2 = 1e-6;
    private static final double FORTY = 313.15;
    private static final double HUNDRED = 373.15;

    /**
     * Through two points.
     *
     * @param kelvin1 temperature, K
     * @param nu1 viscosity, m2/s, at least 2 mm2/s
     * @param kelvin2 another temperature, K
     * @param nu2 viscosity at it, m2/s, at least 2 mm2/s
     */
    public static OilViscosity through(double kelvin1, double nu1, double kelvin2, double nu2) {
        if (!(nu1 >= 2 * MM2 && nu2 >= 2 * MM2)) {
            throw new IllegalArgumentException("viscosity must be at least 2 mm2/s");
        }
        if (!(kelvin1 > 0 && kelvin2 > 0 && kelvin1 != kelvin2)) {
            throw new IllegalArgumentException("two temperatures are needed");
        }
        double one = height(nu1);
        double other = height(nu2);
        double b = (one - other) / (Math.log10(kelvin2) - Math.log10(kelvin1));
        return new OilViscosity(one + b * Math.log10(kelvin1), b);
    }

    /**
     * Of a grade and its viscosity index.
     *
     * @param grade viscosity at 40 C, m2/s: 46e-6 for VG 46
     * @param index viscosity index, usual hydraulic oils 95 to 105
     */
    public static OilViscosity ofGrade(double grade, double index) {
        return through(FORTY, grade, HUNDRED, ViscosityIndex.at100(grade, index));
    }

    private static double height(double nu) {
        return Math.log10(Math.log10(nu / MM2 + 0.7));
    }

    /** Viscosity at a temperature in K, m2/s. */
    public double at(double kelvin) {
        return (Math.pow(10, Math.pow(10, a - b * Math.log10(kelvin))) - 0.7) * MM2;
    }

    /** Viscosity index. */
    public double index() {
        return ViscosityIndex.of(at(FORTY), at(HUNDRED));
    }
}
