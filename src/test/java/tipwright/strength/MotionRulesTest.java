// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** What must hold for stops, screws, twisted sections and hinges, whatever the figures. */
class MotionRulesTest {
    @Test
    void aWeightPutDownAtOncePressesTwice() {
        assertThat(Impact.factor(0, 0.001)).isEqualTo(2);
        double last = 2;
        for (double h = 0.01; h < 1; h += 0.05) {
            assertThat(Impact.factor(h, 0.001)).isGreaterThan(last);
            last = Impact.factor(h, 0.001);
        }
        assertThatThrownBy(() -> Impact.factor(-0.1, 1)).hasMessageContaining("height");
        assertThatThrownBy(() -> Impact.factor(1, 0)).hasMessageContaining("sag");
    }

    @Test
    void stopsBySpring() {
        assertThat(Impact.force(100, 0, 1e6)).isZero();
        assertThat(Impact.force(100, 0, 1e6, 500)).isEqualTo(1000);
        assertThat(Impact.force(100, -0.2, 1e6)).isEqualTo(Impact.force(100, 0.2, 1e6));
        // Energy: k x2/2 = m v2/2 + F x.
        double force = Impact.force(400, 0.5, 3e5, 2000);
        double x = force / 3e5;
        assertThat(3e5 * x * x / 2).isCloseTo(400 * 0.25 / 2 + 2000 * x, within(1e-9));
        assertThat(Impact.inSeries(2e6, 2e6)).isEqualTo(1e6);
        assertThat(Impact.inSeries(2e6, Double.POSITIVE_INFINITY)).isEqualTo(2e6);
        assertThatThrownBy(() -> Impact.inSeries(1, 0)).hasMessageContaining("stiffness");
        assertThat(Impact.referred(8, -2)).isEqualTo(2);
    }

    @Test
    void screwWithoutFrictionGivesAllBack() {
        PowerScrew screw = new PowerScrew(0.03, 0.006, 0, 0, 0);
        assertThat(screw.efficiency()).isCloseTo(1, within(1e-12));
        assertThat(screw.backEfficiency()).isCloseTo(1, within(1e-12));
        assertThat(screw.backDrives()).isTrue();
    }

    @Test
    void screwHoldsFromItsLeadAngleOn() {
        double slope = 0.006 / (Math.PI * 0.03);
        assertThat(new PowerScrew(0.03, 0.006, slope * (1 + 1e-9), 0, 0).backDrives())
                .isFalse();
        assertThat(new PowerScrew(0.03, 0.006, slope * (1 - 1e-9), 0, 0).backDrives())
                .isTrue();
        double flank = Math.toRadians(15);
        assertThat(new PowerScrew(0.03, 0.006, slope * Math.cos(flank) * (1 + 1e-9), flank, 0).backDrives())
                .isFalse();
        assertThat(new PowerScrew(0.03, 0.006, slope * Math.cos(flank) * (1 - 1e-9), flank, 0).backDrives())
                .isTrue();
        double last = 1.1;
        for (double mu = 0; mu < 0.3; mu += 0.02) {
            PowerScrew screw = new PowerScrew(0.03, 0.006, mu, flank, 0.001);
            assertThat(screw.efficiency()).isLessThan(last);
            assertThat(screw.backEfficiency()).isLessThan(screw.efficiency());
            assertThat(screw.backEfficiency() > 0).isEqualTo(screw.backDrives());
            last = screw.efficiency();
        }
        // What holds by itself gives less than half of its work: the trade's rule, without a collar.
        assertThat(new PowerScrew(0.03, 0.006, slope, 0, 0).efficiency())
                .isLessThan(0.5)
                .isGreaterThan(0.49);
        assertThatThrownBy(() -> new PowerScrew(0.01, 0.05, 0.7, 0, 0)).hasMessageContaining("steep");
    }

    @Test
    void closedSectionsAreStiff() {
        double wall = 0.003;
        TorsionSection tube = TorsionSection.tube(0.1, 0.05, wall);
        TorsionSection slit =
                TorsionSection.open(new double[] {0.097, 0.047, 0.097, 0.047}, new double[] {wall, wall, wall, wall});
        assertThat(tube.constant() / slit.constant()).isGreaterThan(100);
        // A thin round tube by Bredt and exactly.
        double mean = 0.05;
        TorsionSection thin = TorsionSection.closed(Math.PI * mean * mean, 2 * Math.PI * mean, 0.001);
        TorsionSection round = TorsionSection.round(0.101, 0.099);
        assertThat(thin.constant()).isCloseTo(round.constant(), Percentage.withPercentage(0.02));
        assertThat(thin.modulus()).isCloseTo(round.modulus(), Percentage.withPercentage(1.1));
    }

    @Test
    void solidSections() {
        TorsionSection strip = TorsionSection.rectangle(0.5, 0.005);
        TorsionSection same = TorsionSection.open(new double[] {0.5}, new double[] {0.005});
        assertThat(strip.constant())
                .isCloseTo(same.constant(), Percentage.withPercentage(0.7))
                .isLessThan(same.constant());
        assertThat(strip.modulus()).isCloseTo(same.modulus(), Percentage.withPercentage(0.7));
        assertThat(TorsionSection.rectangle(2, 1)).isEqualTo(TorsionSection.rectangle(1, 2));
        TorsionSection bar = TorsionSection.round(0.04, 0);
        assertThat(bar.stress(100)).isCloseTo(16 * 100 / (Math.PI * 6.4e-5), within(1e-3));
        assertThat(bar.twist(100, 2, 79e9)).isCloseTo(2 * bar.twist(100, 1, 79e9), within(1e-15));
        assertThatThrownBy(() -> TorsionSection.round(0.04, 0.04)).hasMessageContaining("constant");
    }

    @Test
    void hinges() {
        HingePair hinge = new HingePair(-0.5, 0.7);
        assertThat(hinge.share(-0.5)).isEqualTo(1);
        assertThat(hinge.share(0.7)).isZero();
        assertThat(hinge.share(0.1)).isCloseTo(0.5, within(1e-12));
        assertThat(hinge.couple(1000, 0.6)).isCloseTo(500, within(1e-9));
        assertThat(hinge.twisting(new double[] {-0.3, 0.5}, new double[] {1000, 1000}))
                .isCloseTo(0, within(1e-9));
        assertThat(hinge.twisting(new double[] {-0.3, 0.5}, new double[] {0, 2000}))
                .isCloseTo(800, within(1e-9));
        assertThatThrownBy(() -> new HingePair(0.5, 0.5)).hasMessageContaining("distance");
    }
}
