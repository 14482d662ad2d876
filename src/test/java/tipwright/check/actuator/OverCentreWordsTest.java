// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;

/** What is said where the actuator's force changes sign. */
class OverCentreWordsTest {
    private static Finding of(String yaml) throws CannotComputeException {
        return new OverCentreCheck().run(Analyser.analyse(Examples.read(yaml))).get(0);
    }

    /** An actuator on the dump side pulls the tank over, and pushes when it has passed. */
    @Test
    void onePullingUpGoesFromPullToPush() throws CannotComputeException {
        Finding f = of(swap(
                Examples.BOX,
                "frame-pin: [-600 mm, -500 mm]",
                "frame-pin: [1800 mm, 600 mm]",
                "tank-pin: [-450 mm, 400 mm]",
                "tank-pin: [400 mm, 1600 mm]",
                "stroke: 900 mm",
                "stroke: 1500 mm"));
        assertThat(f.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(f.note().metric())
                .startsWith("the pull turns into a push at ")
                .doesNotContain("the push turns into a pull");
        // past the crossing it is the push that holds the tank back
        assertThat(f.demand()).isPositive();
        assertThat(f.capacity()).isCloseTo(12_000, within(1e-6));
        assertThat(f.tilt()).isGreaterThan(Math.toRadians(20));
    }

    /** A loaded tank behind the pivot and an empty one before it: the sign changes when the load leaves. */
    @Test
    void aLoadThatLeavesTurnsTheForceToo() throws CannotComputeException {
        String yaml = swap(
                        Examples.BOX,
                        "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                        "mass: {empty: 150 kg, centre: [700 mm, 1 m, 0 m]}",
                        "80 deg",
                        "10 deg")
                + "cases: {skip: [draining, heaped, caked, heel]}\n";
        Finding f = of(yaml);
        assertThat(f.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(f.note().metric())
                .contains("pushes with the load 'full, load still in it'")
                .contains("pulls with the load 'empty'");
    }

    /** Springs may hold a load back that has long passed over the pivot: what is said is what the rod does. */
    @Test
    void oneThatPushesAllTheWaySaysSo() throws CannotComputeException {
        Finding f = of(swap(Examples.BOX, "80 deg", "10 deg"));
        assertThat(f.verdict()).isEqualTo(Verdict.PASS);
        assertThat(f.note().metric())
                .isEqualTo("the actuator pushes at every tilt; the load never goes over by itself");
    }

    /** No figure is no pass. */
    @Test
    void whatIsNoNumberFails() {
        Findings make = new Findings(new OverCentreCheck(), Examples.read(Examples.BOX));
        assertThat(make.verdict(Double.NaN)).isEqualTo(Verdict.FAIL);
    }
}
