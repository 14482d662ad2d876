// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** An electric actuator whose rating does not all reach the rod: what does not get there bears nothing. */
class ElectricEfficiencyTest {
    private static final String ACTUATOR = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";

    private static String design(double efficiency, double rating) {
        return swap(
                Examples.BOX,
                ACTUATOR,
                ("{kind: electric, closed: 800 mm, stroke: 900 mm, push: %s kN, pull: %s kN, efficiency: %s %%,"
                                + " speed: {no-load: 20 mm/s, rated: 10 mm/s}, voltage: 12 V,"
                                + " current: {no-load: 2 A, rated: 90 A}}")
                        .formatted(rating, rating, 100 * efficiency));
    }

    private static Finding find(String yaml, String id) throws CannotComputeException {
        return Checker.findings(Examples.read(yaml)).stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"push", "pull"})
    void onlyWhatReachesTheRodBears(String id) throws CannotComputeException {
        Finding f = find(design(0.6, 20), id);
        assertThat(f.capacity()).isCloseTo(12_000, within(1e-6));
        assertThat(f.utilisation()).isCloseTo(f.demand() / 12_000, within(1e-9));
    }

    /** Half of twice the rating is the rating: forces, speed and current must not tell the two apart. */
    @Test
    void theLoadLineGoesThroughWhatReachesTheRod() throws CannotComputeException {
        Timing plain = CycleTimer.time(Analyser.analyse(Examples.read(design(1, 12))));
        Timing lossy = CycleTimer.time(Analyser.analyse(Examples.read(design(0.5, 24))));
        assertThat(lossy.cycles().get(0).raise())
                .isFinite()
                .isCloseTo(plain.cycles().get(0).raise(), within(1e-9));
        assertThat(lossy.cycles().get(0).peaks().current())
                .isCloseTo(plain.cycles().get(0).peaks().current(), within(1e-9));
    }
}
