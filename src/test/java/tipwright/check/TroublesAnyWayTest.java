// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Examples;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Then;

/**
 * What goes wrong on ground that slopes any way, half way between two sides too: a frozen tank on four feet that stand as a diamond
 * tips over the edge between two of them, square to which the whole slope lies.
 */
class TroublesAnyWayTest {
    private static final String DIAMOND = swap(
            Examples.BOX,
            "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
            "mass: {empty: 100 kg, centre: [0 m, 1 m, 0 m]}",
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 90 %, density: 1000 kg/m3}",
            "c0: 19 kN",
            "c0: 1900 kN",
            "closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN",
            "closed: 900 mm, stroke: 400 mm, push: 600 kN, pull: 600 kN, hold: 900 kN",
            "tilt: {to: 80 deg}",
            """
            tilt: {to: 0.1 deg}
            site: {any-way: 5 deg}
            supports: {outline: [[-1 m, 0 m], [0 m, -1 m], [1 m, 0 m], [0 m, 1 m]], y: -500 mm, slope: 1 deg}
            frame: {mass: 50 kg, centre: [0 m, 0 m, 0 m]}
            what-if: {never: [full-of-rainwater]}
            """);

    private static final String ID = "what-if/frozen-solid";

    /**
     * The slope's whole tangent times the height, over the distance to an edge of the diamond, of the tank as stowed: it froze with
     * its surface level, so that the middle of the ice lies down the slope by b^2 tan / 12 h, as that of a sheared box does.
     */
    private static double tips(double fill) {
        double slope = Math.tan(Math.toRadians(5));
        double ice = 1000 * fill;
        double height = (100 * 1.5 + 50 * 0.5 + ice * (1 + fill / 2)) / (150 + ice);
        double down = ice / (150 + ice) * slope / 12 / fill;
        return slope * height / (Math.sqrt(0.5) - down);
    }

    private static Finding then(Finding finding) {
        return Objects.requireNonNull(finding.then()).worst();
    }

    @Test
    void frozenTankTipsTheWayItIsLeastWide() throws Exception {
        List<Finding> all = Checker.asFilled(Examples.read(DIAMOND)).findings();
        Finding frozen = all.stream().filter(f -> f.id().equals(ID)).findFirst().orElseThrow();
        Finding worst = then(frozen);
        assertThat(worst.id()).isEqualTo("tip-over/as-it-stands");
        assertThat(frozen.loadCase()).contains(" and ");
        assertThat(worst.demand() / worst.capacity()).isCloseTo(tips(0.9), within(3e-3 * tips(0.9)));
    }

    /** With less in it than stated, what goes wrong is looked at on each ground too. */
    @Test
    void lessFullTankStandsOnEachGroundToo() throws Exception {
        List<Check> rules =
                Checks.all().stream().filter(c -> !(c instanceof WhatIfCheck)).toList();
        String half = swap(DIAMOND, "fill: 90 %", "fill: 50 %");
        Finding frozen =
                Conditions.ifSomethingGoesWrong(Analyser.analyse(Examples.read(half)), new WhatIfCheck(rules)).stream()
                        .filter(f -> f.id().equals(ID))
                        .findFirst()
                        .orElseThrow();
        Then then = Objects.requireNonNull(frozen.then());
        assertThat(then.worst().id()).isEqualTo("tip-over/as-it-stands");
        assertThat(then.worst().demand() / then.worst().capacity()).isCloseTo(tips(0.5), within(3e-3 * tips(0.5)));
    }
}
