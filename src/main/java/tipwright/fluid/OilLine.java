// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

/**
 * A hose or pipe that oil flows through.
 *
 * <p>Source: Darcy's law with the larger of 64 / Re and 0.3164 / Re^0.25 (Hagen and Poiseuille; Blasius), the rule that a hose maker's
 * chart follows within 6 % (read). Smooth bore, without fittings.
 *
 * @param bore m
 * @param length m
 */
public record OilLine(double bore, double length) {
    /** @throws IllegalArgumentException if the bore is not above 0 or the length below 0 */
    public OilLine {
        if (!(bore > 0 && length >= 0)) {
            throw new IllegalArgumentException("bore must be above 0 and length 0 or more");
        }
    }

    /** Mean speed of a flow in m3/s, m/s. */
    public double speed(double flow) {
        return flow / (Math.PI / 4 * bore * bore);
    }

    /** Reynolds number: of a flow in m3/s at a viscosity in m2/s. */
    public double reynolds(double flow, double viscosity) {
        return Math.abs(speed(flow)) * bore / viscosity;
    }

    /**
     * Pressure lost on the way, Pa, with the sign of the flow.
     *
     * @param flow m3/s
     * @param viscosity m2/s
     * @param density kg/m3
     */
    public double loss(double flow, double viscosity, double density) {
        if (!(viscosity > 0 && density > 0)) {
            throw new IllegalArgumentException("viscosity and density must be above 0");
        }
        if (flow == 0) {
            return 0;
        }
        double re = reynolds(flow, viscosity);
        double friction = Math.max(64 / re, 0.3164 / Math.pow(re, 0.25));
        double speed = speed(flow);
        return friction * length / bore * density / 2 * speed * Math.abs(speed);
    }

    /**
     * Flow that a pressure drives through, m3/s: the greatest whose loss does not pass it.
     *
     * @param pressure Pa, 0 or more
     */
    public double flow(double pressure, double viscosity, double density) {
        if (!(pressure >= 0)) {
            throw new IllegalArgumentException("pressure must be 0 or more");
        }
        // The loss is at least that of laminar flow, which bounds the flow from above.
        double low = 0;
        double high = pressure * Math.PI * Math.pow(bore, 4) / (128 * viscosity * density * length);
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (loss(middle, viscosity, density) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
