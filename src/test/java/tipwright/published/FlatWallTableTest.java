// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.CircularPlate;
import tipwright.strength.PlateBending;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.PlateUnderPressure.Edge;

/** Flat walls under pressure, against the tables of the handbooks. Stress = beta q s2/t2, deflection = alpha q s4/(E t3), s the width. */
class FlatWallTableTest {
    private static final double T = 0.01;
    private static final Edge HELD = Edge.SUPPORTED;
    private static final Edge FIXED = Edge.CLAMPED;
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;

    private static PlateBending bent(double height, Edge edges, Edge top, double high) {
        return PlateUnderPressure.steel(1, height, T, edges, edges, top).under(1, high);
    }

    private static double beta(PlateBending bent) {
        return bent.direct() * T * T;
    }

    private static double alpha(PlateBending bent) {
        return bent.moved() * 200e9 * T * T * T;
    }

    /** Source: Roark, 7th ed., table 11.4 case 1a, p. 502 (read): all edges supported, even pressure. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.2874, 0.0444",
        "1.2, 0.3762, 0.0616",
        "1.4, 0.4530, 0.0770",
        "1.6, 0.5172, 0.0906",
        "1.8, 0.5688, 0.1017",
        "2, 0.6102, 0.1110",
        "3, 0.7134, 0.1335",
        "4, 0.7410, 0.1400",
        "5, 0.7476, 0.1417",
        "8, 0.7500, 0.1421"
    })
    void supportedEvenPressure(double ratio, double beta, double alpha) {
        PlateBending bent = bent(ratio, HELD, HELD, 1);
        assertThat(beta(bent)).isCloseTo(beta, Percentage.withPercentage(0.3));
        assertThat(alpha(bent)).isCloseTo(alpha, Percentage.withPercentage(1));
    }

    /** Source: Roark, table 11.4 case 8a; the square read, the rest from memory: all edges clamped, even pressure. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.3078, 0.0138",
        "1.2, 0.3834, 0.0188",
        "1.4, 0.4356, 0.0226",
        "1.6, 0.4680, 0.0251",
        "1.8, 0.4872, 0.0267",
        "2, 0.4974, 0.0277"
    })
    void clampedEvenPressure(double ratio, double beta, double alpha) {
        PlateBending bent = bent(ratio, FIXED, FIXED, 1);
        assertThat(beta(bent)).isCloseTo(beta, Percentage.withPercentage(0.3));
        assertThat(alpha(bent)).isCloseTo(alpha, Percentage.withPercentage(0.5));
    }

    /**
     * Source: own input set, two ways (Navier's series); the 0.080 at 0.5 and the 0.024 at 0.25 of a pressure-vessel handbook's tank
     * table on public pages (read), the rest of it from memory, within 3 %: it takes the upper edge as held.
     */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0.0238, 0.024, 0.00027",
        "0.286, 0.0307, 0.031, 0.00046",
        "0.333, 0.0408, 0.041, 0.00083",
        "0.4, 0.0560, 0.056, 0.00161",
        "0.5, 0.0793, 0.080, 0.00347",
        "0.667, 0.1146, 0.116, 0.00837",
        "1, 0.1619, 0.16, 0.02243",
        "1.5, 0.2568, 0.26, 0.04362",
        "2, 0.3359, 0.34, 0.05943",
        "2.5, 0.3922, 0.38, 0.07077",
        "3, 0.4341, 0.43, 0.07920",
        "3.5, 0.4664, 0.47, 0.08571",
        "4, 0.4923, 0.49, 0.09089"
    })
    void tankWallWithARim(double ratio, double beta, double book, double alpha) {
        PlateBending bent = bent(ratio, HELD, HELD, 0);
        assertThat(beta(bent)).isCloseTo(beta, Percentage.withPercentage(0.3));
        assertThat(beta(bent)).isCloseTo(book, Percentage.withPercentage(3.3));
        assertThat(alpha(bent)).isCloseTo(alpha, Percentage.withPercentage(1.6));
    }

    /** Source: own input set, two ways (an independent solution in Legendre polynomials): top edge free, pressure of a liquid. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0.0393, 0.0089",
        "0.333, 0.0652, 0.0143",
        "0.5, 0.1183, 0.0251",
        "0.667, 0.1591, 0.0332",
        "1, 0.2014, 0.0402",
        "1.5, 0.2763, 0.0487",
        "2, 0.3416, 0.0610",
        "3, 0.4345, 0.0793",
        "4, 0.4923, 0.0909"
    })
    void tankWallWithoutARim(double ratio, double beta, double alpha) {
        PlateBending bent = bent(ratio, HELD, Edge.FREE, 0);
        assertThat(beta(bent)).isCloseTo(beta, Percentage.withPercentage(0.3));
        assertThat(alpha(bent)).isCloseTo(alpha, Percentage.withPercentage(0.7));
    }

    /**
     * Source: Roark, case 2d (read), where it agrees with two independent solutions, from 0.667 to 1.5; below and above the printed
     * figures are 6 to 25 % low and are not asserted. Case 2a (read) but for its 0.45 at 0.667, which is 10 % low.
     */
    @ParameterizedTest
    @CsvSource({
        "0.667, 0, 0.16",
        "1, 0, 0.20",
        "1.5, 0, 0.28",
        "0.5, 1, 0.36",
        "1, 1, 0.67",
        "1.5, 1, 0.77",
        "2, 1, 0.79",
        "4, 1, 0.80"
    })
    void topFreeOfTheHandbook(double ratio, double high, double beta) {
        assertThat(beta(bent(ratio, HELD, Edge.FREE, high))).isCloseTo(beta, within(0.0055));
    }

    /**
     * Source: own input set, two ways, s the short side; the square also 6 x 0.0334 of Timoshenko's table 44 (from memory): all edges
     * clamped, pressure of a liquid, width over height.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.2995", "0.667, 0.2525", "1, 0.2006", "1.5, 0.2767", "2, 0.2985", "3, 0.3011"})
    void clampedTankWall(double ratio, double beta) {
        double side = Math.min(1, ratio);
        PlateBending bent =
                PlateUnderPressure.steel(ratio, 1, T, FIXED, FIXED, FIXED).under(1, 0);
        assertThat(beta(bent) / (side * side)).isCloseTo(beta, Percentage.withPercentage(0.3));
    }

    /** Source: own input set, two ways: sides and bottom clamped, top free, pressure of a liquid; the greater of bottom and side. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.1298", "0.667, 0.1613", "1, 0.2096", "1.5, 0.2526", "2, 0.2998"})
    void clampedTankWallTopFree(double ratio, double beta) {
        assertThat(beta(bent(ratio, FIXED, Edge.FREE, 0))).isCloseTo(beta, Percentage.withPercentage(0.3));
    }

    /** Source: worked tank on a public page (read): 6.5207 mm with 0.08 for half as high as wide; the true 0.0793 makes 6.492. */
    @Test
    void sideWallOfWater() {
        double beta = beta(bent(0.5, HELD, HELD, 0));
        double inches = 98.425 * Math.sqrt(beta * 47.244 * 0.036 / 20_000);
        assertThat(inches * 25.4).isCloseTo(6.5207, Percentage.withPercentage(0.5));
    }

    /** Source: worked tank on a public page (read): lid 177.2 by 39.3 by 0.39 in, 0.19 psi: 1436.5 psi and 0.039 in. */
    @Test
    void lid() {
        PlateUnderPressure plate =
                new PlateUnderPressure(177.2 * INCH, 39.3 * INCH, 0.39 * INCH, 27.5e6 * PSI, 0.3, HELD, HELD, HELD, 0);
        PlateBending bent = plate.under(0.19 * PSI, 0.19 * PSI);
        assertThat(bent.direct() / PSI).isCloseTo(1436.5, Percentage.withPercentage(0.3));
        assertThat(bent.moved() / INCH).isCloseTo(0.0391, Percentage.withPercentage(0.5));
        assertThat(bent.linear()).isTrue();
    }

    /**
     * Source: worked panel on a public page (inputs read, pressure recovered from its edge load): 750 by 467 by 6 mm, 21.33 kPa, 190 GPa:
     * 2.24 mm; stress 66.84 MPa (recomputed with the table's 0.5172).
     */
    @Test
    void panel() {
        PlateUnderPressure plate = new PlateUnderPressure(0.750, 0.467, 0.006, 190e9, 0.3, HELD, HELD, HELD, 0);
        PlateBending bent = plate.under(21_330, 21_330);
        // The page takes the table's row of 1.6 for 1.606.
        assertThat(bent.moved() * 1e3).isCloseTo(2.24, Percentage.withPercentage(1));
        assertThat(bent.direct() / 1e6).isCloseTo(66.84, Percentage.withPercentage(0.5));
    }

    /** Source: Timoshenko (from memory): round plate, clamped 0.75 q r2/t2, supported 1.2375 q r2/t2 with nu 0.3. */
    @Test
    void roundPlates() {
        assertThat(CircularPlate.steel(0.5, T, true).under(1).direct() * T * T / 0.25)
                .isCloseTo(0.75, within(1e-12));
        assertThat(CircularPlate.steel(0.5, T, false).under(1).direct() * T * T / 0.25)
                .isCloseTo(1.2375, within(1e-12));
        double d = 200e9 * T * T * T / (12 * 0.91);
        assertThat(CircularPlate.steel(0.5, T, true).under(1).moved())
                .isCloseTo(Math.pow(0.5, 4) / (64 * d), within(1e-18));
        assertThat(CircularPlate.steel(0.5, T, false).under(1).moved() * 64 * d / Math.pow(0.5, 4))
                .isCloseTo(5.3 / 1.3, within(1e-9));
    }
}
