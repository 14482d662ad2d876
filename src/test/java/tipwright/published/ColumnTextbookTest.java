// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.Column;

/** Columns with published answers. */
class ColumnTextbookTest {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168361e6;

    /** Source: R. C. Hibbeler, Mechanics of Materials, example 13-1 (read): 228.2 kN. */
    @Test
    void tubeOfHibbelerExample13Dash1() {
        double area = Math.PI * (0.075 * 0.075 - 0.070 * 0.070);
        double inertia = Math.PI * (Math.pow(0.075, 4) - Math.pow(0.070, 4)) / 4;
        double p = Column.uniform(7.2, area, inertia, 200e9, 250e6);
        assertThat(p).isCloseTo(228.2e3, within(0.05e3));
        assertThat(p / area).isCloseTo(100.2e6, within(0.05e6));
    }

    /** Source: B. J. Goodno and J. M. Gere, Mechanics of Materials, problem 11.4-2 (read): pinned pipe 40/36 mm, 62.2 kN;
     * it asks for the elastic load, so the yield is set high enough here for Euler to govern. */
    @Test
    void pipeOfGere() {
        double inertia = Math.PI * (Math.pow(0.040, 4) - Math.pow(0.036, 4)) / 64;
        double area = Math.PI * (0.040 * 0.040 - 0.036 * 0.036) / 4;
        assertThat(inertia).isCloseTo(43_215.7e-12, within(0.1e-12));
        assertThat(Column.uniform(1.2, area, inertia, 210e9, 600e6)).isCloseTo(62.20e3, within(0.005e3));
    }

    /** Source: own input set from beam theory, checked against a finite-element eigenvalue. P/pi^2 with E I1 = 1, length 1. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1, 1",
        "0.5, 2, 1.298472",
        "0.5, 4, 1.479500",
        "0.3, 4, 2.491880",
        "0.7, 4, 1.109416",
        "0.5, 1e9, 1.668094",
    })
    void steppedColumn(double first, double ratio, double expected) {
        double p = Column.stepped(1, first, ratio, 1 - first);
        assertThat(p / (Math.PI * Math.PI)).isCloseTo(expected, within(1e-6 * expected));
    }
}
