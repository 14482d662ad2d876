// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.tank.Slurry;

/** Density of mixtures. */
class SlurryDensityTest {
    private static Slurry byWeight(double share, double solids, double liquid) {
        return new Slurry(1.0, null, null, share, null, solids, liquid, 0.6, 0.5, 3);
    }

    /**
     * Sources: an engineering reference page on slurry density (read): solids 2500 in water, 30 % by weight, printed 1220, exact
     * 1219.512 kg/m3; a mineral-processing page (inputs read, answer recomputed): 2200 in 1200, 35 %: 1427.03; the last two: own
     * input sets, sand 2650 in water.
     */
    @ParameterizedTest
    @CsvSource({
        "0.30, 2500, 1000, 1219.512",
        "0.35, 2200, 1200, 1427.03",
        "0.43, 2650, 1000, 1365.63",
        "0.60, 2650, 1000, 1596.39"
    })
    void mixture(double share, double solids, double liquid, double expected) {
        Slurry slurry = byWeight(share, solids, liquid);
        assertThat(slurry.mixtureDensity()).isCloseTo(expected, within(0.01));
        Slurry again = slurry.withDensity(slurry.mixtureDensity());
        assertThat(again.solidsVolumeShare()).isCloseTo(slurry.solidsVolumeShare(), within(1e-12));
    }

    /** Source: own input set: sand, 43 % by weight is 22.159 % by volume; settled at 60 % packing and saturated 1990 kg/m3. */
    @Test
    void settledBed() {
        assertThat(byWeight(0.43, 2650, 1000).solidsVolumeShare()).isCloseTo(0.22159, within(5e-6));
        assertThat(byWeight(0.60, 2650, 1000).solidsVolumeShare()).isCloseTo(0.361446, within(5e-7));
        assertThat(byWeight(0.43, 2650, 1000).cakeDensity()).isCloseTo(1990, within(1e-9));
    }
}
