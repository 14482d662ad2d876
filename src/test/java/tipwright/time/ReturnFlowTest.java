// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.design.supply.Orifice;
import tipwright.design.supply.ReturnLine;

/** Oil on its way back, against a hose of 5 m and 10 mm bore and oil VG 46 (computed with Darcy's law and Walther's viscosities). */
class ReturnFlowTest {
    private static final Orifice WIDE = new Orifice(1, 0.62);
    private static final double TEN = 10e-3 / 60;

    private static ReturnLine line(@Nullable Double seals) {
        return new ReturnLine(0.010, 5, 46, seals, 1.5);
    }

    /** 10 L/min take 1.359, 17.27 and 44.36 bar at 40, 0 and -10 C. */
    @Test
    void coldOilTakesThePressure() {
        double[][] cases = {{313.15, 1.359}, {273.15, 17.27}, {263.15, 44.36}};
        for (double[] c : cases) {
            assertThat(new ReturnFlow(WIDE, line(null), c[0]).flow(c[1] * 1e5)).isCloseTo(TEN, within(0.002 * TEN));
        }
    }

    /** Without a hose, the orifice alone: Cd a sqrt(2 p / rho); 3 mm, 0.62, 20 bar, 870 kg/m3: 17.83 L/min. */
    @Test
    void theOrificeAlone() {
        double flow = new ReturnFlow(new Orifice(0.003, 0.62), null, 293.15).flow(20e5);
        assertThat(flow * 60_000).isCloseTo(17.830, within(0.005));
    }

    /** What the seals take is not there for the flow; under it nothing moves. */
    @Test
    void sealsHoldItUp() {
        ReturnFlow free = new ReturnFlow(WIDE, line(null), 273.15);
        ReturnFlow held = new ReturnFlow(WIDE, line(1.5e5), 273.15);
        assertThat(held.flow(1.5e5)).isZero();
        assertThat(held.flow(4e5)).isCloseTo(free.flow(2.5e5), within(1e-12));
    }

    /** A cylinder of 50 mm that 700 N drive in, 3.565 bar; laminar flow in the hose, by hand. */
    @Test
    void theTankComesDownSlowlyInTheCold() throws Exception {
        String supply = "supply: {kind: pump, flow: 10 L/min, orifice: {diameter: 20 mm},"
                + " return-line: {bore: 10 mm, length: 5 m}}\nsite: {temperature: -10 degC}\n";
        Machine machine = Machines.of(Simple.design(Simple.CYLINDER + ", acting: single", supply));
        double area = Math.PI / 4 * 0.05 * 0.05;
        double pressure = 700 / area;
        // 44.36 bar for 10 L/min, and in proportion
        double speed = TEN * pressure / 44.36e5 / area;
        assertThat(machine.draw(-700, false, false).speed()).isCloseTo(speed, within(0.003 * speed));
    }
}
