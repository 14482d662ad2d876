// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What cold leaves of a battery. */
class ColdBatteryTest {
    /** Source: sizing factors of IEEE 485 (from memory); batteriesglobal.co.uk: half at 0 F; experts123.com: 40 % at -20 C (read). */
    @Test
    void pointsOfTheTables() {
        assertThat(ColdBattery.capacity(273.15 - 17.8)).isCloseTo(0.5, within(1e-9));
        assertThat(ColdBattery.capacity(253.15)).isCloseTo(0.4, within(1e-9));
        assertThat(ColdBattery.capacity(273.15 + 4.4)).isCloseTo(1 / 1.30, within(1e-9));
        assertThat(ColdBattery.capacity(273.15 + 10)).isCloseTo(1 / 1.19, within(1e-9));
        assertThat(ColdBattery.capacity(ColdBattery.RATED)).isEqualTo(1);
        assertThat(ColdBattery.resistance(ColdBattery.RATED)).isEqualTo(1);
        assertThat(ColdBattery.resistance(273.15)).isCloseTo(1.4, within(1e-9));
        assertThat(ColdBattery.resistance(253.15)).isCloseTo(2, within(1e-9));
    }

    @Test
    void theColderTheLess() {
        for (double kelvin = 253.2; kelvin < 298; kelvin += 0.7) {
            assertThat(ColdBattery.capacity(kelvin))
                    .isBetween(0.4, 1.0)
                    .isLessThan(ColdBattery.capacity(kelvin + 0.7) + 1e-12);
            assertThat(ColdBattery.resistance(kelvin)).isGreaterThan(ColdBattery.resistance(kelvin + 0.7) - 1e-12);
        }
        assertThat(ColdBattery.capacity(320)).isEqualTo(1);
        assertThat(ColdBattery.resistance(320)).isEqualTo(1);
        assertThatThrownBy(() -> ColdBattery.capacity(253.1)).hasMessageContaining("-20 C");
        assertThatThrownBy(() -> ColdBattery.resistance(Double.NaN)).hasMessageContaining("-20 C");
    }
}
