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
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.Checker;
import tipwright.check.Dumps;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.load.Gravity;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;
import tipwright.time.Timing;

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

    private static final String LINE =
            "supply: {kind: pump, flow: 8 L/min, orifice: {diameter: 3 mm}, return-line: {bore: 8 mm, length: 3 m, seals: 0.2 bar}}\n";

    private static Finding backs(String yaml) throws CannotComputeException {
        return Checker.findings(Examples.read(yaml + LINE + STILL)).stream()
                .filter(f -> f.id().equals("gravity-return"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A tank of 1 m by 1 m at 30 degrees shows cos 30 + sin 30 in m2 to a wind along the side view, in its middle; ground that slopes 1
     * degree down to the dump side takes its height times sin 1 from the lever. Both from moments about the pivot, by hand.
     */
    @Test
    void windAndSlopeHinderTheReturn() throws CannotComputeException {
        String yaml = swap(
                Examples.BOX,
                ACTUATOR,
                RAM,
                "tilt: {to: 80 deg}",
                "tilt: {to: 30 deg}",
                "fill: 100 %, density: 1400 kg/m3",
                "fill: 1 %, density: 1000 kg/m3",
                "centre: [0 m, 1.5 m, 0 m], normal: y",
                "centre: [500 mm, 1 m, 0 m], normal: x");
        Row row = read(yaml).cases().stream()
                .filter(c -> c.name().equals("empty"))
                .map(c -> c.rows().get(c.rows().size() - 1))
                .findFirst()
                .orElseThrow();
        double area = Math.PI / 4 * 0.04 * 0.04;
        double turn = Math.toRadians(30);
        double x = 0.4 - row.centroid().x();
        double y = row.centroid().y() - 0.4;
        double weight = row.load().mass() * Gravity.G;
        double arm = row.pose().arm();
        double calm = weight * x / arm / area;
        assertThat(backs(yaml).capacity()).isCloseTo(calm, within(1e-6 * calm));
        double high = 0.4 * Math.sin(turn) + 0.6 * Math.cos(turn);
        double blown = calm - 40 * (Math.cos(turn) + Math.sin(turn)) * high / arm / area;
        Finding windy = backs(yaml + "site: {wind-pressure: 40 Pa}\n");
        assertThat(windy.capacity()).isCloseTo(blown, within(1e-6 * calm));
        assertThat(windy.loadCase()).endsWith("wind to +x");
        double slope = Math.toRadians(1);
        double sloping = weight * (x * Math.cos(slope) - y * Math.sin(slope)) / arm / area;
        assertThat(backs(yaml + "site: {any-way: 1 deg}\n").capacity()).isCloseTo(sloping, within(1e-6 * calm));
        // a gale holds it up
        assertThat(backs(yaml + "site: {wind-pressure: 200 Pa}\n").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** What stays behind a high lip lies beyond the pivot at full tilt and holds the tank up: its weight at its lever. */
    @Test
    void whatStaysInHindersTheReturn() throws CannotComputeException {
        String lip =
                "{name: end, rim: rectangle, width: 900 mm, height: 300 mm, centre: [500 mm, 1.2 m, 0 m], normal: x}";
        String yaml = swap(
                Examples.BOX,
                ACTUATOR,
                RAM,
                "tilt: {to: 80 deg}",
                "tilt: {to: 35 deg}",
                "at: [400 mm, 400 mm]",
                "at: [450 mm, 400 mm]",
                "fill: 100 %",
                "fill: 15 %",
                "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                lip);
        Analysis analysis = read(yaml);
        double least = Double.POSITIVE_INFINITY;
        double empty = Double.POSITIVE_INFINITY;
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                double made = row.load().mass()
                        * Gravity.G
                        * (0.45 - row.centroid().x())
                        / row.pose().arm();
                boolean last =
                        row.tilt() == load.rows().get(load.rows().size() - 1).tilt();
                boolean back =
                        load.name().equals("heel") || (last && load.load().normalAt(row.tilt()));
                least = back ? Math.min(least, made) : least;
                empty = load.name().equals("empty") ? Math.min(empty, made) : empty;
            }
        }
        assertThat(least).isLessThan(0.9 * empty);
        double pressure = least / (Math.PI / 4 * 0.04 * 0.04);
        Finding found = new GravityReturnCheck().run(read(yaml + LINE)).get(0);
        assertThat(found.capacity()).isCloseTo(Math.max(0, pressure), within(1e-6 * Math.abs(pressure)));
    }

    /**
     * A hand pump on oil on both sides of the piston has no valve that throttles what the load drives back: 9 kN on the bore on the way
     * down, 4 kN on the ring once the tank has gone over on the way up. With a release valve it comes down through that. Source: p = F / A.
     */
    @Test
    void whatRunsAheadOfAHandPumpIsTold() throws CannotComputeException {
        Timing timing = Dumps.draining(
                driven(Moment.Phase.RAISE, 0, 20_000),
                driven(Moment.Phase.RAISE, 0.125, -4000),
                driven(Moment.Phase.LOWER, 0.125, -4000),
                driven(Moment.Phase.LOWER, 0.0625, 9000));
        String pump = "supply: {kind: hand-pump, per-stroke: 0.02 L}\n";
        List<Finding> all = new HydraulicCheck().run(read(HydraulicsTest.BOX + pump), timing);
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly("hydraulic/pressure", "hydraulic/lowering", "hydraulic/raising");
        assertThat(all.get(1).demand()).isCloseTo(9000 / HydraulicsTest.BORE, within(1e-6));
        assertThat(all.get(1).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(all.get(2).demand()).isCloseTo(4000 / HydraulicsTest.RING, within(1e-6));
        assertThat(all.get(2).tilt()).isEqualTo(0.125);
        assertThat(all.get(2).verdict()).isEqualTo(Verdict.CLOSE);
        String released = swap(pump, "0.02 L", "0.02 L, orifice: {diameter: 3 mm}");
        assertThat(new HydraulicCheck().run(read(HydraulicsTest.BOX + released), timing))
                .extracting(Finding::id)
                .containsExactly("hydraulic/pressure", "hydraulic/raising");
        String single = swap(HydraulicsTest.BOX, "relief-pressure", "acting: single, relief-pressure");
        assertThat(new HydraulicCheck().run(read(single + pump), timing))
                .extracting(Finding::id)
                .containsExactly("hydraulic/pressure");
    }

    private static Moment driven(Moment.Phase phase, double tilt, double force) {
        return Dumps.driven(phase, tilt, force, Dumps.STILL);
    }

    /** Thick oil does not run in behind the piston of a pump by hand either: as with any pump, and not told where no cold day is given. */
    @Test
    void thickOilOnTheColdestDayHoldsForAPumpByHandToo() throws CannotComputeException {
        String hand = Examples.BOX + "supply: {kind: hand-pump, per-stroke: 0.02 L, strokes-per-minute: 30}\n";
        String driven = Examples.BOX + "supply: {kind: pump, flow: 1 L/min}\n";
        String frost = "cold: {lowest: -25 degC, oil: 100}\n";
        Finding by = cold(hand + frost);
        assertThat(by.id()).isEqualTo("cold/oil");
        assertThat(by.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(by.utilisation()).isCloseTo(cold(driven + frost).utilisation(), within(1e-12));
        assertThat(cold(hand).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    private static Finding cold(String yaml) throws CannotComputeException {
        Analysis analysis = read(yaml);
        return new ColdCheck().run(analysis, CycleTimer.time(analysis)).get(0);
    }
}
