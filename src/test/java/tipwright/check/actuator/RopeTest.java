// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.Swap;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Rope;
import tipwright.outline.ActuatorShape;
import tipwright.placement.PartsBox;

/** A tank on a rope: it pulls and never pushes. */
class RopeTest {
    private static final String ACTUATOR = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
    private static final String ROPE = "{kind: rope, closed: 800 mm, stroke: 2 m, pull: 12 kN, hold: 14 kN}";
    private static final String WINCH = "supply: {kind: hand-winch, travel-per-turn: 20 mm}\n";

    private static Design pulled() {
        return Examples.read(
                Swap.swap(Examples.BOX, ACTUATOR, ROPE, "[-600 mm, -500 mm]", "[-500 mm, 3000 mm]", "80 deg", "20 deg")
                        + WINCH);
    }

    private static Finding of(List<Finding> all, String id) {
        return all.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    /**
     * Moments about the pivot at 0 deg: 1400 kg of slurry and the steel of five sides of 4 mm, 0.4 m before it, against a rope that
     * runs up from 0.85 m before it. Source: statics, own sum.
     */
    @Test
    void theRopePullsWhatTheMomentsSay() throws Exception {
        List<Finding> all = Checker.check(pulled()).findings();
        assertThat(of(all, "push").verdict()).isEqualTo(Verdict.PASS);
        assertThat(of(all, "push").needs()).isZero();
        double steel = 7850 * 0.004 * 5;
        double arm = 0.85 * 2.6 / Math.hypot(0.05, 2.6);
        double atRest = (1400 + steel) * 9.80665 * 0.4 / arm;
        assertThat(of(all, "pull").needs()).isCloseTo(atRest, within(0.03 * atRest));
        assertThat(of(all, "hold").has()).isCloseTo(14000, within(1e-9));
        assertThat(all).noneMatch(f -> f.id().startsWith("buckling"));
    }

    /** Below the tank a rope would have to push; that fails, and is told as what it is. */
    @Test
    void aRopeThatWouldHaveToPushFails() throws Exception {
        Design design = Examples.read(Swap.swap(Examples.BOX, ACTUATOR, ROPE) + WINCH);
        Finding push = of(Checker.check(design).findings(), "push");
        assertThat(push.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(push.note().toString()).contains("a rope cannot push");
    }

    @Test
    void itIsAThinLineAndNoRodTakesItsPlace() {
        Design design = pulled();
        Rope rope = (Rope) design.drive().actuators().get(0).actuator();
        assertThat(ActuatorShape.tubeLength(rope)).isZero();
        assertThat(ActuatorShape.rodRadius(rope)).isEqualTo(0.003);
        Design rod = Examples.read(Examples.BOX);
        assertThat(PartsBox.suits(design, rod.drive().actuators().get(0).actuator()))
                .isFalse();
        assertThat(PartsBox.suits(rod, rope)).isFalse();
        assertThat(PartsBox.suits(design, rope)).isFalse();
    }

    /** Without a winch nobody knows how fast it goes. */
    @Test
    void withoutAWinchTheTimeIsNotKnown() throws Exception {
        Design design = Examples.read(Swap.swap(
                Examples.BOX, ACTUATOR, ROPE, "[-600 mm, -500 mm]", "[-500 mm, 3000 mm]", "80 deg", "20 deg"));
        assertThat(String.valueOf(Checker.check(design).timing().missing())).contains("hand-winch");
    }
}
