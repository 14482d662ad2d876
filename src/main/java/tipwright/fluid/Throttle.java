// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

/**
 * A hole or a valve, at which pressure is lost with the square of the flow.
 *
 * @param perSquare pressure lost per square of the flow and per kg/m3 of density, m^-4
 */
public record Throttle(double perSquare) {
    /** @throws IllegalArgumentException if it is below 0 */
    public Throttle {
        if (!(perSquare >= 0)) {
            throw new IllegalArgumentException("perSquare must be 0 or more");
        }
    }

    /**
     * A sharp hole: dp = rho / 2 (Q / (Cd A))^2. Source: orifice equation, any text on hydraulics.
     *
     * @param diameter m
     * @param coefficient of discharge, about 0.6 for a sharp edge
     */
    public static Throttle orifice(double diameter, double coefficient) {
        double area = Math.PI / 4 * diameter * diameter;
        return new Throttle(0.5 / Math.pow(coefficient * area, 2));
    }

    /**
     * A valve by one point of its chart. Source: common practice, no source.
     *
     * @param pressure lost at that point, Pa
     * @param flow at that point, m3/s
     * @param density of the oil of the chart, kg/m3
     */
    public static Throttle valve(double pressure, double flow, double density) {
        return new Throttle(pressure / (flow * flow * density));
    }

    /** Pressure lost, Pa, with the sign of the flow in m3/s. */
    public double loss(double flow, double density) {
        return perSquare * density * flow * Math.abs(flow);
    }

    /** Flow that a pressure in Pa of 0 or more drives through, m3/s. */
    public double flow(double pressure, double density) {
        return Math.sqrt(pressure / (perSquare * density));
    }
}
