// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.joint.PinCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/** A tank that is pulled up from above: what stops it on the way is the oil on the rod's side, and the pins are pulled. */
class PullingDriveTest {
    private static final double BORE = Math.PI / 4 * 0.06 * 0.06;
    private static final double ROD = Math.PI / 4 * 0.03 * 0.03;
    private static final String DRIVE = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String PIN =
            "    frame-pin-joint: {diameter: 30 mm, lug: 25 mm, cheek: 12 mm, gap: 1 mm, yield: 300 MPa}\n    actuators:";
    private static final String UP = swap(
                    Examples.BOX,
                    "frame-pin: [-600 mm, -500 mm]",
                    "frame-pin: [-600 mm, 2300 mm]",
                    "    actuators:",
                    PIN,
                    "tilt: {to: 80 deg}",
                    "tilt: {to: 30 deg, step: 5 deg}")
            + "friction: {pivot: 0, pins: 0}\n";
    private static final String OIL = swap(
                    UP,
                    DRIVE,
                    "{kind: hydraulic, bore: 60 mm, rod: {diameter: 30 mm}, closed: 1100 mm, stroke: 1000 mm,"
                            + " relief-pressure: 180 bar}}")
            + "supply: {kind: pump, flow: 8 L/min}\n";
    private static final String ELECTRIC = swap(
            UP,
            DRIVE,
            "{kind: electric, closed: 1100 mm, stroke: 1000 mm, push: 20 kN, pull: 20 kN, voltage: 12 V,"
                    + " rod: {diameter: 25 mm}, speed: {no-load: 40 mm/s, rated: 30 mm/s}}}");

    private static Moment moment(Analysis analysis, Moment.Phase phase, double tilt) {
        return Objects.requireNonNull(CycleTimer.time(analysis).of("held")).moments().stream()
                .filter(m -> m.phase() == phase)
                .min((a, b) -> Double.compare(Math.abs(a.tilt() - tilt), Math.abs(b.tilt() - tilt)))
                .orElseThrow();
    }

