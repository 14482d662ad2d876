// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tipwright.check.PinStress;

/** Pins with published answers. */
class PinTextbookTest {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168361e6;
    private static final double LBF = 4.4482216152605;

    /**
     * Source: J. E. Shigley, Mechanical Engineering Design, problem 3-40 (inputs read, answers recomputed): 1000 lbf, cheeks 0.5, lug
     * 0.75, pin 0.5 in: 17.83 kpsi bending with evenly spread loads, tau 3.395 kpsi.
     */
    @Test
    void shigley340() {
        double moment = 1000 * LBF * (0.5 / 4 + 0.75 / 8) * INCH;
        assertThat(PinStress.bending(0.5 * INCH, moment) / KSI).isCloseTo(17.83, within(0.005));
        assertThat(PinStress.shear(0.5 * INCH, 500 * LBF) / KSI).isCloseTo(3.395, within(0.0005));
    }

    /** Source: the same book, problem 3-41: 4 kN, 6, 18, 12 mm: 88.42 MPa, tau 23.58 MPa. */
    @Test
    void shigley341() {
        double moment = 4000 * (0.006 / 4 + 0.018 / 8);
        assertThat(PinStress.bending(0.012, moment)).isCloseTo(88.42e6, within(0.005e6));
        assertThat(PinStress.shear(0.012, 2000)).isCloseTo(23.58e6, within(0.005e6));
    }

    /** Source: own input set: 25 mm pin, 30 kN, double shear; the mean shear 30.558 MPa is three quarters of the largest. */
    @Test
    void doubleShear() {
        assertThat(0.75 * PinStress.shear(0.025, 15_000)).isCloseTo(30.558e6, within(0.0005e6));
    }

    /** Source: an open question-and-answer page (read): 15 mm pin, 385 MPa ultimate, double shear: 136.07 kN. */
    @Test
    void doubleShearFailureLoad() {
        double perNewton = 0.75 * PinStress.shear(0.015, 0.5);
        assertThat(385e6 / perNewton).isCloseTo(136.07e3, within(0.005e3));
    }
}
