// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.Impact;
import tipwright.strength.InsertGrip;
import tipwright.strength.PowerScrew;
import tipwright.strength.RoadLoad;
import tipwright.strength.TorsionSection;

/** Stops, screws, twisted sections, grip of insert bearings, and what the road asks. */
class ImpactAndScrewTest {
    /** Source: expertsmind.com 30129173 (read): 10 kg fall 12 mm on a beam of 200 kN/m of which 1 kN makes 158 MPa; g 9.81. */
    @Test
    void droppedOnABeam() {
        double weight = 10 * 9.81;
        double force = weight * Impact.factor(0.012, weight / 200e3);
        assertThat(force).isCloseTo(791.28, within(0.005));
        assertThat(force / 200e3 * 1e3).isCloseTo(3.955, within(0.002));
        assertThat(force / 1e3 * 158).isCloseTo(125, within(0.05));
        // The same by energy: falling through the height and the sag.
        double speed = Math.sqrt(2 * 9.81 * 0.012);
        assertThat(Impact.force(10, speed, 200e3, weight)).isCloseTo(force, within(1e-9));
    }

    /** Source: Gere, Mechanics of Materials, 9.10 (read; prints 4.33 for 4.317). */
    @ParameterizedTest
    @CsvSource({"0, 2.00", "2.5, 3.45", "5, 4.317", "7.5, 5.00", "10, 5.58"})
    void factors(double height, double factor) {
        assertThat(Impact.factor(height, 1)).isCloseTo(factor, within(0.005));
    }

    /** Source: own input set, two ways: 1 t at 0.3 m/s into a stop of 2 kN/mm. */
    @Test
    void movingMassIntoAStop() {
        double with = Impact.force(1000, 0.3, 2e6, 9806.65);
        assertThat(with).isCloseTo(26_425, within(0.5));
        assertThat(with / 2e6 * 1e3).isCloseTo(13.21, within(0.005));
        assertThat(with / 9806.65).isCloseTo(2.695, within(5e-4));
        assertThat(Impact.force(1000, 0.3, 2e6)).isCloseTo(13_416, within(0.5));
    }

    /**
     * Source: Shigley, ex. 8-1 (from memory): square double thread 32 mm by 4 mm, friction 0.08, collar 40 mm, 6.4 kN: 26.18 and 9.77 N
     * m, efficiency 0.311. The book rounds the thread's -0.466 and the collar's 10.24.
     */
    @Test
    void jackScrew() {
        PowerScrew jack = new PowerScrew(0.030, 0.008, 0.08, 0, 0.08 * 0.040);
        assertThat(jack.raising(6400)).isCloseTo(26.18, within(0.005));
        assertThat(jack.lowering(6400)).isCloseTo(9.77, within(0.008));
        assertThat(jack.efficiency()).isCloseTo(0.311, within(5e-4));
        assertThat(jack.backDrives()).isFalse();
        // Without the collar the thread alone gives way.
        PowerScrew thread = new PowerScrew(0.030, 0.008, 0.08, 0, 0);
        assertThat(thread.lowering(6400)).isCloseTo(-0.466, within(0.005));
        assertThat(thread.backDrives()).isTrue();
    }

    /** Source: docs.oasys-software.com, rectangular sections (constant, read); a table of sections in torsion (stress, read). */
    @ParameterizedTest
    @CsvSource({"1, 0.141, 0.208", "1.5, 0.196, 0.231", "2, 0.229, 0.246", "3, 0.263, 0.267", "4, 0.281, 0.282"})
    void solidRectangles(double ratio, double constant, double modulus) {
        TorsionSection section = TorsionSection.rectangle(ratio, 1);
        assertThat(section.constant() / ratio).isCloseTo(constant, within(5.1e-4));
        assertThat(section.modulus() / ratio).isCloseTo(modulus, within(5.1e-4));
    }

    /** Source: two pages of one bearing maker (read); own inputs C 14.0, C0 7.8 kN. */
    @Test
    void gripOfInsertBearings() {
        InsertGrip grip = new InsertGrip(14_000, 7_800);
        assertThat(grip.onSoftShaft()).isCloseTo(2800, within(1e-9));
        assertThat(grip.againstShoulder()).isCloseTo(1950, within(1e-9));
        assertThat(grip.onSleeve()).isCloseTo(0.15 * 14_000, within(1e-9));
    }

    /** Source: 49 CFR 393.102 (read at fmcsa.dot.gov); the European set of a public guide (read); EN 12195-1 0.6 (from memory). */
    @Test
    void road() {
        assertThat(RoadLoad.US_BREAKING).isEqualTo(new RoadLoad(0.8, 0.5, 0.5, 0.2, 1));
        assertThat(RoadLoad.US_WORKING).isEqualTo(new RoadLoad(0.435, 0.5, 0.25, 0.2, 1));
        assertThat(RoadLoad.EUROPE).isEqualTo(new RoadLoad(0.8, 0.5, 0.5, 0, 1));
        assertThat(RoadLoad.EUROPE_TIPPING).isEqualTo(0.6);
        assertThat(RoadLoad.US_WORKING.greatest()).isEqualTo(0.5);
        assertThat(RoadLoad.US_BREAKING.greatest()).isCloseTo(0.8, Percentage.withPercentage(1e-9));
    }
}
