// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Verdict;

/** What a cylinder holds over a counterbalance valve. Bore 60 mm, rod 35 mm. */
class CounterbalanceHoldTest {
    private static final double BORE = Math.PI / 4 * 0.06 * 0.06;
    private static final double RING = Math.PI / 4 * (0.06 * 0.06 - 0.035 * 0.035);
    private static final String ELECTRIC = "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN";
    private static final String CYLINDER =
            "kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar";
    private static final String PLAIN = swap(Examples.BOX, "80 deg", "10 deg");
    private static final String BOX = swap(PLAIN, ELECTRIC, CYLINDER);
    /** The rod pulls the tank over. */
    private static final String PULLING = swap(
            BOX,
            "frame-pin: [-600 mm, -500 mm]",
            "frame-pin: [1800 mm, 600 mm]",
            "tank-pin: [-450 mm, 400 mm]",
            "tank-pin: [400 mm, 1600 mm]",
            "stroke: 900 mm",
            "stroke: 1500 mm");

    private static final String PUMP = "supply: {kind: pump, flow: 8 L/min%s}\n";

    /**
     * A counterbalance valve opens at its setting, whatever the cylinder itself is rated to hold: 20 bar on the bore of 60 mm hold
     * 5.65 kN, on the ring of a rod that pulls the tank over 3.73 kN. Source: p = F / A.
     */
    @Test
    void aCounterbalanceValveHoldsNoMoreThanItsSetting() throws CannotComputeException {
        String valve = String.format(Locale.ROOT, PUMP, ", lowering: counterbalance, counterbalance: 20 bar");
        for (String box : List.of(BOX, PULLING)) {
            double area = box.equals(BOX) ? BORE : RING;
            String rated = swap(box, "relief-pressure: 160 bar", "relief-pressure: 160 bar, hold: 40 kN");
            assertThat(One.of(rated + String.format(Locale.ROOT, PUMP, ""), "hold")
                            .has())
                    .isCloseTo(40_000, within(1e-6));
            assertThat(One.of(rated + valve, "hold").has()).isCloseTo(20e5 * area, within(1e-3));
            assertThat(One.of(rated + valve, "what-if/lost-power").capacity()).isCloseTo(20e5 * area, within(1e-3));
            assertThat(One.of(box + valve, "hold").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        }
        String weak = swap(BOX, "relief-pressure: 160 bar", "relief-pressure: 160 bar, hold: 4 kN");
        assertThat(One.of(weak + valve, "hold").has()).isCloseTo(4000, within(1e-6));
    }

    /**
     * Past the dead point the load draws the rod out of oil that no counterbalance valve shuts in: the cylinder's own rating counts.
     */
    @Test
    void pastTheDeadPointTheValveDoesNotCount() throws CannotComputeException {
        String valve = String.format(Locale.ROOT, PUMP, ", lowering: counterbalance, counterbalance: 20 bar");
        String over =
                swap(BOX, "tilt: {to: 10 deg}", "tilt: {from: 60 deg, to: 70 deg}", "160 bar", "160 bar, hold: 40 kN");
        assertThat(One.of(over + valve, "hold").has()).isCloseTo(40_000, within(1e-6));
    }
}
