// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.One;
import tipwright.check.rule.Verdict;

/** What a cylinder holds over a counterbalance valve. */
class CounterbalanceHoldTest {
    /**
     * A counterbalance valve opens at its setting, whatever the cylinder itself is rated to hold: 20 bar on the bore of 60 mm hold
     * 5.65 kN, on the ring of a rod that pulls the tank over 3.73 kN. Source: p = F / A.
     */
    @Test
    void aCounterbalanceValveHoldsNoMoreThanItsSetting() throws CannotComputeException {
        String valve =
                String.format(Locale.ROOT, HydraulicsTest.PUMP, ", lowering: counterbalance, counterbalance: 20 bar");
        for (String box : List.of(HydraulicsTest.BOX, HydraulicsTest.PULLING)) {
            double area = box.equals(HydraulicsTest.BOX) ? HydraulicsTest.BORE : HydraulicsTest.RING;
            String rated = swap(box, "relief-pressure: 160 bar", "relief-pressure: 160 bar, hold: 40 kN");
            assertThat(One.of(rated + String.format(Locale.ROOT, HydraulicsTest.PUMP, ""), "hold")
                            .has())
                    .isCloseTo(40_000, within(1e-6));
            assertThat(One.of(rated + valve, "hold").has()).isCloseTo(20e5 * area, within(1e-3));
            assertThat(One.of(rated + valve, "what-if/lost-power").capacity()).isCloseTo(20e5 * area, within(1e-3));
            assertThat(One.of(box + valve, "hold").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        }
        String weak = swap(HydraulicsTest.BOX, "relief-pressure: 160 bar", "relief-pressure: 160 bar, hold: 4 kN");
        assertThat(One.of(weak + valve, "hold").has()).isCloseTo(4000, within(1e-6));
    }

    /**
     * Past the dead point the load draws the rod out of oil that no counterbalance valve shuts in: the cylinder's own rating counts.
     */
    @Test
    void pastTheDeadPointTheValveDoesNotCount() throws CannotComputeException {
        String valve =
                String.format(Locale.ROOT, HydraulicsTest.PUMP, ", lowering: counterbalance, counterbalance: 20 bar");
        String over = swap(
                HydraulicsTest.BOX,
                "tilt: {to: 10 deg}",
                "tilt: {from: 60 deg, to: 70 deg}",
                "160 bar",
                "160 bar, hold: 40 kN");
        assertThat(One.of(over + valve, "hold").has()).isCloseTo(40_000, within(1e-6));
    }
}
