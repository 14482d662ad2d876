// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The choice of the worst. */
class ExtremeTest {
    private static Extreme of(Extreme.Search search, double... values) {
        for (int i = 0; i < values.length; i++) {
            search.offer(values[i], i, "load " + i, MotionDirection.RAISING);
        }
        return search.found();
    }

    @Test
    void theFirstOfThoseThatAreEqualButForRoundingGoverns() {
        assertThat(of(Extreme.Search.largest(), 1, 3, 3 * (1 + 1e-12), 2).tilt())
                .isEqualTo(1);
        assertThat(of(Extreme.Search.largest(), 1, 3, 3 * (1 + 1e-9), 2).tilt()).isEqualTo(2);
        assertThat(of(Extreme.Search.smallest(), 5, -3, -3 * (1 + 1e-12)).loadCase())
                .isEqualTo("load 1");
        assertThat(of(Extreme.Search.smallest(1e-3), 5, 2, 1.9995).value()).isEqualTo(2);
    }

    /** With a bound the same is found, and what cannot be the largest is not asked for. */
    @Test
    void aBoundLeavesOutWhatCannotBeTheLargest() throws CannotComputeException {
        List<CaseResult> cases = Analyser.analyse(Examples.read(Examples.BOX)).cases();
        Extreme.OfBalance force = (row, b) -> Math.abs(b.force());
        int[] asked = {0};
        Extreme bounded = Extreme.largest(cases, (row, b) -> Math.abs(b.force()) * 1.2 + 1, (row, b) -> {
            asked[0]++;
            return force.of(row, b);
        });
        Extreme plain = Extreme.largest(cases, force);
        assertThat(bounded).isEqualTo(plain);
        int all = cases.stream().mapToInt(c -> 3 * c.rows().size()).sum();
        assertThat(asked[0]).isBetween(1, all / 2);
        assertThat(Extreme.largest(cases, (row, b) -> Double.NaN, force)).isEqualTo(plain);
    }

    @Test
    void whatIsNoNumberGovernsOverAll() {
        assertThat(of(Extreme.Search.largest(), 1, Double.NaN, Double.POSITIVE_INFINITY)
                        .tilt())
                .isEqualTo(1);
        assertThat(of(Extreme.Search.smallest(), Double.NaN, 1).value()).isNaN();
    }

    @Test
    void nothingBeyondTheStartIsNowhere() {
        Extreme none = of(Extreme.Search.above(0), -1, 0);
        assertThat(none.value()).isZero();
        assertThat(none.tilt()).isNaN();
        assertThat(none.loadCase()).isNull();
        assertThat(of(Extreme.Search.below(2), 3, 1).value()).isEqualTo(1);
        assertThat(of(Extreme.Search.largest(), Double.NEGATIVE_INFINITY, -7).value())
                .isEqualTo(-7);
    }
}
