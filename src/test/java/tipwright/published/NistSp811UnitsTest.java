// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/**
 * Conversion factors. Source: NIST Special Publication 811, appendix B (from memory; each recomputed from the defining figures of
 * inch, pound and standard gravity). Figures marked exact there are held to a relative 1e-14, rounded ones to their printed digits.
 */
class NistSp811UnitsTest {
    @ParameterizedTest(name = "1 {0} = {2}")
    @CsvFileSource(resources = "/tipwright/validation/units.csv")
    void oneOfIt(String unit, Kind kind, double si, double relative) throws QuantityException {
        assertThat(Quantities.parse("1 " + unit, kind)).isCloseTo(si, offset(si * relative));
    }

    /** The steam and ice points and absolute zero. */
    @ParameterizedTest
    @CsvSource({
        "32 degF, 273.15",
        "212 degF, 373.15",
        "0 degC, 273.15",
        "-40 degF, 233.15",
        "-40 degC, 233.15",
        "0 K, 0"
    })
    void temperature(String written, double kelvin) throws QuantityException {
        assertThat(Quantities.parse(written, Kind.TEMPERATURE)).isCloseTo(kelvin, offset(1e-10));
    }
}
