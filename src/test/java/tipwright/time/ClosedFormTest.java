// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Raising and lowering where the integrals have a closed form; elementary calculus, worked out here. */
class ClosedFormTest {
    private static final double WAY = Simple.LAST - Simple.FIRST;

    @Test
    void constantSpeedTakesWayOverSpeed() {
        Cycle c = Simple.dump(Simple.time(Simple.design(
                Simple.ELECTRIC, "supply: {kind: hand-winch, travel-per-turn: 4 mm, turns-per-minute: 30}\n")));
        assertThat(c.raise()).isCloseTo(WAY / 0.002, within(1e-6 * WAY / 0.002));
        assertThat(c.lower()).isCloseTo(WAY / 0.002, within(1e-6 * WAY / 0.002));
        assertThat(c.spent().travel()).isCloseTo(2 * WAY, within(1e-7));
        // work on the load: integral of F dL with F = k L
        double work = Simple.PER_LENGTH * (Simple.LAST * Simple.LAST - Simple.FIRST * Simple.FIRST) / 2;
        assertThat(c.spent().work()).isCloseTo(work, within(1e-6 * work));
        assertThat(c.spent().energy()).isCloseTo(work, within(1e-6 * work));
    }

    /** Speed falls along a line with the load, the load grows along a line with the length: t = ln(v1/v2) / slope. */
    @Test
    void linearSpeedUnderLinearLoadIsALogarithm() {
        Cycle c = Simple.dump(Simple.time(Simple.design(Simple.ELECTRIC, "supply: {kind: battery, voltage: 12 V}\n")));
        double slope = 0.010 / 5000 * Simple.PER_LENGTH;
        double first = 0.020 - slope * Simple.FIRST;
        double last = 0.020 - slope * Simple.LAST;
        double raise = Math.log(first / last) / slope;
        assertThat(c.raise()).isCloseTo(raise, within(1e-6 * raise));
        // the way back, helped by the load: no-load speed
        assertThat(c.lower()).isCloseTo(WAY / 0.020, within(1e-6 * WAY / 0.020));
        // charge: i = 2 A + 18 A F / 5 kN over dt = dL / v
        double perLength = 18.0 / 5000 * Simple.PER_LENGTH;
        double charge = 2 * raise + perLength * (0.020 / slope * raise - WAY / slope) + 2 * WAY / 0.020;
        assertThat(c.spent().energy()).isCloseTo(12 * charge, within(1e-6 * 12 * charge));
        assertThat(c.peaks().current())
                .isCloseTo(2 + perLength * Simple.LAST, within(1e-6 * (2 + perLength * Simple.LAST)));
    }

    /** A line of 50 mohm takes i R off the motor's voltage, and with it off the no-load speed. */
    @Test
    void cableSlowsTheActuator() {
        Cycle c = Simple.dump(Simple.time(
                Simple.design(Simple.ELECTRIC, "supply: {kind: battery, voltage: 12 V, resistance: 50 mohm}\n")));
        double slope = (0.010 / 5000 + 0.020 / 12 * 0.05 * 18 / 5000) * Simple.PER_LENGTH;
        double start = 0.020 * (12 - 2 * 0.05) / 12;
        double raise = Math.log((start - slope * Simple.FIRST) / (start - slope * Simple.LAST)) / slope;
        assertThat(c.raise()).isCloseTo(raise, within(1e-6 * raise));
        assertThat(c.lower()).isCloseTo(WAY / start, within(1e-6 * WAY / start));
    }

    /** Line to its end: v = 0 at F = 5 kN x 20/10 = 10 kN; with 6 V at 12 V rated, at half of that. */
    @Test
    void lowVoltageStallsWhereTheLineSaysSo() {
        Cycle c = Simple.dump(Simple.time(Simple.design(Simple.ELECTRIC, "supply: {kind: battery, voltage: 4.5 V}\n")));
        // v = 7.5 mm/s - 2e-6 k L; stalled below 1 % of 7.5 mm/s
        double length = 0.0075 * 0.99 / (0.010 / 5000 * Simple.PER_LENGTH);
        double cosine = (Simple.A * Simple.A + Simple.B * Simple.B - length * length) / (2 * Simple.A * Simple.B);
        double tilt = Math.acos(cosine) - Math.toRadians(30);
        assertThat(c.stalledAt()).isCloseTo(tilt, within(1e-5));
        assertThat(c.raise()).isInfinite();
        assertThat(c.complete()).isFalse();
        assertThat(c.perHour()).isZero();
    }

    @Test
    void cylinderGoesAtFlowOverArea() {
        Cycle c = Simple.dump(Simple.time(Simple.design(
                Simple.CYLINDER,
                "supply: {kind: pump, flow: 10 L/min, efficiency: 100 %, motor-efficiency: 100 %}\n")));
        double bore = Math.PI * 0.05 * 0.05 / 4;
        double ring = bore - Math.PI * 0.028 * 0.028 / 4;
        double flow = 0.01 / 60;
        assertThat(c.raise()).isCloseTo(WAY * bore / flow, within(1e-6 * WAY * bore / flow));
        assertThat(c.lower()).isCloseTo(WAY * ring / flow, within(1e-6 * WAY * ring / flow));
        double work = Simple.PER_LENGTH * (Simple.LAST * Simple.LAST - Simple.FIRST * Simple.FIRST) / 2;
        assertThat(c.spent().energy()).isCloseTo(work, within(1e-6 * work));
        double pressure = Simple.PER_LENGTH * Simple.LAST / bore;
        assertThat(c.peaks().pressure()).isCloseTo(pressure, within(1e-6 * pressure));
        assertThat(c.peaks().returned()).isCloseTo(flow * bore / ring, within(1e-9));
    }

    /** v = (Cd a / A) sqrt(2 F / (A rho)) with F = k L: t = 2 (sqrt L2 - sqrt L1) / (Cd a / A sqrt(2 k / (A rho))). */
    @Test
    void gravityLowersThroughAnOrifice() {
        Cycle c = Simple.dump(Simple.time(Simple.design(
                Simple.CYLINDER + ", acting: single",
                "supply: {kind: pump, flow: 10 L/min, orifice: {diameter: 2 mm}}\n")));
        double bore = Math.PI * 0.05 * 0.05 / 4;
        double hole = 0.62 * Math.PI * 0.002 * 0.002 / 4;
        double root = hole / bore * Math.sqrt(2 * Simple.PER_LENGTH / (bore * 870));
        double lower = 2 * (Math.sqrt(Simple.LAST) - Math.sqrt(Simple.FIRST)) / root;
        assertThat(c.lower()).isCloseTo(lower, within(1e-6 * lower));
    }
}
