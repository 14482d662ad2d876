// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.Saddle;

/** Zick's coefficients and the horn's stress. */
class ZickSaddleTest {
    private static Saddle saddle(double degrees, double length, double overhang) {
        return new Saddle(Math.toRadians(degrees), 0.6, 0.006, 0.150, length, overhang);
    }

    /**
     * Source: Pressure Vessel Design Manual, p. 174 (K2 to K5, read); K6 from the closed form of ASME VIII-2 4.15 in a public Python
     * module (read; recomputed).
     */
    @ParameterizedTest
    @CsvSource({
        "120, 1.171, 0.880, 0.401, 0.760, 0.0529",
        "130, 1.022, 0.722, 0.362, 0.726, 0.0449",
        "132, 0.996, 0.694, 0.355, 0.720, 0.0434",
        "152, 0.781, 0.466, 0.289, 0.669, 0.0305"
    })
    void coefficients(double degrees, double k2, double k3, double k4, double k5, double k6) {
        Saddle s = saddle(degrees, 4.8, 0.6);
        assertThat(s.k2()).isCloseTo(k2, within(5.1e-4));
        assertThat(s.k3()).isCloseTo(k3, within(5.1e-4));
        assertThat(s.k4()).isCloseTo(k4, within(5.1e-4));
        assertThat(s.k5()).isCloseTo(k5, within(5.1e-4));
        assertThat(s.k6()).isCloseTo(k6, within(5.1e-5));
    }

    /** Source: own input set, two ways (K6 of four digits by hand): Q 20 kN, t 6, b 150, R 600 mm. */
    @Test
    void hornOfALongShell() {
        assertThat(saddle(120, 4.8, 0.3).horn(20_000, false) / 1e6).isCloseTo(-14.44, within(0.016));
        assertThat(saddle(120, 4.8, 0.6).horn(20_000, false) / 1e6).isCloseTo(-47.50, within(0.047));
    }

    /** Source: commentary on PD 5500 saddles on a public page (read): a rigid saddle can double the horn's bending. */
    @Test
    void rigidSaddleDoublesTheBending() {
        Saddle s = saddle(120, 4.8, 0.6);
        double direct = 20_000 / (4 * 0.006 * (0.150 + 1.56 * Math.sqrt(0.6 * 0.006)));
        assertThat(s.horn(20_000, true) + direct).isCloseTo(2 * (s.horn(20_000, false) + direct), within(1e-3));
    }
}
