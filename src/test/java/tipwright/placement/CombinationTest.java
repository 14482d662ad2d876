// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Least sums of shares worked out by hand, and mixes of which the shares are known. */
class CombinationTest {
    private static final double[] EAST = {1, 0, 0};
    private static final double[] NORTH = {0, 2, 0};

    @Test
    void addsTheSharesOfAMix() {
        assertThat(Combination.least(List.of(EAST, NORTH), new double[] {0.25, 0.5, 0}))
                .isCloseTo(0.5, within(1e-9));
    }

    @Test
    void takesTheLongerPointsWhereItCan() {
        double[] far = {4, 4, 0};
        assertThat(Combination.least(List.of(EAST, NORTH, far), new double[] {1, 1, 0}))
                .isCloseTo(0.25, within(1e-9));
    }

    @Test
    void countsWhatIsLeftOverTenfold() {
        // nothing points up: all of it is left over
        assertThat(Combination.least(List.of(EAST, NORTH), new double[] {0, 0, 3}))
                .isCloseTo(10, within(1e-9));
        // against a share no share helps
        assertThat(Combination.least(List.of(EAST), new double[] {-1, 0, 0})).isCloseTo(10, within(1e-9));
    }

    @Test
    void nothingNeedsNoShares() {
        assertThat(Combination.least(List.of(EAST), new double[] {0, 0, 0})).isZero();
    }

    @Test
    void isNeverMoreThanTheSharesOfAKnownMix() {
        SplittableRandom random = new SplittableRandom(5);
        for (int trial = 0; trial < 200; trial++) {
            List<double[]> points = new ArrayList<>();
            double[] mix = new double[6];
            double sum = 0;
            for (int i = 0; i < 5; i++) {
                double[] p = random.doubles(mix.length, -1e4, 1e4).toArray();
                double share = random.nextDouble(0.3);
                points.add(p);
                sum += share;
                for (int k = 0; k < mix.length; k++) {
                    mix[k] += share * p[k];
                }
            }
            assertThat(Combination.least(points, mix)).isLessThanOrEqualTo(sum + 1e-6);
        }
    }
}
