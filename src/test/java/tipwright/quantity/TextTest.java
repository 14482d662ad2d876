// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the factors: NIST SP 811 (from memory): inch, pound-force, US gallon. */
class TextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.254    | LENGTH   | mm   | 0 | 254 mm      | 10 in",
                "1356     | MOMENT   | N m  | 0 | 1356 N m    | 1000 lbf ft",
                "3.048    | SPEED    | m/s  | 3 | 3.048 m/s   | 10 ft/s",
                "0.03785  | VOLUME   | L    | 2 | 37.85 L     | 9.999 gal",
                "-0.0254  | LENGTH   | mm   | 1 | -25.4 mm    | -1 in",
                "1e7      | PRESSURE | bar  | 0 | 100 bar     | 1450 psi",
                "0.92903  | AREA     | m2   | 4 | 0.9290 m2   | 10 ft2",
                "12       | CURRENT  | A    | 0 | 12 A        | 12 A",
                "3        | TIME     | s    | 0 | 3 s         | 3 s",
                "0.256    | RATIO    | %    | 0 | 26 %        | 26 %",
                "1.5      | ANGLE    | deg  | 1 | 85.9 deg    | 85.9 deg",
            })
    void aQuantityIsShownInTheUnitsOfTheReader(
            double si, Kind kind, String unit, int decimals, String metric, String us) {
        Text text = Text.of("up to {} there", Text.amount(si, kind, unit, decimals));
        assertThat(text.metric()).isEqualTo("up to " + metric + " there");
        assertThat(text.show(UnitSystem.US)).isEqualTo("up to " + us + " there");
    }

    @Test
    void aQuantityWithoutAUnitTakesTheOneThatSuits() {
        Text text = Text.of("bears up to {}", Text.amount(4448.2216, Kind.FORCE));
        assertThat(text.metric()).isEqualTo("bears up to 4.448 kN");
        assertThat(text.show(UnitSystem.US)).isEqualTo("bears up to 1000 lbf");
    }

    @Test
    void wordsAreLeftAlone() {
        Text text = Text.words("6 mm plate box {} ").plus(Text.amount(0.0254, Kind.LENGTH, "mm", 1));
        assertThat(text.show(UnitSystem.US)).isEqualTo("6 mm plate box {} 1 in");
        assertThat(Text.join(", ", List.of(Text.words("a"), Text.NONE, Text.words("b")))
                        .metric())
                .isEqualTo("a, b");
        assertThat(Text.words("").isEmpty()).isTrue();
    }

    @Test
    void everyGapIsFilled() {
        assertThatThrownBy(() -> Text.of("a {} b {}", Text.words("x"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Text.of("a", Text.words("x"))).isInstanceOf(IllegalArgumentException.class);
    }
}
