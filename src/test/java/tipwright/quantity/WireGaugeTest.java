// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gauges of wire as they are said; 1/0 is gauge 0, 2/0 is -1, as the law of ASTM B258 counts them. */
class WireGaugeTest {
    @ParameterizedTest
    @CsvSource({
        "6, 6",
        "AWG 6, 6",
        "6 AWG, 6",
        "awg6, 6",
        "14 ga, 14",
        "1/0, 0",
        "2/0, -1",
        "AWG 4/0, -3",
        "-2, -2",
        "40, 40"
    })
    void isRead(String said, double number) throws QuantityException {
        assertThat(Quantities.wireGauge(said).si()).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource({"0/0", "6/2", "six", "6 mm", "''", "100 AWG"})
    void isRefused(String said) {
        assertThatThrownBy(() -> Quantities.wireGauge(said)).isInstanceOf(QuantityException.class);
    }

    @Test
    void isNoArea() {
        assertThatThrownBy(() -> Quantities.estimate("2/0 AWG", Kind.AREA, ""))
                .hasMessageContaining("write it under 'awg:', as 'awg: -1'");
        assertThatThrownBy(() -> Quantities.estimate("12", Kind.AREA, "")).hasMessageContaining("no unit in '12'");
    }

    @Test
    void isRewrittenAsANumber() throws QuantityException {
        assertThat(Quantities.rewrite("2/0", 4, Kind.RATIO)).isEqualTo("4");
        assertThat(Quantities.rewrite("AWG 6", 4, Kind.RATIO)).isEqualTo("4");
    }
}
