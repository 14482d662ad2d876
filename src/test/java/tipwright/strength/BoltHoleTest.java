// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Normal round holes by EN 1090-2 table 11 and standard holes by AISC 360 table J3.3, both from memory. */
class BoltHoleTest {
    @ParameterizedTest
    @CsvSource({"10, 11", "12, 13", "14, 15", "16, 18", "20, 22", "24, 26", "27, 30", "30, 33"})
    void ofMetricBolts(double bolt, double hole) {
        assertThat(BoltHole.diameter(1e-3 * bolt)).isCloseTo(1e-3 * hole, within(1e-12));
    }

    /** In sixteenths of an inch. */
    @ParameterizedTest
    @CsvSource({"6, 7", "8, 9", "10, 11", "12, 13", "14, 15", "16, 18"})
    void ofBoltsInInches(double bolt, double hole) {
        assertThat(BoltHole.diameter(0.0254 * bolt / 16)).isCloseTo(0.0254 * hole / 16, within(1e-12));
    }
}
