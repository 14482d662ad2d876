// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.Dumps;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.supply.Pump;
import tipwright.quantity.Text;
import tipwright.time.DriveState;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Pressure, flow and hand's work of made-up dumps, and which tanks come back by their own weight. Bore 60 mm, rod 35 mm. */
class HydraulicsTest {
    static final double BORE = Math.PI / 4 * 0.06 * 0.06;
    static final double RING = Math.PI / 4 * (0.06 * 0.06 - 0.035 * 0.035);
    private static final String ELECTRIC = "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN";
    private static final String CYLINDER =
            "kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar";
    static final String PLAIN = swap(Examples.BOX, "80 deg", "10 deg");
    static final String BOX = swap(PLAIN, ELECTRIC, CYLINDER);
    /** The rod pulls the tank over. */
    static final String PULLING = swap(
            BOX,
            "frame-pin: [-600 mm, -500 mm]",
            "frame-pin: [1800 mm, 600 mm]",
            "tank-pin: [-450 mm, 400 mm]",
            "tank-pin: [400 mm, 1600 mm]",
            "stroke: 900 mm",
            "stroke: 1500 mm");

    static final String PUMP = "supply: {kind: pump, flow: 8 L/min%s}\n";

    private static Moment at(Moment.Phase phase, double tilt, double force, double bar, double flow) {
        return Dumps.driven(
                phase, tilt, force, new DriveState(0.01, 0, 0, bar * 1e5, flow, flow * 0.75, bar * 1e5 * flow / 0.8));
    }

    /** 120 bar on the way up; on the way back the load drives the rod with 9 kN at most, and 200 bar stand with no flow. */
    private static final Timing DUMPS = Dumps.of(
            Dumps.cycle(
                    "draining",
                    0,
                    at(Moment.Phase.RAISE, 0.0625, 30_000, 120, 1.25e-4),
                    at(Moment.Phase.HOLD, 0.125, 40_000, 200, 0),
                    at(Moment.Phase.LOWER, 0.125, 9_000, 20, 1e-4)),
            Dumps.cycle(
                    "held",
                    0,
                    at(Moment.Phase.RAISE, 0.0625, 20_000, 80, 2.5e-4),
                    at(Moment.Phase.LOWER, 0.09375, 8_000, 20, 1e-4)));

    private static List<Finding> run(TimedCheck check, String yaml, Timing timing) throws CannotComputeException {
        return check.run(Analyser.analyse(Examples.read(yaml)), timing);
    }

