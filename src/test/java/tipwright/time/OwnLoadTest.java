// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;

/** A design's own fixed load goes up and down in time, against its own force. */
class OwnLoadTest {
    private static final String DESIGN = Examples.BOX.replace(
                    "stroke: 900 mm, push: 12 kN, pull: 12 kN",
                    "stroke: 1500 mm, push: 30 kN, pull: 30 kN, speed: {no-load: 20 mm/s, rated: 10 mm/s}, voltage: 24 V,"
                            + " current: {no-load: 2 A, rated: 50 A}")
            + "cases: {add: [{name: a stone, mass: 900 kg, centre: [0 m, 1 m, 0 m]}]}\nfriction: {pins: 0, pivot: 0}\n";

    /**
     * Time = sum of dL / v(F) over the way, v straight from 20 mm/s without load to 10 mm/s at 30 kN, against the forces of its own
     * rows; the largest current by the straight line from 2 to 50 A at the largest of them.
     */
    @Test
    void itTakesTheTimeAndTheCurrentOfItsOwnForce() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(DESIGN));
        CaseResult own = analysis.cases().get(analysis.cases().size() - 1);
        assertThat(own.name()).isEqualTo("a stone");
        Cycle cycle = Objects.requireNonNull(CycleTimer.time(analysis).of("a stone"));
        double time = 0;
        double most = 0;
        Row before = own.rows().get(0);
        for (Row row : own.rows()) {
            double force = 0.5 * (before.raise().force() + row.raise().force());
            double speed = 0.020 - 0.010 * Math.max(0, force) / 30_000;
            time += (row.pose().length() - before.pose().length()) / speed;
            most = Math.max(most, row.raise().force());
            before = row;
        }
        assertThat(cycle.raise()).isCloseTo(time, within(2e-3 * time));
        double current = cycle.moments().stream()
                .filter(m -> m.phase() == Moment.Phase.RAISE)
                .mapToDouble(m -> m.draw().current())
                .max()
                .orElseThrow();
        assertThat(current).isCloseTo(2 + 48 * most / 30_000, within(0.05));
        assertThat(cycle.lower()).isPositive().isFinite();
    }

    /** Too heavy for its drive, it stalls, though the slurry does not. */
    @Test
    void itStallsByItself() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(DESIGN.replace("900 kg", "20 t")));
        Timing timing = CycleTimer.time(analysis);
        assertThat(Objects.requireNonNull(timing.of("a stone")).complete()).isFalse();
        assertThat(Objects.requireNonNull(timing.dump()).complete()).isTrue();
    }
}
