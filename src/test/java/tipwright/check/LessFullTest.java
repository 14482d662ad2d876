// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.StallCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;

/**
 * What becomes of a tank that is less full, of wind and of ground any way round in the dump in time and if something goes wrong. Every
 * figure is worked out a second time from statics: the tank has a sump at its far end, which asks most of the actuators when it is
 * full and the floor in front of it is dry.
 */
class LessFullTest {
    private static final double G = 9.80665;
    private static final double PX = 0.1;
    private static final double PY = 0.5;
    private static final double SUMP = 0.18 / 0.87;
    /** Of the piston, m2, with the 95 % that its seals leave of the force. */
    private static final double AREA = 0.95 * Math.PI * 0.05 * 0.05 / 4;
    /** Power that one newton of push takes of the hands, W: oil a second over what the pump makes of the work. */
    private static final double PACE = 0.03e-3 * 40 / 60 / AREA / 0.8;

    private static final String TWO =
            """
            tipwright: 1
            name: Sump
            tank:
              interior:
                shape: prism
                outline: [[-1 m, 400 mm], [-400 mm, 400 mm], [-400 mm, 700 mm], [1300 mm, 700 mm], [1300 mm, 1 m], [-1 m, 1 m]]
                width: 1 m
              mass: {empty: 100 kg, centre: [-300 mm, 700 mm, 0 mm]}
              openings:
                - {name: gate, rim: rectangle, width: 1 m, height: 300 mm, centre: [1300 mm, 850 mm, 0 mm], normal: x, opens-at: 8 deg}
            slurry: {fill: 100 %, density: 1000 kg/m3}
            pivot:
              at: [100 mm, 500 mm]
              bearings:
                - {z: -500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN}}
                - {z: 500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN}}
            drive:
              straight:
                frame-pin: [-700 mm, -500 mm]
                tank-pin: [-700 mm, 390 mm]
                actuators:
                  - {z: -200 mm, actuator: {kind: hydraulic, bore: 50 mm, rod: {diameter: 25 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 100 bar}}
                  - {z: 200 mm, actuator: {kind: hydraulic, bore: 50 mm, rod: {diameter: 25 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 100 bar}}
            supply: {kind: hand-pump, per-stroke: 0.03 L, strokes-per-minute: 40, relief: 90 bar, orifice: {diameter: 3 mm}}
            tilt: {to: 0.1 deg}
            friction: {pins: 0, pivot: 0}
            what-if: {track: 1 m}
            """;

    private static final String ONE = swap(
            TWO,
            "      - {z: -200 mm, actuator: {kind: hydraulic, bore: 50 mm, rod: {diameter: 25 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 100 bar}}\n",
            "",
            "z: 200 mm,",
            "z: 0 mm,");

