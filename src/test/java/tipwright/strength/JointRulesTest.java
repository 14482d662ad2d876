// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tipwright.strength.BoltedTee.Mode;

/** What must hold for fatigue, prying, faces of tubes and shells under vacuum, whatever the figures. */
class JointRulesTest {
    @Test
    void fatigueCurveHasNoSteps() {
        FatigueCurve curve = new FatigueCurve(71e6, false, 1.35);
        assertThat(curve.cycles(curve.knee())).isCloseTo(5e6, within(1.0));
        assertThat(curve.cycles(curve.knee() * (1 - 1e-12))).isCloseTo(5e6, within(1.0));
        assertThat(curve.cycles(curve.cutOff())).isCloseTo(1e8, within(10.0));
        assertThat(curve.cycles(curve.cutOff() * (1 - 1e-12))).isInfinite();
        FatigueCurve shear = new FatigueCurve(80e6, true, 1);
        assertThat(shear.cycles(80e6)).isCloseTo(2e6, within(1e-3));
        assertThat(shear.cycles(shear.cutOff())).isCloseTo(1e8, within(10.0));
        assertThat(shear.cycles(shear.cutOff() * (1 - 1e-12))).isInfinite();
        double last = Double.POSITIVE_INFINITY;
        for (double range = 20e6; range < 300e6; range += 1e6) {
            double cycles = curve.cycles(range);
            assertThat(cycles).isLessThanOrEqualTo(last);
            last = cycles;
        }
        assertThatThrownBy(() -> new FatigueCurve(71e6, false, 0.99)).hasMessageContaining("factor");
        assertThatThrownBy(() -> curve.cycles(-1)).hasMessageContaining("range");
    }

    @Test
    void harmAddsUp() {
        FatigueCurve curve = new FatigueCurve(56e6, false, 1);
        FatigueCurve.Range one = new FatigueCurve.Range(90e6, 1000);
        FatigueCurve.Range other = new FatigueCurve.Range(40e6, 50_000);
        assertThat(curve.damage(List.of())).isZero();
        assertThat(curve.damage(List.of(one, other)))
                .isCloseTo(curve.damage(List.of(one)) + curve.damage(List.of(other)), within(1e-15));
        double life = curve.cycles(90e6);
        assertThat(curve.damage(List.of(new FatigueCurve.Range(90e6, life)))).isCloseTo(1, within(1e-12));
        assertThat(curve.damage(List.of(new FatigueCurve.Range(10e6, 1e12)))).isZero();
        assertThatThrownBy(() -> new FatigueCurve.Range(-1, 1)).hasMessageContaining("stress");
    }

    @Test
    void pushCountsSixTenthsWhereRelieved() {
        assertThat(FatigueCurve.relieved(10e6, 60e6)).isEqualTo(50e6);
        assertThat(FatigueCurve.relieved(-60e6, -10e6)).isEqualTo(30e6);
        assertThat(FatigueCurve.relieved(-50e6, 50e6)).isEqualTo(80e6);
        assertThat(FatigueCurve.relieved(5, 5)).isZero();
        assertThatThrownBy(() -> FatigueCurve.relieved(1, 0)).hasMessageContaining("least");
        assertThatThrownBy(() -> FatigueCurve.attachmentAcross(0.081)).hasMessageContaining("length");
    }

    @Test
    void fromAThinFlangeToAThickOne() {
        double last = 0;
        Mode mode = Mode.FLANGE;
        for (double t = 0.004; t < 0.04; t += 0.0005) {
            BoltedTee tee = new BoltedTee(t, 275e6, 0.15, 0.035, 0.04, 180e3);
            assertThat(tee.resistance()).isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(180e3);
            assertThat(tee.governing().compareTo(mode)).isNotNegative();
            assertThat(tee.withoutPrying()).isLessThanOrEqualTo(tee.resistance());
            last = tee.resistance();
            mode = tee.governing();
        }
        assertThat(mode).isEqualTo(Mode.BOLTS);
        assertThat(new BoltedTee(0.004, 275e6, 0.15, 0.035, 0.04, 180e3).governing())
                .isEqualTo(Mode.FLANGE);
        assertThatThrownBy(() -> new BoltedTee(0, 1, 1, 1, 1, 1)).hasMessageContaining("thickness");
    }