    private static Finding of(List<Finding> all, String id) {
        return all.stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.toString()));
    }

    private static void isMissing(Finding finding, String what) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isTrue();
        assertThat(finding.note().metric()).isEqualTo(what);
    }

    private static List<Finding> hydraulic(String more) throws CannotComputeException {
        return run(new HydraulicCheck(), BOX + PUMP.formatted(more), DUMPS);
    }

    @Test
    void pressureMotorAndValve() throws CannotComputeException {
        List<Finding> all = hydraulic(
                ", motor-power: 3 kW, valve-flow: 30 L/min, lowering: counterbalance," + " counterbalance: 60 bar");
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly(
                        "hydraulic/pressure", "hydraulic/motor", "hydraulic/valve", "hydraulic/counterbalance");
        Finding pressure = all.get(0);
        assertThat(pressure.demand()).isEqualTo(120e5);
        assertThat(pressure.capacity()).isCloseTo(160e5, within(1e-6));
        assertThat(pressure.worst()).isEqualTo(new Extreme(120e5, 0.0625, "draining", MotionDirection.RAISING));
        assertThat(pressure.note().metric()).isEqualTo("relief valve at 160 bar");
        assertThat(pressure.title()).isEqualTo("Hydraulics: pressure");
        Finding motor = all.get(1);
        assertThat(motor.demand()).isCloseTo(80e5 * 2.5e-4 / 0.8, within(1e-9));
        assertThat(motor.capacity()).isEqualTo(3000);
        assertThat(motor.loadCase()).isEqualTo("held");
        Finding valve = all.get(2);
        assertThat(valve.demand()).isEqualTo(2.5e-4);
        assertThat(valve.capacity()).isCloseTo(5e-4, within(1e-12));
        // 9 kN on the whole bore, 1.3 times
        Finding back = all.get(3);
        assertThat(back.demand()).isCloseTo(9000 / BORE, within(1e-6));
        assertThat(back.capacity()).isCloseTo(60e5, within(1e-6));
        assertThat(back.utilisation()).isCloseTo(1.3 * 9000 / BORE / 60e5, within(1e-9));
        assertThat(back.worst()).isEqualTo(new Extreme(9000, 0.125, "draining", MotionDirection.LOWERING));
    }

    /** More may come back than goes out, from the side without a rod. */
    @Test
    void theValveTakesWhatComesBack() throws CannotComputeException {
        Moment back = Dumps.driven(Moment.Phase.LOWER, 0.125, -10, new DriveState(0.01, 0, 0, 1e5, 1e-4, 4e-4, 10));
        Finding valve = of(
                run(
                        new HydraulicCheck(),
                        BOX + PUMP.formatted(", valve-flow: 30 L/min"),
                        Dumps.draining(at(Moment.Phase.RAISE, 0, 30_000, 120, 1.25e-4), back)),
                "hydraulic/valve");
        assertThat(valve.demand()).isEqualTo(4e-4);
        assertThat(valve.note()).isEqualTo(Text.words("largest flow, out or back"));
    }

    @Test
    void whatIsMissingOfAPumpIsNamed() throws CannotComputeException {
        List<Finding> all = hydraulic("");
        isMissing(of(all, "hydraulic/motor"), "supply.motor-power missing");
        isMissing(of(all, "hydraulic/valve"), "supply.valve-flow missing");
        List<Finding> bare = run(new HydraulicCheck(), BOX, DUMPS);
        assertThat(bare).hasSize(2);
        isMissing(of(bare, "hydraulic/supply"), "supply missing (pump, motor, valve)");
        List<Finding> untimed = run(new HydraulicCheck(), BOX, Dumps.UNKNOWN);
        assertThat(untimed).hasSize(1);
        isMissing(untimed.get(0), "actuator.speed missing");
        assertThat(run(new HydraulicCheck(), PLAIN, DUMPS)).isEmpty();
    }

    /** The lower of the cylinder's relief pressure, 160 bar, and the pump's own setting. */
    @ParameterizedTest
    @CsvSource({"', relief: 150 bar', 150", "', relief: 170 bar', 160", "'', 160"})
    void theLowerReliefCounts(String own, double bar) throws CannotComputeException {
        assertThat(of(hydraulic(own), "hydraulic/pressure").capacity()).isCloseTo(bar * 1e5, within(1e-6));
        List<Finding> byHand =
                run(new HydraulicCheck(), BOX + "supply: {kind: hand-pump, per-stroke: 0.02 L" + own + "}\n", DUMPS);
        assertThat(byHand.get(0).id()).isEqualTo("hydraulic/pressure");
        assertThat(byHand.get(0).capacity()).isCloseTo(bar * 1e5, within(1e-6));
    }

    /** Without a counterbalance valve, or with its setting but another way down, what drives the rod back is only told. */
    @ParameterizedTest
    @CsvSource({"''", "', counterbalance: 60 bar'", "', lowering: power-down, counterbalance: 60 bar'"})
    void aLoadThatHelpsNeedsAValve(String more) throws CannotComputeException {
        Finding lowering = of(hydraulic(more), "hydraulic/lowering");
        assertThat(lowering.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(lowering.demand()).isCloseTo(9000 / BORE, within(1e-6));
        assertThat(lowering.capacity()).isZero();
        assertThat(lowering.factor()).isEqualTo(1);
        assertThat(lowering.utilisation()).isEqualTo(1);
        assertThat(lowering.note())
                .isEqualTo(Text.words("the load drives the rod back and can run ahead of the pump: fit a counterbalance"
                        + " valve or a throttle"));
    }

    @Test
    void whatComesBackByGravityOrDoesNotHelpNeedsNone() throws CannotComputeException {
        assertThat(hydraulic(", lowering: gravity, orifice: {diameter: 3 mm}"))
                .noneMatch(f -> f.id().equals("hydraulic/lowering"));
        Timing hard =
                Dumps.draining(at(Moment.Phase.RAISE, 0, 30_000, 120, 1e-4), at(Moment.Phase.LOWER, 0, -1, 9, 1e-4));
        assertThat(run(new HydraulicCheck(), BOX + PUMP.formatted(""), hard))
                .extracting(Finding::id)
                .containsExactly("hydraulic/pressure", "hydraulic/motor", "hydraulic/valve");
        Timing still =
                Dumps.draining(at(Moment.Phase.RAISE, 0, 30_000, 120, 1e-4), at(Moment.Phase.LOWER, 0, 0, 9, 1e-4));
        assertThat(run(new HydraulicCheck(), BOX + PUMP.formatted(""), still)).hasSize(3);
    }

    /** Where the rod pulls the tank over, the load that helps pulls at it, and the oil stands in the ring around the rod. */
    @Test
    void theRodThatPullsHoldsByItsRing() throws CannotComputeException {
        Timing timing = Dumps.draining(
                at(Moment.Phase.RAISE, 0, -30_000, 120, 1e-4),
                at(Moment.Phase.LOWER, 0.0625, -9_000, 9, 1e-4),
                at(Moment.Phase.LOWER, 0, 12_000, 9, 1e-4));
        Finding lowering = of(run(new HydraulicCheck(), PULLING + PUMP.formatted(""), timing), "hydraulic/lowering");
        assertThat(lowering.demand()).isCloseTo(9000 / RING, within(1e-6));
        assertThat(lowering.tilt()).isEqualTo(0.0625);
    }

    private static final String WINCH = "supply: {kind: hand-winch, travel-per-turn: 3 mm, turns-per-minute: 40%s}\n";

    private static List<Finding> winch(String yaml, String more, Moment... moments) throws CannotComputeException {
        return run(new HandEffortCheck(), yaml + WINCH.formatted(more), Dumps.draining(moments));
    }

    /** F travel / (2 pi crank efficiency) and F v / efficiency; holding costs the hand nothing, lowering what has to be pulled down. */
    @Test
    void theHandWorksAgainstTheLoadEitherWay() throws CannotComputeException {
        Moment up = at(Moment.Phase.RAISE, 0.0625, 2000, 0, 0);
        Moment hold = at(Moment.Phase.HOLD, 0.125, 9000, 0, 0);
        Moment down = at(Moment.Phase.LOWER, 0.09375, -3000, 0, 0);
        Moment helps = at(Moment.Phase.LOWER, 0.03125, 8000, 0, 0);
        List<Finding> all = winch(PLAIN, ", crank: 200 mm, efficiency: 40 %", up, hold, down, helps);
        assertThat(all).extracting(Finding::id).containsExactly("hand/force", "hand/power");
        assertThat(all.get(0).demand()).isCloseTo(3000 * 0.003 / (2 * Math.PI * 0.2 * 0.4), within(1e-9));
        assertThat(all.get(0).capacity()).isEqualTo(200);
        assertThat(all.get(0).tilt()).isEqualTo(0.09375);
        assertThat(all.get(1).demand()).isCloseTo(3000 * 0.003 * 40 / 60 / 0.4, within(1e-9));
        assertThat(all.get(1).capacity()).isEqualTo(75);
        List<Finding> raised = winch(PLAIN, ", crank: 200 mm, efficiency: 40 %", up, hold, helps);
        assertThat(raised.get(0).tilt()).isEqualTo(0.0625);
        String pulling = swap(PULLING, CYLINDER.replace("900 mm", "1500 mm"), ELECTRIC.replace("900 mm", "1500 mm"));
        Moment pull = at(Moment.Phase.RAISE, 0.0625, -2000, 0, 0);
        Moment push = at(Moment.Phase.LOWER, 0.09375, 1500, 0, 0);
        List<Finding> pulled = winch(pulling, ", crank: 200 mm, efficiency: 40 %", push, pull, down);
        assertThat(pulled.get(1).demand()).isCloseTo(2000 * 0.003 * 40 / 60 / 0.4, within(1e-9));
        assertThat(pulled.get(1).tilt()).isEqualTo(0.0625);
    }

    @Test
    void whatIsMissingOfTheHandsWorkIsNamed() throws CannotComputeException {
        Moment up = at(Moment.Phase.RAISE, 0.0625, 2000, 100, 1e-4);
        List<Finding> bare = winch(PLAIN, "", up);
        assertThat(bare).hasSize(1);
        isMissing(bare.get(0), "supply.efficiency missing");
        List<Finding> cranky = winch(PLAIN, ", efficiency: 40 %", up);
        isMissing(of(cranky, "hand/force"), "supply.crank missing");
        assertThat(of(cranky, "hand/power").demand()).isCloseTo(10, within(1e-9));
        List<Finding> untimed = run(new HandEffortCheck(), PLAIN + WINCH.formatted(""), Dumps.UNKNOWN);
        assertThat(untimed).hasSize(1);
        isMissing(untimed.get(0), "actuator.speed missing");
        String pump = BOX + "supply: {kind: hand-pump, per-stroke: 0.02 L, strokes-per-minute: 30}\n";
        List<Finding> pumped = run(new HandEffortCheck(), pump, Dumps.draining(up));
        isMissing(of(pumped, "hand/force"), "supply.hand-travel missing");
        assertThat(of(pumped, "hand/power").demand()).isCloseTo(100e5 * 20e-6 * 0.5 / 0.8, within(1e-9));
        assertThat(run(new HandEffortCheck(), PLAIN, Dumps.draining(up))).isEmpty();
        assertThat(run(new HandEffortCheck(), BOX + PUMP.formatted(""), Dumps.draining(up)))
                .isEmpty();
    }

    /** p V / (way x efficiency): only what flows is pumped. */
    @Test
    void aPumpHandleIsWorkedWhileOilFlows() throws CannotComputeException {
        String pump =
                BOX + "supply: {kind: hand-pump, per-stroke: 0.02 L, strokes-per-minute: 30, hand-travel: 800 mm}\n";
        List<Finding> all = run(new HandEffortCheck(), pump, DUMPS);
        assertThat(all.get(0).demand()).isCloseTo(120e5 * 20e-6 / 0.8 / 0.8, within(1e-9));
        assertThat(all.get(0).tilt()).isEqualTo(0.0625);
        assertThat(new HandEffortCheck()
                        .fix(all.get(0), Examples.read(PLAIN).limits())
                        .metric())
                .isEqualTo("a longer crank or handle, or less travel for each turn or stroke");
        assertThat(new HandEffortCheck()
                        .fix(all.get(1), Examples.read(PLAIN).limits())
                        .metric())
                .isEqualTo("fewer turns or strokes a minute: it then takes longer");
    }

    private static final String SINGLE =
            swap(BOX, "relief-pressure: 160 bar", "relief-pressure: 160 bar, acting: single");

    private static List<Finding> returns(String yaml) throws CannotComputeException {
        return new GravityReturnCheck().run(Analyser.analyse(Examples.read(yaml)));
    }

    /** As said; without a word where the oil cannot pull, and where a hand lets it out. */
    @Test
    void whatComesBackByItsOwnWeight() throws CannotComputeException {
        String orifice = ", orifice: {diameter: 3 mm}";
        String hand = "supply: {kind: hand-pump, per-stroke: 0.02 L%s}\n";
        assertThat(returns(BOX + PUMP.formatted(orifice))).isEmpty();
        assertThat(returns(BOX + PUMP.formatted(orifice + ", lowering: gravity")))
                .hasSize(1);
        assertThat(returns(SINGLE + PUMP.formatted(orifice))).hasSize(1);
        assertThat(returns(BOX + hand.formatted(""))).isEmpty();
        assertThat(returns(BOX + hand.formatted(orifice))).hasSize(1);
        assertThat(returns(BOX)).isEmpty();
        assertThat(returns(SINGLE)).hasSize(1);
        assertThat(returns(PLAIN)).isEmpty();
    }

    /** Oil pushes the stages of a telescopic cylinder out alone, whatever is said of its way back. */
    @Test
    void stagesComeBackByWeightAlone() {
        TelescopicCylinder two = new TelescopicCylinder(
                List.of(new TelescopicCylinder.Stage(0.08, 0.5, null), new TelescopicCylinder.Stage(0.06, 0.5, null)),
                0.7,
                2e7,
                null,
                null,
                null,
                355e6,
                205e9,
                null,
                null,
                0.95,
                null);
        Pump down = new Pump(1e-4, null, null, 0.8, 0.8, Pump.Lowering.POWER_DOWN, null, null, 3, null, null);
        assertThat(GravityReturnCheck.byGravity(down, List.of(two))).isTrue();
        assertThat(GravityReturnCheck.byGravity(down, List.of())).isFalse();
    }

    @Test
    void whatIsMissingOfTheReturnIsNamed() throws CannotComputeException {
        String gravity = ", orifice: {diameter: 3 mm}%s";
        Analysis analysis = Analyser.analyse(Examples.read(SINGLE + PUMP.formatted(gravity.formatted(""))));
        Row least = analysis.cases().stream()
                .filter(c -> c.name().equals("empty"))
                .flatMap(c -> c.rows().stream())
                .min((a, b) -> Double.compare(a.lower().force(), b.lower().force()))
                .orElseThrow();
        double bar = least.lower().force() / BORE / 1e5;
        String makes = String.format(
                Locale.ROOT, "the empty tank makes %.2f bar at %.0f deg", bar, Math.toDegrees(least.tilt()));
        isMissing(new GravityReturnCheck().run(analysis).get(0), "supply.return-line missing; " + makes);
        Finding seals = returns(SINGLE + PUMP.formatted(gravity.formatted(", return-line: {bore: 8 mm, length: 3 m}")))
                .get(0);
        assertThat(seals.note().metric()).isEqualTo("supply.return-line.seals missing; " + makes);
        Finding found = returns(SINGLE
                        + PUMP.formatted(gravity.formatted(", return-line: {bore: 8 mm, length: 3 m, seals: 1 bar}")))
                .get(0);
        assertThat(found.demand()).isCloseTo(1e5, within(1e-6));
        assertThat(found.capacity()).isCloseTo(bar * 1e5, within(1e-6 * bar * 1e5));
        assertThat(found.factor()).isEqualTo(1.5);
        assertThat(found.loadCase()).isEqualTo("empty");
        assertThat(found.worst().direction()).isEqualTo(MotionDirection.LOWERING);
        Check check = new GravityReturnCheck();
        assertThat(check.says(found).metric()).startsWith("Return by its own weight: needs ");
        List<Finding> skipped = returns(SINGLE + PUMP.formatted("") + "cases: {skip: [empty]}\n");
        assertThat(skipped).hasSize(1);
        assertThat(skipped.get(0).missing()).isFalse();
        assertThat(skipped.get(0).note()).isEqualTo(Text.words("cases: 'empty' is skipped"));
    }

    /** A rod that pulls the tank over is pulled out on the way back, and presses on the oil in the ring. */
    @Test
    void theEmptyTankPressesOnTheRingOfARodThatPulls() throws CannotComputeException {
        String yaml = PULLING + PUMP.formatted(", lowering: gravity, orifice: {diameter: 3 mm}");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        double least = analysis.cases().stream()
                .filter(c -> c.name().equals("empty"))
                .flatMap(c -> c.rows().stream())
                .mapToDouble(r -> -r.lower().force() / RING)
                .min()
                .orElseThrow();
        assertThat(least).isPositive();
        assertThat(new GravityReturnCheck().run(analysis).get(0).note().metric())
                .startsWith(String.format(
                        Locale.ROOT, "supply.return-line missing; the empty tank makes %.2f bar at ", least / 1e5));
    }

    /** Past the dead centre the tank does not press on the oil; what has not run out yet holds it up all the more. */
    @Test
    void aTankThatDoesNotPressStaysUp() throws CannotComputeException {
        Finding stays =
                returns(swap(SINGLE, "10 deg", "80 deg") + PUMP.formatted("")).get(0);
        assertThat(stays.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(stays.demand()).isZero();
        assertThat(stays.capacity()).isZero();
        assertThat(stays.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new GravityReturnCheck().says(stays).metric())
                .isEqualTo("the tank does not press on the oil there: it stays up");
    }
}
