// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What must hold for any saddle. */
class SaddlePropertyTest {
    private static Saddle saddle(double degrees, double length, double overhang) {
        return new Saddle(Math.toRadians(degrees), 0.6, 0.006, 0.15, length, overhang);
    }

    @Test
    void aWiderContactBearsMore() {
        for (int degrees = 120; degrees < 180; degrees += 5) {
            Saddle less = saddle(degrees, 4.8, 0.5);
            Saddle more = saddle(degrees + 5, 4.8, 0.5);
            assertThat(Math.abs(more.horn(1e4, false))).isLessThan(Math.abs(less.horn(1e4, false)));
            assertThat(more.bottom(1e4, false)).isLessThan(less.bottom(1e4, false));
            assertThat(more.shear(1e4)).isLessThan(less.shear(1e4));
        }
    }

    @Test
    void theEndHelpsWithinARadius() {
        double k6 = saddle(120, 4.8, 0.1).k6();
        assertThat(saddle(120, 4.8, 0.1).k7()).isCloseTo(k6 / 4, within(1e-12));
        assertThat(saddle(120, 4.8, 0.3).k7()).isCloseTo(k6 / 4, within(1e-12));
        assertThat(saddle(120, 4.8, 0.45).k7()).isCloseTo(0.625 * k6, within(1e-12));
        assertThat(saddle(120, 4.8, 0.6).k7()).isCloseTo(k6, within(1e-12));
        assertThat(saddle(120, 4.8, 1.2).k7()).isCloseTo(k6, within(1e-12));
    }

    @Test
    void bothFormsOfTheHornMeetAtEightRadii() {
        assertThat(saddle(120, 4.8 - 1e-9, 0.6).horn(1e4, false))
                .isCloseTo(saddle(120, 4.8, 0.6).horn(1e4, false), within(1.0));
        assertThat(Math.abs(saddle(120, 2.4, 0.6).horn(1e4, false)))
                .isGreaterThan(Math.abs(saddle(120, 4.8, 0.6).horn(1e4, false)));
    }

    @Test
    void stressesGrowWithTheLoad() {
        Saddle s = saddle(120, 4.8, 0.5);
        assertThat(s.horn(2e4, true)).isCloseTo(2 * s.horn(1e4, true), within(1e-6));
        assertThat(s.middle(2e4)).isCloseTo(2 * s.middle(1e4), within(1e-6));
        assertThat(s.bottom(1e4, true)).isCloseTo(0.1 * s.bottom(1e4, false), within(1e-6));
        assertThat(s.middle(0)).isZero();
    }

    /** Half way between saddles at the ends a drum bends like a beam: W L / 8, and the weight of the flat ends' liquid pushes. */
    @Test
    void middleIsABeam() {
        Saddle s = saddle(120, 6, 0);
        double moment = 2 * 1e4 * 6 / 8 * (1 + 2 * 0.36 / 36);
        assertThat(s.middle(1e4)).isCloseTo(moment / (Math.PI * 0.36 * 0.006), within(1e-3));
    }

    @Test
    void refusesWhatTheRuleDoesNotKnow() {
        assertThatThrownBy(() -> saddle(119, 4.8, 0.5)).hasMessageContaining("angle");
        assertThatThrownBy(() -> saddle(181, 4.8, 0.5)).hasMessageContaining("angle");
        assertThatThrownBy(() -> saddle(120, 4.8, 2.5)).hasMessageContaining("beyond the saddle");
        assertThat(saddle(120, 4.8, 2.4).k2()).isPositive();
        assertThat(saddle(180, 4.8, 2.4).k6()).isPositive();
    }
}
