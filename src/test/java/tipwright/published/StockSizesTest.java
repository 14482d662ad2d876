// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.stock.PipeSize;
import tipwright.geometry.stock.RoundedTube;
import tipwright.geometry.stock.SheetGauge;
import tipwright.geometry.stock.SheetGauge.Metal;

/** Sheet, pipe and tube as the trade stocks them. */
class StockSizesTest {
    private static final double INCH = 0.0254;
    private static final double POUND_PER_SQUARE_FOOT = 0.45359237 / (0.3048 * 0.3048);

    /** Source: Manufacturers' Standard Gauge (8-12, 14, 16, 18, 20 read at cableorganizer.com, the rest from memory): gauge, in, mm. */
    @ParameterizedTest
    @CsvSource({
        "7, 0.1793, 4.554", "8, 0.1644, 4.176", "9, 0.1495, 3.797", "10, 0.1345, 3.416", "11, 0.1196, 3.038",
        "12, 0.1046, 2.657", "13, 0.0897, 2.278", "14, 0.0747, 1.897", "15, 0.0673, 1.709", "16, 0.0598, 1.519",
        "17, 0.0538, 1.367", "18, 0.0478, 1.214", "19, 0.0418, 1.062", "20, 0.0359, 0.912"
    })
    void steelGauges(int number, double inches, double millimetres) {
        double thickness = SheetGauge.of(Metal.STEEL, number).orElseThrow().thickness();
        assertThat(thickness / INCH).isCloseTo(inches, within(1e-9));
        assertThat(thickness * 1e3).isCloseTo(millimetres, within(5.1e-4));
    }

    /**
     * Source: cableorganizer.com (read): 10 gauge weighs 5.625 lb/ft2, 16 gauge 2.5 by the gauge's own definition; steel of 7850 kg/m3 (a
     * steelmaker's book, read) makes 5.493, 2.3 % less.
     */
    @Test
    void massTrap() {
        SheetGauge ten = SheetGauge.of(Metal.STEEL, 10).orElseThrow();
        SheetGauge sixteen = SheetGauge.of(Metal.STEEL, 16).orElseThrow();
        assertThat(SheetGauge.TABLE_DENSITY).isCloseTo(8038, within(1.0));
        assertThat(ten.mass(SheetGauge.TABLE_DENSITY) / POUND_PER_SQUARE_FOOT).isCloseTo(5.625, within(5e-4));
        assertThat(sixteen.mass(SheetGauge.TABLE_DENSITY) / POUND_PER_SQUARE_FOOT)
                .isCloseTo(2.5, within(2e-3));
        assertThat(ten.mass(SheetGauge.STEEL_DENSITY)).isCloseTo(26.818, within(1e-3));
        assertThat(ten.mass(SheetGauge.STEEL_DENSITY) / POUND_PER_SQUARE_FOOT).isCloseTo(5.493, within(5e-4));
    }

    /** Source: cableorganizer.com (read): 10 gauge galvanised 0.1382, stainless 0.1406, aluminium 0.1019 in. */
    @Test
    void oneNumberManyThicknesses() {
        assertThat(inches(Metal.GALVANISED)).isCloseTo(0.1382, within(1e-9));
        assertThat(inches(Metal.STAINLESS)).isCloseTo(0.1406, within(1e-9));
        assertThat(inches(Metal.ALUMINIUM)).isCloseTo(0.1019, within(1e-9));
    }

    private static double inches(Metal metal) {
        return SheetGauge.of(metal, 10).orElseThrow().thickness() / INCH;
    }

    /** Source: law of the Brown and Sharpe gauge, 0.005 in x 92^((36 - n)/39) (ASTM B258, from memory). */
    @Test
    void aluminiumFollowsTheWireGauge() {
        for (int n = 7; n <= 20; n++) {
            double law = 0.005 * Math.pow(92, (36 - n) / 39.0);
            assertThat(SheetGauge.of(Metal.ALUMINIUM, n).orElseThrow().thickness() / INCH)
                    .isCloseTo(law, within(1e-4));
        }
    }

    /**
     * Source: own input set, two ways, kg/m; the 4.25 and 8.59 of EN 10219-2 for 50 by 50 by 3 and 100 by 50 by 4 (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "50, 50, 3, 4.245",
        "60, 40, 3, 4.245",
        "80, 40, 3, 5.187",
        "80, 80, 4, 9.222",
        "100, 50, 4, 8.594",
        "100, 100, 5, 14.410"
    })
    void tubesWithCorners(double height, double width, double wall, double mass) {
        RoundedTube tube = new RoundedTube(height * 1e-3, width * 1e-3, wall * 1e-3);
        assertThat(tube.mass(7850)).isCloseTo(mass, within(6e-4));
        double sharp = 2 * wall * (height + width - 2 * wall) * 1e-6;
        assertThat(sharp / tube.area()).isBetween(1.025, 1.05);
    }

    /** Source: design examples of the tube makers (read): 0.349 in counts of 3/8 in. Stocked sides from memory. */
    @Test
    void usTubes() {
        assertThat(RoundedTube.US_DESIGN_WALL * 0.375).isCloseTo(0.349, within(5e-4));
        assertThat(RoundedTube.usualSides()).hasSize(15).allMatch(s -> s[0] >= s[1] && s[1] >= INCH);
    }

    /** Source: ASME B36.10 (from memory): size, schedule, outside and wall in inches, weight in lb/ft. */
    @ParameterizedTest
    @CsvSource({
        "1/2, 40, 0.840, 0.109, 0.85", "1, 40, 1.315, 0.133, 1.68", "1-1/2, 80, 1.900, 0.200, 3.63",
        "2, 40, 2.375, 0.154, 3.66", "3, 40, 3.500, 0.216, 7.58", "4, 80, 4.500, 0.337, 15.00",
        "6, 40, 6.625, 0.280, 18.99", "8, 40, 8.625, 0.322, 28.58", "12, STD, 12.75, 0.375, 49.61",
        "24, XS, 24, 0.500, 125.61"
    })
    void pipes(String nominal, String schedule, double outside, double wall, double weight) {
        PipeSize pipe = PipeSize.of(nominal, schedule).orElseThrow();
        assertThat(pipe.outside() / INCH).isCloseTo(outside, within(1e-9));
        assertThat(pipe.wall() / INCH).isCloseTo(wall, within(1e-9));
        // B36.10 weighs with 0.2833 lb/in3, 7841 kg/m3.
        double poundsPerFoot = pipe.area() * 7841 / 0.45359237 * 0.3048;
        assertThat(poundsPerFoot).isCloseTo(weight, Percentage.withPercentage(0.4));
    }
}
