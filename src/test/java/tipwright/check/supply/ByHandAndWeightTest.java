// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.load.Gravity;
import tipwright.time.CycleTimer;

/** Cranks, pump handles and tanks that come down by their own weight, by hand. */
class ByHandAndWeightTest {
    private static final String ACTUATOR =
            "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String RAM =
            "{kind: hydraulic, bore: 40 mm, rod: {diameter: 30 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar, acting: single}}";
    private static final String STILL = "friction: {pivot: 0, pins: 0}\n";

    private static Analysis read(String yaml) throws CannotComputeException {
        return Analyser.analyse(Examples.read(yaml + STILL));
    }

    /** The most the rod needs, from the rows: 3 mm a turn of a crank of 200 mm at 30 %, 40 turns a minute. */
    @Test
    void aCrank() throws CannotComputeException {
        Analysis analysis = read(
                Examples.BOX
                        + "supply: {kind: hand-winch, travel-per-turn: 3 mm, turns-per-minute: 40, crank: 200 mm, efficiency: 30 %}\n");
        double most = analysis.cases().stream()
                .flatMap(c -> c.rows().stream())
                .mapToDouble(r -> r.raise().force())
                .max()
                .orElseThrow();
        List<Finding> found = new HandEffortCheck().run(analysis, CycleTimer.time(analysis));
        assertThat(found.get(0).demand()).isCloseTo(most * 0.003 / 0.3 / (2 * Math.PI * 0.2), within(0.01));
        assertThat(found.get(1).demand()).isCloseTo(most * 0.003 * 40 / 60 / 0.3, within(0.01));
        Analysis bare = read(Examples.BOX + "supply: {kind: hand-winch, travel-per-turn: 3 mm}\n");
        assertThat(new HandEffortCheck().run(bare, CycleTimer.time(bare)))
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED)
                .isNotEmpty();
    }

    /** 20 mL a stroke for 700 mm of the hand's way at 80 %: the pressure times 20 mL over that; p Q over 80 %. */
    @Test
    void aPumpHandle() throws CannotComputeException {
        Analysis analysis = read(
                swap(Examples.BOX, ACTUATOR, RAM)
                        + "supply: {kind: hand-pump, per-stroke: 0.02 L, strokes-per-minute: 30, hand-travel: 700 mm, orifice: {diameter: 4 mm}}\n");
        double most = analysis.cases().stream()
                .flatMap(c -> c.rows().stream())
                .mapToDouble(r -> r.raise().force())
                .max()
                .orElseThrow();
        double pressure = most / (Math.PI / 4 * 0.04 * 0.04 * 0.95);
        List<Finding> found = new HandEffortCheck().run(analysis, CycleTimer.time(analysis));
        assertThat(found.get(0).demand()).isCloseTo(pressure * 20e-6 / 0.8 / 0.7, within(0.02));
        assertThat(found.get(1).demand()).isCloseTo(pressure * 20e-6 * 0.5 / 0.8, within(0.02));
    }

    /** The empty tank's weight at its lever over the actuator's arm and the bore. */
    @Test
    void theEmptyTankMustMoveTheSeals() throws CannotComputeException {
        String yaml = swap(Examples.BOX, ACTUATOR, RAM, "tilt: {to: 80 deg}", "tilt: {to: 30 deg}");
        String supply = "supply: {kind: pump, flow: 8 L/min, orifice: {diameter: 3 mm}";
        Analysis analysis = read(yaml + supply + ", return-line: {bore: 8 mm, length: 3 m, seals: 1.5 bar}}\n");
        Row row = analysis.cases().stream()
                .filter(c -> c.name().equals("empty"))
                .map(c -> c.rows().get(c.rows().size() - 1))
                .findFirst()
                .orElseThrow();
        double force = row.load().mass()
                * Gravity.G
                * (0.4 - row.centroid().x())
                / row.pose().arm();
        double pressure = force / (Math.PI / 4 * 0.04 * 0.04);
        Finding found = new GravityReturnCheck().run(analysis).get(0);
        assertThat(found.capacity()).isCloseTo(pressure, within(1e-6 * pressure));
        assertThat(found.utilisation()).isCloseTo(1.5 * 1.5e5 / pressure, within(1e-6));
        Analysis unknown = read(yaml + supply + "}\n");
        assertThat(new GravityReturnCheck().run(unknown).get(0).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        // past the dead centre it stays up
        Analysis over = read(swap(Examples.BOX, ACTUATOR, RAM) + supply + "}\n");
        assertThat(new GravityReturnCheck().run(over).get(0).verdict()).isEqualTo(Verdict.FAIL);
    }
}