    private static Row held(Analysis analysis, int at) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals("held"))
                .findFirst()
                .orElseThrow()
                .rows()
                .get(at);
    }

    /** m at the rod of a box 1 m by 1 m: m (r^2 + 2/12) / arm^2. */
    private static double mass(Analysis analysis, Row row) {
        double reach = row.centroid().xy().minus(analysis.design().pivot().at()).norm();
        return row.load().mass()
                * (reach * reach + 2 / 12.0)
                / (row.pose().arm() * row.pose().arm());
    }

    private static double series(double... stiffnesses) {
        double supple = 0;
        for (double k : stiffnesses) {
            supple += 1 / k;
        }
        return 1 / supple;
    }

    /** K A / s on each side, the rod E A / s, whichever way it is stopped; at least 2 mm of oil are left. */
    @Test
    void oilOnTheSideThatIsShutIn() throws CannotComputeException {
        MovingMass moving = new MovingMass(Analyser.analyse(Examples.read(OIL)));
        double out = 0.25;
        double rod = 205e9 * ROD / out;
        double in = series(1.8e9 * BORE / out, rod);
        double outwards = series(1.8e9 * (BORE - ROD) / 0.75, rod);
        assertThat(moving.onOil(1.35, true)).isCloseTo(in, within(1e-9 * in));
        assertThat(moving.onOil(1.35, false)).isCloseTo(outwards, within(1e-9 * outwards));
        // all the way in there is no bare rod, only the oil that is left
        assertThat(moving.onOil(1.1, true)).isCloseTo(1.8e9 * BORE / 0.002, within(1.0));
        assertThat(moving.onOil(1.05, true)).isEqualTo(moving.onOil(1.1, true));
        double end = series(1.8e9 * (BORE - ROD) / 0.002, 205e9 * ROD);
        assertThat(moving.onOil(2.1, false)).isCloseTo(end, within(1e-9 * end));
        assertThat(moving.onRods(1.35)).isCloseTo(rod, within(1e-9 * rod));
        assertThat(moving.onRods(1.1)).isEqualTo(Double.POSITIVE_INFINITY);
        // two cylinders side by side bear together, and what gives behind them is in series with both
        String two = swap(
                OIL,
                "      - {z: 0 mm, actuator",
                "      - {z: 100 mm, actuator: " + cylinder() + "}\n      - {z: -100 mm, actuator");
        MovingMass both = new MovingMass(Analyser.analyse(Examples.read(two + "what-if: {structure: 5000 N/mm}\n")));
        double all = series(2 * in, 5e6);
        assertThat(both.onOil(1.35, true)).isCloseTo(all, within(1e-9 * all));
        assertThat(both.onRods(1.1)).isCloseTo(5e6, within(1e-3));
    }

    private static String cylinder() {
        int from = OIL.indexOf("{kind: hydraulic");
        return OIL.substring(from, OIL.indexOf("bar}}", from) + 4);
    }

    /** On single-acting cylinders nothing is shut in on the rod's side. */
    @Test
    void noOilOnTheOpenSide() throws CannotComputeException {
        String single = swap(OIL, "relief-pressure: 180 bar", "relief-pressure: 180 bar, acting: single");
        MovingMass moving = new MovingMass(Analyser.analyse(
                Examples.read(swap(single, "frame-pin: [-600 mm, 2300 mm]", "frame-pin: [-600 mm, -1000 mm]"))));
        assertThat(moving.onOil(1.35, false)).isZero();
        assertThat(moving.onOil(1.35, true)).isPositive();
    }

    /** F + v sqrt(k m) with the oil in front of the rod's side, while the load pulls the rod out. */
    @Test
    void aValveThatShutsWhileTheLoadPullsTheRodOut() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(OIL));
        Row row = held(analysis, 3);
        assertThat(row.pose().arm()).isNegative();
        Moment m = moment(analysis, Moment.Phase.LOWER, row.tilt());
        assertThat(m.force()).isNegative();
        double out = m.length() - 1.1;
        double k = series(1.8e9 * (BORE - ROD) / (1 - out), 205e9 * ROD / out);
        double peak = -m.force() + m.draw().speed() * Math.sqrt(k * mass(analysis, row));
        WhatIfShut shut = new WhatIfShut(analysis);
        assertThat(shut.peak(row, m)).isCloseTo(peak, within(2e-3 * peak));
        Finding found = One.of(OIL, "what-if/valve-shuts-on-the-way-down");
        assertThat(found.note().metric()).startsWith("stopped at once, the load pulls with ");
        assertThat(found.note().metric()).endsWith("then: Frame pin: bending and shear");
    }

    /** Going up it swings on, and the rod is pressed by what the jolt is over the pull; coming down it is pulled by both together. */
    @Test
    void anElectricDriveThatStops() throws CannotComputeException {
        String yaml = ELECTRIC + "what-if: {structure: 3000 N/mm}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Row row = held(analysis, 3);
        WhatIfStop stop = new WhatIfStop(analysis);
        for (Moment.Phase phase : List.of(Moment.Phase.RAISE, Moment.Phase.LOWER)) {
            Moment m = moment(analysis, phase, row.tilt());
            assertThat(m.force()).isNegative();
            double k = series(205e9 * Math.PI / 4 * 0.025 * 0.025 / (m.length() - 1.1), 3e6);
            double jolt = m.draw().speed() * Math.sqrt(k * mass(analysis, row));
            double force = phase == Moment.Phase.RAISE ? m.force() : -m.force();
            assertThat(stop.peak(row, m)).isCloseTo(Math.max(0, force + jolt), within(2e-3 * (jolt - m.force())));
        }
        // a push buckles the rod sooner than the pull breaks the pin
        Finding found = One.of(yaml, "what-if/drive-stops-on-the-way");
        assertThat(found.note().metric())
                .startsWith("stopped at once, the load pushes with ")
                .endsWith("then: Actuator rod: buckling");
    }

    /** Run in to its end while it pulls: the mass swings on and presses the rod. */
    @Test
    void runAgainstTheEndOnItsWayIn() throws CannotComputeException {
        String yaml = swap(OIL, "closed: 1100 mm", "closed: 1500 mm") + "what-if: {structure: 4000 N/mm}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Moment m = CycleTimer.time(analysis).of("held").moments().stream()
                .filter(x -> x.phase() == Moment.Phase.RAISE)
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(m.length()).isCloseTo(1.5, within(1e-6));
        Finding found = One.of(yaml, "what-if/end-of-the-stroke");
        assertThat(found.note().metric()).startsWith("run against its end, the load p");
        // on 4000 N/mm alone, for no rod is out
        Row row = analysis.cases().get(0).rows().get(new MovingMass(analysis).nearest(m.tilt()));
        double jolt = m.draw().speed() * Math.sqrt(4e6 * mass(analysis, row));
        assertThat(new WhatIfStop(analysis).atEnd(row, m))
                .isCloseTo(Math.max(0, jolt + m.force()), within(2e-3 * jolt));
    }

    private static List<Finding> stops(Analysis analysis) {
        Findings make = new Findings(new WhatIfCheck(List.of()), analysis.design());
        return WhatIfStop.find(make, analysis, CycleTimer.time(analysis), List.of(new PinCheck()));
    }

    /** Of a drive that pushes the pin is pressed most by the load that comes down, of one that pulls it is pulled most by that. */
    @ParameterizedTest
    @CsvSource({"2300, pulls", "-1000, pushes"})
    void thePinBearsTheLoadThatComesDown(int y, String way) throws CannotComputeException {
        String yaml = swap(ELECTRIC, " rod: {diameter: 25 mm},", "", "2300 mm", y + " mm")
                + "what-if: {structure: 3000 N/mm}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        MovingMass moving = new MovingMass(analysis);
        double most = 0;
        for (Cycle cycle : CycleTimer.time(analysis).cycles()) {
            for (Moment m : cycle.moments()) {
                Row row = moving.row(cycle.load(), m);
                if (m.phase() == Moment.Phase.LOWER && row != null && m.draw().speed() > 0) {
                    double jolt = m.draw().speed() * Math.sqrt(3e6 * moving.atRod(row, m));
                    most = Math.max(most, Math.abs(m.force()) + jolt);
                }
            }
        }
        List<Finding> found = stops(analysis);
        assertThat(found)
                .extracting(Finding::id)
                .containsExactly("what-if/drive-stops-on-the-way", "what-if/drive-stops-on-the-way-other-parts");
        assertThat(found.get(0).note().metric())
                .isEqualTo("stopped at once, the load " + way + " with "
                        + Text.amount(most, Kind.FORCE).metric()
                        + "; closest to failing then: Frame pin: bending and shear");
        assertThat(WhatIfShut.find(
                        new Findings(new WhatIfCheck(List.of()), analysis.design()),
                        analysis,
                        CycleTimer.time(analysis),
                        List.of(new PinCheck())))
                .isEmpty();
    }

    /** A cylinder that has stroke left where the tank stops runs against no end, whichever way it goes. */
    @Test
    void strokeIsLeft() throws CannotComputeException {
        String gives = "what-if: {structure: 4000 N/mm}\n";
        for (String yaml : List.of(OIL, swap(OIL, "2300 mm", "-1000 mm"))) {
            Analysis analysis = Analyser.analyse(Examples.read(yaml + gives));
            assertThat(stops(analysis)).isEmpty();
        }
        // 0.9 mm left are none, 1.1 mm are enough
        double shortest = Analyser.analyse(Examples.read(OIL)).lengths().low();
        for (double left : new double[] {0.9, 1.1}) {
            String closed = swap(OIL, "closed: 1100 mm", "closed: " + (1000 * shortest - left) + " mm") + gives;
            assertThat(stops(Analyser.analyse(Examples.read(closed))).isEmpty()).isEqualTo(left > 1);
        }
    }

    /** A tank 2 m long and 0.5 m high: m (r^2 + (2^2 + 0.5^2)/12), with as much in it as there is at that moment. */
    @Test
    void theInertiaOfALongTank() throws CannotComputeException {
        String yaml = swap(
                UP,
                "size: [1 m, 1 m, 1 m]",
                "size: [2 m, 0.5 m, 1 m]",
                "width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]",
                "width: 1 m, height: 2 m, centre: [0 m, 1.25 m, 0 m]");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        MovingMass moving = new MovingMass(analysis);
        Row row = held(analysis, 2);
        Moment m =
                moment(Analyser.analyse(Examples.read(swap(yaml, DRIVE, electric()))), Moment.Phase.RAISE, row.tilt());
        Moment less = new Moment(
                m.phase(),
                m.time(),
                m.tilt(),
                m.length(),
                row.load().volume() - 0.5,
                m.force(),
                m.discharge(),
                m.vacuum(),
                m.level(),
                m.draw(),
                m.pace(),
                m.duty());
        double mass = row.load().mass() - 0.5 * 1400;
        double reach = row.centroid().xy().minus(new Vec2(0.4, 0.4)).norm();
        double inertia = mass * (reach * reach + 4.25 / 12);
        // a way between two poses 10 deg apart is a chord of the arc
        assertThat(moving.inertia(row, less)).isCloseTo(inertia, within(3e-3 * inertia));
        assertThat(moving.row("empty", less).load().mass()).isCloseTo(5 * 0.004 * 7850, within(1e-6));
        assertThat(moving.row("none of these", less)).isNull();
    }

    private static String electric() {
        return ELECTRIC.substring(ELECTRIC.indexOf("{kind: electric"), ELECTRIC.indexOf("}}}") + 3);
    }
}