    @Test
    void tubeFaceKeepsToItsRange() {
        TubeFace face = new TubeFace(0.1, 0.005, 275e6);
        assertThat(face.yielding(0.025, 0.05, 1)).isPositive();
        assertThat(face.yielding(0.085, 0.05, 1)).isPositive();
        assertThatThrownBy(() -> face.yielding(0.0249, 0.05, 1)).hasMessageContaining("over the tube's face");
        assertThatThrownBy(() -> face.yielding(0.0851, 0.05, 1)).hasMessageContaining("over the tube's face");
        assertThat(new TubeFace(0.105, 0.003, 275e6).wall()).isEqualTo(0.003);
        assertThatThrownBy(() -> new TubeFace(0.1051, 0.003, 275e6)).hasMessageContaining("face over wall");
        assertThatThrownBy(() -> face.underPlate(0.021, 0.1, 1)).hasMessageContaining("thickness");
        double last = 0;
        for (double b = TubeFace.NARROWEST; b <= TubeFace.WIDEST; b += 0.05) {
            double force = face.yielding(b * 0.1, 0.06, 1);
            assertThat(force).isGreaterThan(last);
            last = force;
        }
        assertThat(face.punching(0.02, 0.05)).isCloseTo(275e6 / Math.sqrt(3) * 0.005 * (0.1 + 2 * 0.01), within(1e-6));
        assertThat(face.punching(0.02, 0.06)).isGreaterThan(face.punching(0.02, 0.05));
    }

    @Test
    void pushAlongTheTubeTakesFromTheFace() {
        TubeFace face = new TubeFace(0.1, 0.005, 275e6);
        assertThat(face.stressed(0, 0.05)).isEqualTo(1);
        assertThat(face.stressed(0.375, 0.05)).isCloseTo(1, within(1e-12));
        assertThat(face.stressed(0.75, 0.05)).isCloseTo(0.7, within(1e-12));
        assertThat(face.stressed(1, 0.025)).isZero();
        assertThat(face.yielding(0.05, 0.05, 0.7)).isCloseTo(0.7 * face.yielding(0.05, 0.05, 1), within(1e-6));
    }

    @Test
    void shellUnderVacuum() {
        double last = 0;
        for (double wall = 0.002; wall < 0.012; wall += 0.001) {
            OutsidePressure shell = OutsidePressure.steel(1.2, wall, 2);
            assertThat(shell.critical()).isGreaterThan(last);
            assertThat(shell.critical()).isEqualTo(Math.max(shell.shortForm(), shell.longForm()));
            assertThat(shell.allowed()).isCloseTo(shell.critical() / 3, within(1e-6));
            last = shell.critical();
        }
        last = Double.POSITIVE_INFINITY;
        for (double length = 0.2; length < 200; length *= 1.5) {
            double critical = OutsidePressure.steel(1.2, 0.004, length).critical();
            assertThat(critical).isLessThanOrEqualTo(last);
            last = critical;
        }
        assertThat(last).isEqualTo(OutsidePressure.steel(1.2, 0.004, 1e4).longForm());
        assertThat(OutsidePressure.steel(1, 0.05, 2).critical()).isPositive();
        assertThatThrownBy(() -> OutsidePressure.steel(1, 0.0501, 2)).hasMessageContaining("wall over diameter");
        assertThatThrownBy(() -> OutsidePressure.steel(1, 0.01, 0.045)).hasMessageContaining("length over diameter");
        assertThat(OutsidePressure.SHARE).isCloseTo(0.333, Percentage.withPercentage(0.2));
    }
}
