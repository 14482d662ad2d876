// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** The open box has 5 m2 of wall; 4 mm of steel (7850 kg/m3) weigh 157 kg, half a millimetre 19.625 kg. */
class TooLightTest {
    private static final String WALL = "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}";

    private static List<String> told(double kg, boolean thickness) {
        String mass =
                "mass: {empty: " + kg + " kg, centre: [0 mm, 900 mm, 0 mm]" + (thickness ? ", thickness: 4 mm}" : "}");
        return TooLight.find(Examples.read(swap(Examples.BOX, WALL, mass))).stream()
                .map(Text::metric)
                .toList();
    }

    @Test
    void aWallThatIsToldIsNotWeighed() {
        assertThat(TooLight.find(Examples.read(Examples.BOX))).isEmpty();
    }

    /** 157 kg times or over 9.80665 (newtons) or 2.20462 (pounds), within 4 %. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1539.6 | 9.81 times less, as newtons taken for kilograms would be",
                "1600 | 9.81 times less, as newtons taken for kilograms would be",
                "1480 | 9.81 times less, as newtons taken for kilograms would be",
                "346.1 | 2.2 times less, as pounds taken for kilograms would be",
                "359 | 2.2 times less, as pounds taken for kilograms would be",
                "333 | 2.2 times less, as pounds taken for kilograms would be",
                "71.2 | 2.2 times more, as kilograms taken for pounds would be",
                "74 | 2.2 times more, as kilograms taken for pounds would be",
                "16 | 9.81 times more"
            })
    void otherUnitsAreToldByTheirFactor(double kg, String says) {
        assertThat(told(kg, true))
                .containsExactly("The empty tank is said to weigh "
                        + Text.amount(kg, Kind.MASS).metric() + "; its wall of 4 mm weighs 157 kg, " + says
                        + ". Was it weighed in other units?");
    }

    /** Within 4 % of no factor, and no lighter than seven tenths of its steel. */
    @ParameterizedTest
    @CsvSource({"1605", "1475", "361", "331", "157", "110.5", "5000"})
    void whatMayBeIsLeftAlone(double kg) {
        assertThat(told(kg, true)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"109.5", "75", "68", "20", "5"})
    void lighterThanSevenTenthsOfItsSteelIsTold(double kg) {
        assertThat(told(kg, true))
                .containsExactly("The empty tank is said to weigh "
                        + Text.amount(kg, Kind.MASS).metric()
                        + ", less than its steel: 5.00 m2 of wall weigh 157 kg even at 4 mm thick.");
    }

    /** Where no thickness is told, less than half a millimetre of steel; its units cannot be guessed then. */
    @Test
    void lighterThanTheThinnestWallIsTold() {
        assertThat(told(19.6, false))
                .containsExactly("The empty tank is said to weigh 19.6 kg, less than its steel: 5.00 m2 of wall weigh"
                        + " 19.63 kg even at 0.5 mm thick.");
        assertThat(told(19.65, false)).isEmpty();
        assertThat(told(19.625 * 9.80665, false)).isEmpty();
        assertThat(told(19.625 / 9.80665, false))
                .singleElement()
                .asString()
                .contains("less than its steel")
                .doesNotContain("units");
    }
}
