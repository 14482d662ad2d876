// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.GasSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.geometry.Vec2;

/** A torsion spring of 60 N m stowed and 120 N m/rad is free at half a radian, 28.6 degrees; by hand, M = M0 - k turn. */
class TorsionSpringTest {
    private static final String STILL = "friction: {pivot: 0, pins: 0}\n";
    private static final String SPRING =
            "assists:\n  - {kind: torsion-spring, name: coil, pin: pivot, moment: 60 N m, rate: 120 N m/rad";

    private static Analysis with(String more) throws CannotComputeException {
        return Analyser.analyse(Examples.read(Examples.BOX + STILL + more));
    }

    private static List<Row> rows(Analysis analysis) {
        return analysis.cases().get(0).rows();
    }

    /** What the spring gives is what the actuator is spared: dF r = -M. */
    @Test
    void isSlackPastItsFreeAngle() throws CannotComputeException {
        List<Row> plain = rows(with(""));
        List<Row> loose = rows(with(SPRING + "}\n"));
        List<Row> fixed = rows(with(SPRING + ", both-legs-fixed: true}\n"));
        for (int i = 0; i < plain.size(); i++) {
            Row row = plain.get(i);
            double arm = row.pose().arm();
            double straight = 60 - 120 * row.tilt();
            double spared = (row.rest().force() - loose.get(i).rest().force()) * arm;
            assertThat(spared).isCloseTo(Math.max(0, straight), within(1e-6));
            assertThat((row.rest().force() - fixed.get(i).rest().force()) * arm).isCloseTo(straight, within(1e-6));
        }
        assertThat(plain.get(plain.size() - 1).tilt()).isGreaterThan(1);
    }

    /** Stored energy is the area under the moment, also past the free angle: midpoint sums. */
    @Test
    void energyIsTheAreaUnderTheMoment() {
        for (boolean fixed : new boolean[] {false, true}) {
            for (double first : new double[] {60, -60, 0}) {
                TorsionSpring spring = new TorsionSpring("s", "pivot", first, 120, fixed, null, null);
                for (double turn : new double[] {-1.1, 0.3, 1.2}) {
                    double sum = 0;
                    int parts = 100_000;
                    for (int i = 0; i < parts; i++) {
                        sum -= spring.momentAt(turn * (i + 0.5) / parts) * turn / parts;
                    }
                    assertThat(spring.energy(turn)).isCloseTo(sum, within(1e-6));
                }
            }
        }
    }

    /** Wound by half a radian, 28.648 degrees, and pressing with 60 N m as stowed, where both are largest. */
    @Test
    void isHeldToItsRangeAndMoment() throws CannotComputeException {
        List<Finding> found = new AssistCheck().run(with(SPRING + ", wind-range: 30 deg, rated: 50 N m}\n"));
        assertThat(found).extracting(Finding::id).containsExactly("assist/coil-moment", "assist/coil-wind");
        assertThat(found.get(0).utilisation()).isCloseTo(1.2, within(1e-9));
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.get(1).demand()).isCloseTo(0.5, within(1e-12));
        assertThat(found.get(1).utilisation()).isCloseTo(28.64789 / 30, within(1e-6));
        assertThat(new AssistCheck().run(with(SPRING + "}\n")))
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED)
                .hasSize(2);
    }

    /** Gay-Lussac: at -20 C the gas presses with 253.15/293.15 of what it does at 20 C; a fifth of it gone takes a fifth more. */
    @Test
    void gasPressesLessInTheCold() {
        Anchor end = new Anchor("frame", Vec2.ZERO);
        GasSpring gas = new GasSpring("g", end, end, 1, 0.4, 1000, 1300, 50, 0);
        assertThat(gas.at(253.15, 0.2).push(0.6)).isCloseTo(1300 * 0.863551 * 0.8, within(0.01));
        assertThat(gas.at(293.15, 0)).isEqualTo(gas);
    }
}
