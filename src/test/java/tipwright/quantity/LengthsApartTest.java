// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths in findings: as the tape reads them, but never so that what is over a limit reads as what is on it. */
class LengthsApartTest {
    @ParameterizedTest
    @CsvSource({
        "1234.5, 1235 mm",
        "400.2, 400 mm",
        "10.04, 10 mm",
        "9.96, 10 mm",
        "9.94, 9.9 mm",
        "0.4321, 0.4 mm",
        "0.04, 0.04 mm",
        "0, 0 mm",
        "-12.6, -13 mm",
        "-0.43, -0.4 mm"
    })
    void aloneItIsToTheNearestMark(double mm, String shown) {
        assertThat(Text.amount(mm / 1000, Kind.LENGTH).metric()).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "400.2, 400, 400.2 mm, 400 mm",
        "400.02, 400.01, 400.02 mm, 400.01 mm",
        "20.4, 20, 20.4 mm, 20 mm",
        "20.6, 20, 21 mm, 20 mm",
        "400, 400, 400 mm, 400 mm",
        "9.96, 10, 9.96 mm, 10 mm",
        "0.31, 0.29, 0.31 mm, 0.29 mm"
    })
    void besideAnotherItHasTheDigitsThatTellThemApart(double mm, double beside, String one, String other) {
        assertThat(Text.length(mm / 1000, beside / 1000).metric()).isEqualTo(one);
        assertThat(Text.length(beside / 1000, mm / 1000).metric()).isEqualTo(other);
    }

    @Test
    void soItIsInInches() {
        assertThat(Text.length(0.4002, 0.4).show(UnitSystem.US)).isEqualTo("15.756 in");
        assertThat(Text.length(0.4, 0.4002).show(UnitSystem.US)).isEqualTo("15.748 in");
        assertThat(Text.length(0.42, 0.4).show(UnitSystem.US)).isEqualTo("16 9/16 in");
        assertThat(Text.length(0.4, 0.4).show(UnitSystem.US)).isEqualTo("15 3/4 in");
    }

    @Test
    void whateverTheTwoAreTheLargerReadsAsTheLarger() {
        for (int i = 0; i < 2000; i++) {
            double one = Math.pow(10, -4 + 4 * Math.abs(Math.sin(i)));
            double other = one * (1 + Math.pow(10, -1 - 5 * Math.abs(Math.cos(3 * i))));
            double a = number(Text.length(one, other).metric());
            double b = number(Text.length(other, one).metric());
            assertThat(a).as(one + " and " + other).isLessThan(b);
        }
    }

    private static double number(String shown) {
        return Double.parseDouble(shown.replace(" mm", ""));
    }
}
