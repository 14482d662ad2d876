// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** US lengths are read off a tape: 1/16 in, under a foot 1/32 in, thin things in thousandths. */
class MarksTest {
    @ParameterizedTest
    @CsvSource({
        "33.98, 34 in",
        "33.95, 33 15/16 in",
        "7.374, 7 3/8 in",
        "7.72, 7 23/32 in",
        "0.5, 1/2 in",
        "0.1875, 3/16 in",
        "0.1969, 0.197 in",
        "0.135, 0.135 in",
        "0, 0 in",
        "-12.25, -12 1/4 in",
        "-0.01, -0.01 in"
    })
    void inches(double inches, String shown) {
        assertThat(Quantities.show(inches * 0.0254, Kind.LENGTH, UnitSystem.US)).isEqualTo(shown);
    }
}
