// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import org.jspecify.annotations.Nullable;
import tipwright.design.supply.Orifice;
import tipwright.design.supply.ReturnLine;
import tipwright.fluid.OilLine;
import tipwright.fluid.OilViscosity;
import tipwright.fluid.Throttle;

/**
 * Oil that the load drives out of a cylinder: what is left of its pressure after the seals is lost in the orifice and in the hose.
 *
 * <p>Source: as for {@link Throttle} and {@link OilLine}; density of mineral oil 870 kg/m3 from memory.
 */
public final class ReturnFlow {
    /** Density of mineral oil, kg/m3. */
    static final double OIL = 870;

    private static final double INDEX = 100;
    private static final int HALVINGS = 50;

    private final Throttle orifice;
    private final @Nullable OilLine line;
    private final double viscosity;
    private final double seals;

    /**
     * The way out.
     *
     * @param through the valve through which it comes down
     * @param back hose, oil and seals; null: nothing is lost there
     * @param kelvin temperature of the oil, K
     */
    public ReturnFlow(Orifice through, @Nullable ReturnLine back, double kelvin) {
        orifice = Throttle.orifice(through.diameter(), through.coefficient());
        line = back == null || back.length() == 0 ? null : new OilLine(back.bore(), back.length());
        viscosity = back == null
                ? 0
                : OilViscosity.ofGrade(back.grade() * 1e-6, INDEX).at(kelvin);
        Double begins = back == null ? null : back.seals();
        seals = begins == null ? 0 : begins;
    }

    /** Flow that a pressure in the cylinder, Pa, drives out, m3/s; 0 when the seals hold it. */
    public double flow(double pressure) {
        double left = pressure - seals;
        if (left <= 0) {
            return 0;
        }
        double most = orifice.flow(left, OIL);
        OilLine hose = line;
        if (hose == null) {
            return most;
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double lost = orifice.loss(middle, OIL) + hose.loss(middle, viscosity, OIL);
            if (lost < left) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
