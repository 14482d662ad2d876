// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

/**
 * Oil shut in between a piston and a valve: the spring that a load hangs on.
 *
 * @param area of the piston, m2
 * @param volume of the oil in cylinder and line, m3
 * @param bulk modulus of the oil, Pa: 1.4 to 2.0 GPa; air in the oil can halve it
 * @param yielding volume by which hoses widen for a pressure, m3/Pa; 0 for pipes
 */
public record OilColumn(double area, double volume, double bulk, double yielding) {
    /** @throws IllegalArgumentException outside the range of the rule */
    public OilColumn {
        if (!(area > 0 && volume > 0 && bulk > 0 && yielding >= 0)) {
            throw new IllegalArgumentException("area, volume and bulk must be above 0, yielding 0 or more");
        }
    }

    /** Volume that goes in for one pascal, m3/Pa: V / K and the hoses. */
    public double give() {
        return volume / bulk + yielding;
    }

    /** Stiffness at the rod, N/m: A^2 / give. Source: compression of oil, any text on hydraulics. */
    public double stiffness() {
        return area * area / give();
    }

    /**
     * Rise of pressure when a moving mass is stopped by the oil alone, Pa: v sqrt(m k) / A. Source: energy of the mass goes into the oil.
     *
     * @param mass at the rod, kg
     * @param speed of the rod, m/s
     */
    public double stopping(double mass, double speed) {
        return speed * Math.sqrt(mass * stiffness()) / area;
    }

    /**
     * Rise of pressure when shut-in oil warms, Pa: a dT V / give, without hoses K a dT.
     *
     * <p>Source: texts on oil hydraulics (public pages, read: 11 bar per K; 6900 psi for 50 F).
     *
     * @param expansion of the oil per K, about 0.0007, less that of the cylinder about 0.00004
     * @param kelvin by how much it warms
     */
    public double warming(double expansion, double kelvin) {
        return expansion * kelvin * volume / give();
    }

    /**
     * Rise of pressure when a column of oil in a line is stopped at once, Pa: rho c dv with c = sqrt(K / rho). Source: N. Joukowsky
     * (public page, read). A hose that widens makes it less.
     *
     * @param density kg/m3
     * @param bulk modulus, Pa
     * @param change of the oil's speed, m/s
     */
    public static double hammer(double density, double bulk, double change) {
        return Math.sqrt(bulk * density) * change;
    }
}
