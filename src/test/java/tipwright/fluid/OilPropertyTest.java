// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for any oil, line and valve. */
class OilPropertyTest {
    @Test
    void passesThroughItsPointsAndThinsWithWarmth() {
        OilViscosity oil = OilViscosity.through(313.15, 46e-6, 373.15, 6.8e-6);
        assertThat(oil.at(313.15)).isCloseTo(46e-6, within(1e-15));
        assertThat(oil.at(373.15)).isCloseTo(6.8e-6, within(1e-15));
        double last = Double.POSITIVE_INFINITY;
        for (double kelvin = 250; kelvin < 380; kelvin += 5) {
            assertThat(oil.at(kelvin)).isLessThan(last);
            last = oil.at(kelvin);
        }
        assertThatThrownBy(() -> OilViscosity.through(313, 1.9e-6, 373, 1e-6)).hasMessageContaining("2 mm2/s");
        assertThatThrownBy(() -> OilViscosity.through(313, 46e-6, 313, 7e-6)).hasMessageContaining("temperatures");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 50, 95, 99.9, 100, 105, 150, 200})
    void indexThereAndBack(double index) {
        for (double grade : new double[] {15e-6, 22e-6, 32e-6, 46e-6, 68e-6, 100e-6}) {
            double at100 = ViscosityIndex.at100(grade, index);
            assertThat(ViscosityIndex.of(grade, at100)).isCloseTo(index, within(0.01));
            assertThat(OilViscosity.ofGrade(grade, index).index()).isCloseTo(index, within(0.01));
        }
    }

    /** Source: ASTM D2270, table 1 (read): rows at both ends and where the printed step changes. */
    @Test
    void endsOfTheTable() {
        assertThat(ViscosityIndex.of(7.994e-6, 2e-6)).isCloseTo(0, within(1e-6));
        assertThat(ViscosityIndex.of(6.394e-6, 2e-6)).isCloseTo(100, within(1e-6));
        assertThat(ViscosityIndex.of(493.2e-6, 20e-6)).isCloseTo(0, within(1e-6));
        assertThat(ViscosityIndex.of(229.5e-6, 20e-6)).isCloseTo(100, within(1e-6));
        assertThat(ViscosityIndex.of(147.7e-6, 10e-6)).isCloseTo(0, within(1e-6));
        assertThat(ViscosityIndex.of(82.87e-6, 10e-6)).isCloseTo(100, within(1e-6));
        assertThatThrownBy(() -> ViscosityIndex.of(10e-6, 1.99e-6)).hasMessageContaining("2 to 20");
        assertThatThrownBy(() -> ViscosityIndex.of(500e-6, 20.1e-6)).hasMessageContaining("2 to 20");
        assertThatThrownBy(() -> ViscosityIndex.at100(46e-6, 251)).hasMessageContaining("index");
        assertThatThrownBy(() -> ViscosityIndex.at100(1000e-6, 100)).hasMessageContaining("table");
    }

    @Test
    void lossGrowsWithTheFlow() {
        OilLine line = new OilLine(0.008, 3);
        double last = 0;
        for (double flow = 1e-6; flow < 1e-3; flow *= 1.3) {
            double loss = line.loss(flow, 46e-6, 870);
            assertThat(loss).isGreaterThan(last);
            assertThat(line.loss(-flow, 46e-6, 870)).isEqualTo(-loss);
            assertThat(line.flow(loss, 46e-6, 870)).isCloseTo(flow, Percentage.withPercentage(1e-6));
            last = loss;
        }
        assertThat(line.loss(0, 46e-6, 870)).isZero();
        assertThat(line.flow(0, 46e-6, 870)).isZero();
        // Laminar by Hagen and Poiseuille: 128 mu L Q / (pi d4).
        double hagen = 128 * 870 * 46e-6 * 3 * 1e-5 / (Math.PI * Math.pow(0.008, 4));
        assertThat(line.loss(1e-5, 46e-6, 870)).isCloseTo(hagen, Percentage.withPercentage(1e-9));
        assertThatThrownBy(() -> new OilLine(0, 1)).hasMessageContaining("bore");
        assertThatThrownBy(() -> line.flow(-1, 46e-6, 870)).hasMessageContaining("pressure");
        assertThatThrownBy(() -> line.loss(1, 0, 870)).hasMessageContaining("viscosity");
    }

    @Test
    void throttles() {
        Throttle hole = Throttle.orifice(0.002, 0.6);
        double flow = 0.6 * Math.PI * 1e-6 * Math.sqrt(2 * 100e5 / 870);
        assertThat(hole.flow(100e5, 870)).isCloseTo(flow, within(1e-12));
        assertThat(hole.loss(flow, 870)).isCloseTo(100e5, within(1e-3));
        assertThat(hole.loss(-flow, 870)).isCloseTo(-100e5, within(1e-3));
        Throttle valve = Throttle.valve(5e5, 20e-3 / 60, 870);
        assertThat(valve.loss(20e-3 / 60, 870)).isCloseTo(5e5, within(1e-6));
        assertThat(valve.loss(10e-3 / 60, 870)).isCloseTo(1.25e5, within(1e-6));
        assertThatThrownBy(() -> new Throttle(-1)).hasMessageContaining("perSquare");
    }

    @Test
    void hosesSoftenTheOil() {
        OilColumn pipe = new OilColumn(0.002, 1e-3, 1.4e9, 0);
        OilColumn hose = new OilColumn(0.002, 1e-3, 1.4e9, 1e-12);
        assertThat(pipe.stiffness()).isCloseTo(4e-6 * 1.4e9 / 1e-3, within(1e-6));
        assertThat(hose.stiffness()).isLessThan(pipe.stiffness());
        assertThat(hose.warming(0.0007, 20)).isLessThan(pipe.warming(0.0007, 20));
        assertThat(hose.stopping(1000, 0.1)).isLessThan(pipe.stopping(1000, 0.1));
        assertThat(hose.give()).isCloseTo(1e-3 / 1.4e9 + 1e-12, within(1e-20));
        assertThat(pipe.warming(0.0007, 0)).isZero();
        assertThat(pipe.stopping(1000, 0)).isZero();
        assertThatThrownBy(() -> new OilColumn(0, 1, 1, 0)).hasMessageContaining("area");
    }
}
