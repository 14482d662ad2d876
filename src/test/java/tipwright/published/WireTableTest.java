// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.supply.Cable;

/** Copper wire by gauge. */
class WireTableTest {
    private static final double FOOT = 0.3048;
    private static final double ROOM = 293.15;

    private static Cable solid(double awg, double length, double temperature) {
        return new Cable(awg, null, length, temperature, Cable.Metal.COPPER, 1, null);
    }

    /** Gauge law of ASTM B258 and copper of 100 % IACS (from memory), ohm per 1000 ft. */
    @ParameterizedTest
    @CsvSource({
        "14, 2.5254",
        "12, 1.5882",
        "10, 0.99884",
        "8, 0.62818",
        "6, 0.39507",
        "4, 0.24846",
        "2, 0.15626",
        "0, 0.098271"
    })
    void resistanceByTheGaugeLaw(double awg, double ohms) {
        assertThat(solid(awg, 500 * FOOT, ROOM).resistance()).isCloseTo(ohms, within(ohms * 1e-4));
    }

    /** 0.393 % a kelvin (copper, from memory): 50 K warmer is 19.65 % more. */
    @Test
    void warmCopperResistsMore() {
        double ratio = solid(10, 1, ROOM + 50).resistance() / solid(10, 1, ROOM).resistance();
        assertThat(ratio).isCloseTo(1.1965, within(1e-9));
    }

    /** Bare metric section: 16 mm2, 1 m out and back. Computed: 2 x 1.7241e-8 / 16e-6. */
    @Test
    void metricSection() {
        Cable cable = new Cable(null, 16e-6, 1, ROOM, Cable.Metal.COPPER, 1, null);
        assertThat(cable.resistance()).isCloseTo(0.002155125, within(1e-12));
    }
}
