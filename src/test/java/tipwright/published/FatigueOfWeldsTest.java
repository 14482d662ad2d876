// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.FatigueCurve;

/** Curves of EN 1993-1-9. */
class FatigueOfWeldsTest {
    private static FatigueCurve direct(double category, double factor) {
        return new FatigueCurve(category * 1e6, false, factor);
    }

    /** Source: tests of a public library for EN 1993-1-9 chapter 7 (read). */
    @Test
    void detail160() {
        FatigueCurve curve = direct(160, 1);
        assertThat(curve.knee() / 1e6).isCloseTo(117.889, within(5e-4));
        assertThat(curve.cutOff() / 1e6).isCloseTo(64.754, within(5e-4));
        assertThat(curve.cycles(201.587e6)).isCloseTo(1_000_005, within(1.0));
        assertThat(curve.cycles(89.343e6)).isCloseTo(20_000_180, Percentage.withPercentage(1e-3));
        assertThat(curve.cycles(60e6)).isInfinite();
    }

    /** Source: the same (read): shear, detail 100. */
    @Test
    void shear100() {
        FatigueCurve curve = new FatigueCurve(100e6, true, 1);
        assertThat(curve.cutOff() / 1e6).isCloseTo(45.731, within(5e-4));
        assertThat(curve.cycles(114.870e6)).isCloseTo(999_993, within(1.0));
    }

    /** Source: exact ratios of EN 1993-1-9, figures 7.1 and 7.2 (read; recomputed). */
    @Test
    void ratios() {
        FatigueCurve curve = direct(1, 1);
        assertThat(curve.knee() / 1e6).isCloseTo(0.736806, within(5e-7));
        assertThat(curve.cutOff() / curve.knee()).isCloseTo(0.549280, within(5e-7));
        assertThat(curve.cutOff() / 1e6).isCloseTo(0.404713, within(1e-6));
        assertThat(new FatigueCurve(1e6, true, 1).cutOff() / 1e6).isCloseTo(0.457305, within(5e-7));
    }

    /** Source: own input set, two ways: category, factor, range in MPa, cycles. */
    @ParameterizedTest
    @CsvSource({
        "71, 1, 100, 715822",
        "71, 1, 50, 6268713",
        "71, 1.35, 100, 290940",
        "36, 1, 100, 93312",
        "36, 1, 50, 746496",
        "36, 1, 25, 6722783",
        "56, 1, 100, 351232",
        "56, 1, 50, 2809856",
        "56, 1, 25, 61231761"
    })
    void cycles(double category, double factor, double range, double cycles) {
        assertThat(direct(category, factor).cycles(range * 1e6)).isCloseTo(cycles, within(1.0));
    }

    /** Source: own input set, two ways: Miner's sum of 20 000 at 100 MPa and 500 000 at 45 MPa on a detail 71. */
    @Test
    void minersSum() {
        List<FatigueCurve.Range> ranges =
                List.of(new FatigueCurve.Range(100e6, 20_000), new FatigueCurve.Range(45e6, 500_000));
        assertThat(direct(71, 1).damage(ranges)).isCloseTo(0.075038, within(5e-7));
    }

    /** Source: EN 1993-1-9 tables 3.1, 8.4, 8.5 (from memory). */
    @Test
    void factorsAndCategories() {
        assertThat(FatigueCurve.factor(true, false)).isEqualTo(1.00);
        assertThat(FatigueCurve.factor(true, true)).isEqualTo(1.15);
        assertThat(FatigueCurve.factor(false, false)).isEqualTo(1.15);
        assertThat(FatigueCurve.factor(false, true)).isEqualTo(1.35);
        assertThat(FatigueCurve.attachmentAlong(0.050)).isEqualTo(80e6);
        assertThat(FatigueCurve.attachmentAlong(0.080)).isEqualTo(71e6);
        assertThat(FatigueCurve.attachmentAlong(0.100)).isEqualTo(63e6);
        assertThat(FatigueCurve.attachmentAlong(0.101)).isEqualTo(56e6);
        assertThat(FatigueCurve.attachmentAcross(0.050)).isEqualTo(80e6);
        assertThat(FatigueCurve.attachmentAcross(0.080)).isEqualTo(71e6);
        assertThat(FatigueCurve.FILLET_ROOT).isEqualTo(36e6);
    }
}
