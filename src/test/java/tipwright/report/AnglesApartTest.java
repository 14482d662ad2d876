// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** An angle over its limit never reads as the limit. */
class AnglesApartTest {
    @ParameterizedTest
    @CsvSource({
        "5.004, 5, 5.004 deg, 5 deg",
        "5.3, 5, 5.3 deg, 5 deg",
        "3.29612, 5, 3.3 deg, 5 deg",
        "5, 5, 5 deg, 5 deg",
        "5.00004, 5, 5.00004 deg, 5 deg"
    })
    void isToldFromWhatStandsBesideIt(double demand, double capacity, String needs, String has) {
        Finding angle = new Finding(
                "hang",
                "Lifting eye",
                Math.toRadians(demand),
                Math.toRadians(capacity),
                1,
                Kind.ANGLE,
                Sense.AT_MOST,
                demand / capacity,
                Extreme.NOWHERE,
                demand > capacity ? Verdict.FAIL : Verdict.PASS,
                "invented",
                Text.NONE);
        assertThat(angle.needed().metric()).isEqualTo(needs);
        assertThat(angle.there().metric()).isEqualTo(has);
    }
}
