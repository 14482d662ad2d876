// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Extreme;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What is said of the worst of many once something has gone wrong. */
class ThenTest {
    private static Then of(Verdict verdict, String cause, String... others) {
        Finding worst = new Finding(
                "push",
                "Actuator: push",
                1,
                2,
                1,
                Kind.FORCE,
                Sense.AT_MOST,
                0.5,
                Extreme.NOWHERE,
                verdict,
                "s",
                Text.NONE);
        return new Then(worst, Text.words(cause), List.of(others));
    }

    @Test
    void theCauseStandsBeforeTheWorstAndWhatFailsTooBehindIt() {
        assertThat(of(Verdict.FAIL, "stuck fast", "One").note().metric())
                .isEqualTo("stuck fast; worst then: Actuator: push; also fails: One");
        assertThat(of(Verdict.CLOSE, "").note().metric()).isEqualTo("closest to failing then: Actuator: push");
        assertThat(of(Verdict.PASS, "", "One", "Two").note().metric())
                .isEqualTo("closest to failing then: Actuator: push; also fail: One, Two");
    }

    /** Three are named. */
    @Test
    void moreThanThreeAreCounted() {
        assertThat(of(Verdict.FAIL, "", "One", "Two", "Three").note().metric()).endsWith("also fail: One, Two, Three");
        assertThat(of(Verdict.FAIL, "", "One", "Two", "Three", "Four").note().metric())
                .endsWith("also fail: One, Two, Three and 1 more");
        assertThat(of(Verdict.FAIL, "", "One", "Two", "Three", "Four", "Five")
                        .note()
                        .metric())
                .endsWith("also fail: One, Two, Three and 2 more");
    }

    @Test
    void whatIsSaidHasTheCauseBeforeIt() {
        assertThat(of(Verdict.FAIL, "stuck fast").says(Text.words("it bends")).metric())
                .isEqualTo("stuck fast; it bends");
        assertThat(of(Verdict.FAIL, "").says(Text.words("it bends")).metric()).isEqualTo("it bends");
    }
}
