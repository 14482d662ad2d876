// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.drawing.Svg;
import tipwright.placement.Limit;
import tipwright.placement.Tolerance;
import tipwright.quantity.UnitSystem;

class TornadoTest {
    /** A machine that cannot hold its load at all is drawn in numbers too. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 25, Double.POSITIVE_INFINITY, Double.NaN})
    void isDrawnInNumbers(double used) {
        Limit limit = Limit.values().get(0);
        List<Tolerance.Swing> swings = List.of(
                new Tolerance.Swing("weight of the empty tank", 0.05, false, used, used, Map.of()),
                new Tolerance.Swing("pivot x", 0.003, true, 0.6, Double.POSITIVE_INFINITY, Map.of()));
        Tolerance t = new Tolerance(0.003, used, limit, swings, used, limit, 0, 0, Map.of(), 0);
        assertThat(Svg.of(Tornado.of(t, UnitSystem.US), false))
                .contains("pivot x")
                .doesNotContain("NaN", "Infinity");
    }
}