    /**
     * Where the load lands on ground that slopes any way round is told, and is what the same site with that slope alone would tell; how
     * full it may be goes with it.
     */
    @Test
    void landingOnGroundThatSlopesAnyWayRoundIsTold() throws Exception {
        String demo = swap(Files.readString(Path.of("geometry/silt-trailer.yaml")), "step: 1 deg", "step: 5 deg");
        String level = "site: {grade: 2 deg, cross-slope: 1 deg}";
        String id = "landing/running-over";
        Result sloping = Checker.check(Examples.read(swap(demo, level, "site: {any-way: 3 deg}")));
        Finding told = sloping.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
        Finding back = all(swap(demo, level, "site: {grade: -3 deg}")).stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertThat(told.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(told.loadCase()).contains("ground down to the far side");
        assertThat(told.demand()).isEqualTo(back.demand(), within(1e-6));
        assertThat(told.capacity()).isEqualTo(back.capacity(), within(1e-6));
        assertThat(all(swap(demo, level, "site: {grade: 0 deg}")))
                .filteredOn(f -> f.id().equals(id))
                .allMatch(f -> f.verdict() != Verdict.FAIL);
        assertThat(Objects.requireNonNull(sloping.howFull()).fill()).isLessThan(0.1);
    }

    private static List<Finding> all(String yaml) throws Exception {
        return Checker.asFilled(Examples.read(yaml)).findings();
    }

    private static Finding of(List<Finding> all, String id) {
        return all.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    /** Moment of a weight about the pivot against tipping, stowed, on ground that is lower at the far end by a slope, N m. */
    private static double moment(double kg, double x, double y, double slope) {
        return kg * G * (Math.cos(slope) * (PX - x) + Math.sin(slope) * (y - PY));
    }

    /** Of the sump, stowed: the upright actuator stands 0.8 m behind the pivot. */
    private static double force(double share, double slope) {
        double in = 870 * share;
        double sump = Math.min(in, 180);
        double level = 0.7 + 0.3 * Math.max(0, in - 180) / 690;
        double behind = 600 * (level - 0.7);
        double floor = 1700 * (level - 0.7);
        double sum = moment(sump, -0.7, 0.4 + sump / 1200, slope)
                + moment(behind, -0.7, (0.7 + level) / 2, slope)
                + moment(floor, 0.45, (0.7 + level) / 2, slope)
                + moment(100, -0.3, 0.7, slope);
        return sum / 0.8;
    }

    @Test
    void oneThatCarriesAllIsAskedForTheFillThatAsksMost() throws Exception {
        List<Finding> all = all(TWO);
        Finding one = of(all, "what-if/one-carries-all");
        assertThat(force(0.2, 0)).isGreaterThan(1.15 * force(1, 0));
        assertThat(one.demand()).isBetween(force(0.2, 0) * 0.9999, force(SUMP, 0) * 1.0001);
        assertThat(one.loadCase()).endsWith(" % full");
    }

    @Test
    void handPumpIsAskedForTheFillThatAsksMost() throws Exception {
        Finding power = of(all(ONE), "hand/power");
        assertThat(power.demand()).isBetween(force(0.2, 0) * PACE * 0.9999, force(SUMP, 0) * PACE * 1.0001);
    }

    @Test
    void howFullStopsAtTheFillThatAsksMostOfTheHands() throws Exception {
        double limit = force(0.19, 0) * PACE;
        assertThat(limit).isGreaterThan(1.05 * force(1, 0) * PACE);
        String weak = ONE + "limits: {hand-power: " + limit + " W}\n";
        assertThat(of(all(weak), "hand/power").verdict()).isEqualTo(Verdict.FAIL);
        HowFull full = Objects.requireNonNull(Checker.check(Examples.read(
                        swap(weak, "what-if: {track: 1 m}", "what-if: {lock-valve: true, never: [wheel-sinks]}")))
                .howFull());
        assertThat(full.fill()).isLessThan(0.191);
    }

    /** At two fifths full the rams are pulled; with hot gas springs more than they can, and what fails when it is full does not tell. */
    @Test
    void howFullStopsBelowAFillAtWhichATroubleAloneFails() throws Exception {
        String pulled = swap(
                Files.readString(Path.of("geometry/twin-rams.yaml")),
                "rod: {diameter: 30 mm, length: 560 mm}",
                "rod: {diameter: 45.1 mm, length: 560 mm}",
                "relief-pressure: 120 bar",
                "relief-pressure: 20 bar",
                "hold: 20 kN",
                "hold: 40 kN",
                "valve-flow: 30",
                "valve-flow: 90",
                "lock-valve: true,",
                "lock-valve: true, never: [full-of-rainwater, frozen-solid],",
                "tilt: {to: 45 deg}",
                "tilt: {to: 45 deg, step: 5 deg}");
        String hot = "what-if/gas-springs-hot-and-new";
        Result result = Checker.check(Examples.read(pulled));
        assertThat(of(result.findings(), hot).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(of(result.findings(), hot).loadCase()).endsWith("41.8 % full");
        double full = Objects.requireNonNull(result.howFull()).fill();
        assertThat(full).isBetween(0.3, 0.418);
        assertThat(of(all(swap(pulled, "fill: 80 %", "fill: " + full)), hot).verdict())
                .isNotEqualTo(Verdict.FAIL);
        assertThat(of(all(swap(pulled, "fill: 80 %", "fill: 41.8 %")), hot).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void groundAnyWayRoundReachesTheOilAndWhatGoesWrong() throws Exception {
        double slope = Math.toRadians(6);
        String dry = swap(ONE, "slurry: {fill: 100 %", "slurry: {fill: 0 %") + "site: {any-way: 6 deg}\n";
        List<Finding> all = all(dry);
        double most = moment(100, -0.3, 0.7, slope) / 0.8;
        Finding pressure = of(all, "hydraulic/pressure");
        assertThat(pressure.demand()).isCloseTo(most / AREA, within(2e-3 * most / AREA));
        assertThat(pressure.loadCase()).contains("ground down to the far side");
        Finding hose = of(all, "what-if/burst-hose");
        assertThat(hose.loadCase()).contains("ground down to");
    }

    @Test
    void windBlowsOnGroundThatSlopesToo() throws Exception {
        double slope = Math.toRadians(6);
        String dry = swap(ONE, "slurry: {fill: 100 %", "slurry: {fill: 0 %")
                + "site: {any-way: 6 deg, wind-pressure: 400 Pa}\n";
        // what it shows to wind along it, 0.6 m by 1 m, has its middle 0.2 m over the pivot
        double most = (moment(100, -0.3, 0.7, slope) + 400 * 0.6 * 0.2) / 0.8;
        List<Finding> all = all(dry);
        assertThat(of(all, "push").demand()).isCloseTo(most, within(2e-3 * most));
        assertThat(of(all, "hydraulic/pressure").demand()).isCloseTo(most / AREA, within(2e-3 * most / AREA));
    }

    @Test
    void frozenLoadStandsInTheWindToo() throws Exception {
        double block = (force(1, 0) * 0.8 + 400 * 0.6 * 0.2) / 0.8;
        Finding frozen = of(
                all(swap(ONE, "relief: 90 bar", "relief: 25 bar") + "site: {wind-pressure: 400 Pa}\n"),
                "what-if/frozen-solid");
        assertThat(frozen.note().metric()).contains("Actuator: push");
        assertThat(frozen.demand()).isGreaterThanOrEqualTo(block * 0.9999);
    }

    @Test
    void lostSpringIsMissedInTheWindToo() throws Exception {
        String spring = ONE
                + "assists:\n  - {kind: torsion-spring, name: coil, pin: pivot, moment: 100 N m, rate: 1 N m/deg, both-legs-fixed: true}\n";
        String dry = swap(spring, "slurry: {fill: 100 %", "slurry: {fill: 0 %", "relief: 90 bar", "relief: 8 bar")
                + "site: {wind-pressure: 400 Pa}\n";
        Finding lost = of(all(dry), "what-if/coil-breaks");
        double most = (moment(100, -0.3, 0.7, 0) + 400 * 0.6 * 0.2) / 0.8;
        assertThat(lost.note().metric()).contains("Actuator: push");
        assertThat(lost.demand()).isCloseTo(most, within(2e-3 * most));
    }

    /** The link of this machine is pressed with a full tank, and pulled with some fills between: its eyes bear that. */
    @Test
    void partThatBearsSomethingInALessFullTankAloneIsToldToo() throws Exception {
        Design cart = Examples.read(Files.readString(Path.of("geometry/crank-cart.yaml")));
        String id = "link/link-tension";
        assertThat(Checks.run(Analyser.analyse(cart)).stream().filter(f -> f.id().equals(id)))
                .isEmpty();
        Design half = cart.withSlurry(cart.slurry().withFill(0.4));
        Finding there = of(Checks.run(Analyser.analyse(half)), id);
        Finding told = of(Checker.asFilled(cart).findings(), id);
        assertThat(told.utilisation()).isGreaterThanOrEqualTo(there.utilisation() * 0.999);
        assertThat(told.loadCase()).endsWith(" % full");
        assertThat(told.note().show(UnitSystem.METRIC)).isNotEmpty();
    }

    @Test
    void whatIsFoundUnderAConditionAloneIsToldBehindTheRest() throws Exception {
        Findings stall = new Findings(new StallCheck(), Examples.read(ONE));
        Finding runs = stall.compare("", 0.01, 1, 1, Kind.RATIO, Extreme.NOWHERE, "it runs");
        Finding stands = stall.compare("held load", 1, 0.01, 1, Kind.RATIO, Extreme.NOWHERE, "it stands");
        Finding unknown = stall.missing("other", "something missing");
        List<Finding> all = Conditions.worse(List.of(runs), List.of(stands, unknown), "wind to +x");
        assertThat(all).hasSize(2);
        assertThat(all.get(0)).isSameAs(runs);
        assertThat(all.get(1).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(all.get(1).loadCase()).isEqualTo("wind to +x");
    }

    @Test
    void passUnderAConditionDoesNotMakeKnownWhatIsNot() throws Exception {
        Findings stall = new Findings(new StallCheck(), Examples.read(ONE));
        Finding unknown = stall.missing("", "something missing");
        Finding runs = stall.compare("", 0.01, 1, 1, Kind.RATIO, Extreme.NOWHERE, "it runs");
        Finding stands = stall.compare("", 1, 0.01, 1, Kind.RATIO, Extreme.NOWHERE, "it stands");
        assertThat(Conditions.worse(List.of(unknown), List.of(runs), "wind to +x"))
                .containsExactly(unknown);
        assertThat(Conditions.worse(List.of(unknown), List.of(stands), "wind to +x")
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    private static final String WITH_LINE = swap(
            ONE,
            "orifice: {diameter: 3 mm}",
            "orifice: {diameter: 3 mm}, return-line: {bore: 5 mm, length: 6 m, grade: 46, seals: 0.2 bar}",
            "tilt: {to: 0.1 deg}",
            "tilt: {to: 10 deg}");

    /** A cold or a hot day may find it on any of the slopes: what it does there is what it does on that ground on that day. */
    @Test
    void daysCountOnEveryGround() throws Exception {
        List<Finding> all = all(WITH_LINE + "site: {any-way: 6 deg, hottest: 45 degC}\ncold: {lowest: -10 degC}\n");
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        String shock = "what-if/valve-shuts-on-the-way-down";
        for (String ground : List.of("grade: 6 deg", "grade: -6 deg", "cross-slope: 6 deg", "cross-slope: -6 deg")) {
            String site = "site: {" + ground + ", temperature: %s degC, hottest: %s degC}\n";
            least = Math.min(
                    least,
                    of(all(WITH_LINE + site.formatted(-10, -10)), "stall").capacity());
            most = Math.max(
                    most, of(all(WITH_LINE + site.formatted(45, 45)), shock).utilisation());
        }
        assertThat(of(all, "stall").capacity()).isCloseTo(least, within(1e-6 * least));
        assertThat(of(all, "stall").loadCase()).contains("on the coldest day, ground down to ");
        assertThat(of(all, shock).utilisation()).isCloseTo(most, within(1e-6 * most));
    }

    /** Oil that is thick slows the way down, and thin oil makes the shock harder when a valve shuts: both days count. */
    @Test
    void oilOfTheColdestAndOfTheHottestDayCounts() throws Exception {
        List<Finding> all = all(WITH_LINE + "site: {hottest: 45 degC}\ncold: {lowest: -10 degC}\n");
        Finding cold = of(all(WITH_LINE + "site: {temperature: -10 degC, hottest: -10 degC}\n"), "stall");
        Finding warm = of(all(WITH_LINE + "site: {temperature: 20 degC, hottest: 20 degC}\n"), "stall");
        Finding stall = of(all, "stall");
        assertThat(cold.capacity()).isLessThan(0.5 * warm.capacity());
        assertThat(stall.capacity()).isCloseTo(cold.capacity(), within(1e-6));
        assertThat(stall.loadCase()).contains("on the coldest day");
        String shock = "what-if/valve-shuts-on-the-way-down";
        double hot = of(all(WITH_LINE + "site: {temperature: 45 degC, hottest: 45 degC}\n"), shock)
                .utilisation();
        assertThat(of(all, shock).utilisation()).isCloseTo(hot, within(1e-6));
    }
}
