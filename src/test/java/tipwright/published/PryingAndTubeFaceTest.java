// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tipwright.strength.BoltedTee;
import tipwright.strength.BoltedTee.Mode;
import tipwright.strength.TubeFace;

/** Bolts that are pried, and the faces of tubes, by EN 1993-1-8 and AISC 360. */
class PryingAndTubeFaceTest {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168361e6;
    private static final double KIP = 4448.2216152605;

    /**
     * Source: worked end plate on a public page (read; plate 20 mm of S355 and M20 8.8 inferred, they reproduce every figure; its arm is
     * rounded, hence 0.2 %).
     */
    @Test
    void endPlate() {
        BoltedTee narrow = new BoltedTee(0.020, 355e6, 0.0942, 0.0237, 1, 282_240);
        Percentage close = Percentage.withPercentage(0.2);
        assertThat(narrow.yieldMoment()).isCloseTo(3345.8, close);
        assertThat(narrow.resistance(Mode.FLANGE) / 1e3).isCloseTo(564.1, close);
        assertThat(narrow.resistance(Mode.BOTH) / 1e3).isCloseTo(282.15, close);
        assertThat(narrow.resistance(Mode.BOLTS) / 1e3).isCloseTo(282.24, within(0.005));
        assertThat(narrow.pryingArm()).isCloseTo(1.25 * 0.0237, within(1e-12));
        BoltedTee wide = new BoltedTee(0.020, 355e6, 0.1175, 0.0237, 1, 282_240);
        assertThat(wide.yieldMoment()).isCloseTo(4169.5, close);
        assertThat(wide.resistance(Mode.FLANGE) / 1e3).isCloseTo(703, close);
        assertThat(wide.resistance(Mode.BOTH) / 1e3).isCloseTo(313, close);
        assertThat(wide.governing()).isEqualTo(Mode.BOLTS);
    }

    /** Source: own input set, two ways: flange 12 mm, S275, two M16 8.8, 150 mm, m 35, e 40. */
    @Test
    void ownTee() {
        BoltedTee tee = new BoltedTee(0.012, 275e6, 0.150, 0.035, 0.040, 180_860);
        assertThat(tee.yieldMoment()).isCloseTo(1485, within(1e-6));
        assertThat(tee.pryingArm()).isEqualTo(0.040);
        assertThat(tee.resistance(Mode.FLANGE) / 1e3).isCloseTo(169.71, within(0.005));
        assertThat(tee.resistance(Mode.BOTH) / 1e3).isCloseTo(136.06, within(0.005));
        assertThat(tee.resistance(Mode.BOLTS) / 1e3).isCloseTo(180.86, within(0.005));
        assertThat(tee.withoutPrying() / 1e3).isCloseTo(84.86, within(0.005));
        assertThat(tee.governing()).isEqualTo(Mode.BOTH);
    }

    /**
     * Source: AISC design example, 360 chapter K (read): 50 ksi, 0.625 in, beta 0.306, eta 0.333; factors 0.946 and 0.879: 106 and 98.9
     * kips. A web page that prints 4 sqrt(1 - beta) for 4 / sqrt(1 - beta) would be 28 % low.
     */
    @Test
    void tubeFaceOfTheManual() {
        TubeFace face = new TubeFace(10 * INCH, 0.625 * INCH, 50 * KSI);
        assertThat(face.yielding(3.06 * INCH, 3.33 * INCH, 0.946) / KIP).isCloseTo(106.45, within(0.005));
        assertThat(face.yielding(3.06 * INCH, 3.33 * INCH, 0.879) / KIP).isCloseTo(98.91, within(0.005));
    }

    /** Source: own input set, two ways: tube 100 by 100 by 5 mm of S275; the plate by EN 1993-1-8 table 7.13 (from memory). */
    @Test
    void ownTube() {
        TubeFace face = new TubeFace(0.1, 0.005, 275e6);
        assertThat(face.yielding(0.06, 0.06, 1) / 1e3).isCloseTo(64.106, within(5e-4));
        assertThat(face.underPlate(0.01, 0.1, 1) / 1e3).isCloseTo(39.839, within(5e-4));
        // Punching: 275 / sqrt 3 x 5 x (120 + 2 x 10 x 60 x 5 / 100).
        assertThat(face.punching(0.06, 0.06) / 1e3).isCloseTo(275 / Math.sqrt(3) * 5 * 180 / 1e3, within(1e-6));
    }
}
