// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.joint.PinJoint;

/** A pin in one cheek. Second computation: the moment along it under pressures in straight lines that keep it in balance. Source: statics. */
class CantileverPinTest {
    /**
     * Largest moment for 1 N, m.
     *
     * @param couple what the lug bears of the couple of the two forces, as a share
     */
    private static double largest(double lug, double cheek, double gap, double couple) {
        double offset = (cheek + lug) / 2 + gap;
        int n = 60_000;
        double length = lug + gap + cheek;
        double dx = length / n;
        double shear = 0;
        double moment = 0;
        double most = 0;
        for (int i = 0; i < n; i++) {
            double x = (i + 0.5) * dx;
            double in = x < lug ? x - lug / 2 : x > lug + gap ? x - lug - gap - cheek / 2 : 0;
            double load = x < lug
                    ? 1 / lug + 12 * couple * offset * in / Math.pow(lug, 3)
                    : x > lug + gap ? -1 / cheek + 12 * (1 - couple) * offset * in / Math.pow(cheek, 3) : 0;
            shear += load * dx;
            moment += shear * dx;
            most = Math.max(most, Math.abs(moment));
        }
        assertThat(Math.abs(moment)).isLessThan(1e-3 * offset);
        return most;
    }

    @ParameterizedTest
    @CsvSource({"25, 12, 1", "20, 10, 0", "12, 30, 2", "15, 15, 5"})
    void theCheekBearsAllOfTheCoupleWhereTheEyeHasABallJoint(double lug, double cheek, double gap) {
        PinJoint plain = new PinJoint(0.025, PinJoint.Shear.SINGLE, lug / 1000, cheek / 1000, gap / 1000, 235e6, null);
        PinJoint ball = new PinJoint(
                0.025, PinJoint.Shear.SINGLE, lug / 1000, cheek / 1000, gap / 1000, 235e6, Math.toRadians(9));
        double cantilever = largest(lug / 1000, cheek / 1000, gap / 1000, 0);
        assertThat(PinStress.moment(ball, 1)).isCloseTo(cantilever, within(1e-3 * cantilever));
        if (lug > cheek) {
            assertThat(PinStress.moment(plain, 1)).isLessThan(0.85 * cantilever);
        }
        assertThat(PinStress.shearForce(ball, 1)).isEqualTo(1);
    }
}
