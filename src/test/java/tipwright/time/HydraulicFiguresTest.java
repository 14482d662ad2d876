// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tipwright.design.Design;

/** Cylinder figures, computed from F = p A, v = Q / A, P = p Q (elementary; input set our own). */
class HydraulicFiguresTest {
    private static Machine machine(String more) throws Exception {
        Design design = Simple.design(Simple.CYLINDER, "supply: {kind: pump, flow: 10 L/min" + more + "}\n");
        return Machines.of(design);
    }

    /** Bore 50, rod 28 mm, 10 L/min: out 84.883, back 123.664 mm/s. */
    @Test
    void speedOutAndBack() throws Exception {
        Machine m = machine("");
        assertThat(m.draw(1000, true, true).speed()).isCloseTo(0.084883, within(5e-7));
        assertThat(m.draw(1000, false, true).speed()).isCloseTo(0.123664, within(5e-7));
    }

    /** 160 bar: push 31.416 kN, pull 21.564 kN; 10 L/min at 160 bar is 2666.7 W. */
    @Test
    void reliefStopsItAtTheRatedForce() throws Exception {
        Machine m = machine("");
        assertThat(m.draw(31_410, true, true).speed()).isGreaterThan(0).isLessThan(0.001);
        assertThat(m.draw(31_420, true, true).speed()).isZero();
        assertThat(m.draw(21_560, false, true).speed()).isGreaterThan(0).isLessThan(0.002);
        assertThat(m.draw(21_570, false, true).speed()).isZero();
        DriveState full = m.draw(31_420, true, true);
        assertThat(full.shaft() * 0.8).isCloseTo(2666.7, within(0.05));
        assertThat(full.power() * 0.64).isCloseTo(2666.7, within(0.05));
    }

    /** Pilot pressure of a counterbalance valve: (setting - load pressure) / ratio; 200 bar, 3:1, nothing on it: 66.7 bar. */
    @Test
    void counterbalanceNeedsPilotPressure() throws Exception {
        Machine m = machine(", lowering: counterbalance, counterbalance: 200 bar");
        assertThat(m.draw(0, false, false).pressure()).isCloseTo(200e5 / 3, within(1.0));
        double bore = Math.PI * 0.05 * 0.05 / 4;
        assertThat(m.draw(-140e5 * bore, false, false).pressure()).isCloseTo(20e5, within(1.0));
    }

    @Test
    void singleActingCannotPull() throws Exception {
        Design design = Simple.design(
                Simple.CYLINDER + ", acting: single",
                "supply: {kind: pump, flow: 10 L/min, orifice: {diameter: 3 mm}}\n");
        Machine m = Machines.of(design);
        assertThat(m.draw(100, false, true).speed()).isZero();
        assertThat(m.draw(100, false, false).speed()).isZero();
        assertThat(m.draw(-100, false, false).speed()).isPositive();
    }

    /** 25 mL a stroke, 30 strokes a minute: 750 mL/min, 6.366 mm/s on a 50 mm bore. */
    @Test
    void handPump() throws Exception {
        Design design = Simple.design(
                Simple.CYLINDER, "supply: {kind: hand-pump, per-stroke: 0.025 L, strokes-per-minute: 30}\n");
        assertThat(Machines.of(design).draw(0, true, true).speed()).isCloseTo(0.0063662, within(5e-8));
    }
}
