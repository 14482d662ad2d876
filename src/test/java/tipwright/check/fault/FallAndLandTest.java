// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/** A tank that sinks past its dead point, one that nothing pushes, and what a saddle and the end of a stroke must be told. */
class FallAndLandTest {
    private static final double G = 9.80665;
    private static final String DRIVE = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String OIL = "{kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm,"
            + " stroke: 1000 mm, relief-pressure: 160 bar}}";
    private static final String BOX = swap(Examples.BOX, DRIVE, OIL)
            + "friction: {pivot: 0, pins: 0}\ncases: {skip: [draining, heaped, caked, heel]}\n";
    private static final String LEAK = "what-if: {leak-bore: 0.2 mm}\n";
    private static final String SADDLE = "obstacles: [{name: saddle, outline: [[-500 mm, 300 mm], [-400 mm, 300 mm],"
            + " [-400 mm, 400 mm], [-500 mm, 400 mm]], rest: yes}]\n";

    private static Finding burst(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return WhatIfFall.find(new Findings(new WhatIfCheck(List.of()), analysis.design()), analysis).stream()
                .filter(f -> f.id().equals("what-if/burst-hose"))
                .findFirst()
                .orElseThrow();
    }

    private static void untold(String yaml, String part, boolean missing, String why) throws CannotComputeException {
        Finding found = One.of(yaml, "what-if/" + part);
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).as(found.note().metric()).isEqualTo(missing);
        assertThat(found.note().metric()).isEqualTo(why);
    }

    /** Speed of the rod that is pulled out of the oil around it. Source: orifice equation, Cd 0.62, oil of 870 kg/m3. */
    private static double pulled(Row row) {
        double area = Math.PI / 4 * (0.06 * 0.06 - 0.035 * 0.035);
        return 0.62 * Math.PI / 4 * 0.0002 * 0.0002 * Math.sqrt(2 * -row.rest().force() / area / 870) / area;
    }

    /** Tipped so far that its weight pulls the rod out, it goes on to the end of its way. */
    @Test
    void beyondTheDeadPointItSinksToTheFullTilt() throws CannotComputeException {
        String yaml = swap(BOX, "tilt: {to: 80 deg}", "tilt: {from: 50 deg, to: 80 deg, step: 1 deg}") + LEAK;
        Finding found = burst(yaml);
        List<Row> rows = Analyser.analyse(Examples.read(yaml)).cases().stream()
                .filter(c -> c.name().equals(found.loadCase()))
                .findFirst()
                .orElseThrow()
                .rows();
        int at = 0;
        while (rows.get(at).tilt() < found.tilt() - 1e-9) {
            at++;
        }
        Row worst = rows.get(at);
        assertThat(worst.rest().force()).isNegative();
        double weight = worst.load().mass() * G;
        assertThat(found.demand()).isCloseTo(pulled(worst) * -worst.rest().force() / weight, within(1e-9));
        double time = 0;
        for (int i = at; i < rows.size() - 1; i++) {
            double way = rows.get(i + 1).pose().length() - rows.get(i).pose().length();
            time += way / (pulled(rows.get(i)) + pulled(rows.get(i + 1))) * 2;
        }
        assertThat(found.note().metric())
                .startsWith(String.format(
                        Locale.ROOT,
                        "sinks from %.1f deg to rest in %.1f s through",
                        Math.toDegrees(found.tilt()),
                        time));
    }

    /**
     * A spring that bears most of the load eases the rod, and the oil runs out the more slowly, yet the load sinks with the rod: its
     * speed is that of the rod times the level way from pivot to centre over the rod's own arm, whatever else bears it. Second
     * computation: moments about the pivot at 5 deg, the arm of the rod from its pins. Source: statics and orifice equation.
     */
    @Test
    void aSpringThatHelpsDoesNotSlowDownHowTheLoadSinksWithTheRod() throws CannotComputeException {
        String yaml = swap(BOX, "tilt: {to: 80 deg}", "tilt: {to: 20 deg, step: 5 deg}")
                + LEAK
                + "assists: [{kind: torsion-spring, name: helper, pin: pivot, moment: 3 kN m, rate: 1 N m/rad}]\n";
        Row row = Analyser.analyse(Examples.read(yaml)).cases().get(0).rows().get(1);
        double turn = Math.toRadians(5);
        // from the pivot at (0.4, 0.4) m: the rod's pins, the lower of which stays
        double fromX = -1;
        double fromY = -0.9;
        double toX = -0.85 * Math.cos(turn);
        double toY = 0.85 * Math.sin(turn);
        double arm = (fromX * toY - fromY * toX) / Math.hypot(toX - fromX, toY - fromY);
        double weight = row.load().mass() * G;
        double level = 0.4 - row.centroid().x();
        double force = (weight * level - 3000) / Math.abs(arm);
        assertThat(row.rest().force()).isCloseTo(force, within(1e-3 * force));
        double area = Math.PI / 4 * 0.06 * 0.06;
        double rod = 0.62 * Math.PI / 4 * 0.0002 * 0.0002 * Math.sqrt(2 * force / area / 870) / area;
        double sinks = rod * level / Math.abs(arm);
        assertThat(burst(yaml).demand()).isGreaterThan(0.998 * sinks);
        assertThat(sinks).isGreaterThan(1.5 * rod * force / weight);
    }

    /** A single-acting cylinder has no oil on the rod's side: the hose bears nothing where the load only pulls. */
    @Test
    void whereNothingPushesTheRodInNothingSinks() throws CannotComputeException {
        String yaml = swap(
                        BOX,
                        "relief-pressure",
                        "acting: single, relief-pressure",
                        "tilt: {to: 80 deg}",
                        "tilt: {from: 50 deg, to: 80 deg, step: 5 deg}")
                + LEAK;
        Finding found = burst(yaml);
        assertThat(found.demand()).isZero();
        assertThat(found.verdict()).isEqualTo(Verdict.PASS);
        assertThat(found.note().metric()).isEqualTo("nothing pushes the rod in");
    }

    /** Through a wide bore it falls freely, in no time that is worth telling: v = sqrt(2 g h) of its centre. */
    @Test
    void throughAWideBoreItFallsFreely() throws CannotComputeException {
        String yaml = swap(BOX, "tilt: {to: 80 deg}", "tilt: {to: 20 deg, step: 5 deg}");
        Finding found = burst(yaml + "what-if: {leak-bore: 200 mm}\n");
        double most = 0;
        for (var load : Analyser.analyse(Examples.read(yaml)).cases()) {
            double from = load.rows().get(0).centroid().y();
            for (Row row : load.rows()) {
                most = Math.max(
                        most, Math.sqrt(2 * G * Math.max(0, row.centroid().y() - from)));
            }
        }
        assertThat(found.demand()).isCloseTo(most, within(1e-9));
        assertThat(found.note().metric()).startsWith("sinks from 20.0 deg through a bore of 200 mm;");
    }

    @Test
    void whatIsMissingIsNamed() throws CannotComputeException {
        String down = swap(BOX, "tilt: {to: 80 deg}", "tilt: {to: 20 deg, step: 5 deg}")
                + "supply: {kind: pump, flow: 8 L/min}\n";
        untold(down, "lost-power", true, "actuator.hold missing");
        untold(down + SADDLE, "lands-on-the-saddle", true, "what-if.saddle-stiffness missing");
        untold(
                down + SADDLE + "what-if: {saddle-stiffness: 2000 N/mm}\n",
                "lands-on-the-saddle",
                true,
                "what-if.saddle-rating missing");
        String both = "what-if: {saddle-stiffness: 2000 N/mm, saddle-rating: 60 kN}\n";
        assertThat(One.of(down + SADDLE + both, "what-if/lands-on-the-saddle").verdict())
                .isNotEqualTo(Verdict.NOT_CHECKED);
        String single = swap(
                BOX + "supply: {kind: pump, flow: 8 L/min}\n", "relief-pressure", "acting: single, relief-pressure");
        untold(
                single,
                "valve-shuts-on-the-way-down",
                true,
                "supply.orifice missing (the valve through which it comes down)");
        String stays = swap(single, "flow: 8 L/min", "flow: 8 L/min, orifice: {diameter: 6 mm}");
        untold(stays + SADDLE + both, "lands-on-the-saddle", false, "it does not come down in the dump in time");
        untold(stays, "valve-shuts-on-the-way-down", false, "it does not come down in the dump in time");
        String end = swap(BOX, "stroke: 1000 mm", "stroke: 300 mm") + "supply: {kind: pump, flow: 8 L/min}\n";
        untold(end, "end-of-the-stroke", true, "what-if.cushion and what-if.structure missing");
    }

    /**
     * The relief pressure on the rod's side pulls the stowed tank onto its saddle at (-450, 350) mm, and the full box, its centre 400 mm
     * before the pivot, lies on it: by moments about the pivot at (400, 400) mm.
     */
    @Test
    void aDriveThatGoesOnPressesTheTankOnItsSaddle() throws CannotComputeException {
        String both = "what-if: {saddle-stiffness: 2000 N/mm, saddle-rating: 60 kN}\n";
        Analysis analysis = Analyser.analyse(Examples.read(BOX));
        Row row = analysis.cases().get(0).rows().get(0);
        double pull = 160e5 * Math.PI / 4 * (0.06 * 0.06 - 0.035 * 0.035);
        // the lever of the line from (-600, -500) to (-450, 400) mm
        double lever = Math.abs(0.15 * (0.4 + 0.5) - 0.9 * (0.4 + 0.6)) / Math.hypot(0.15, 0.9);
        double moment = pull * lever + row.load().mass() * G * 0.4;
        Finding found = One.of(BOX + SADDLE + both, "what-if/drive-goes-on-when-the-tank-is-down");
        assertThat(found.demand()).isCloseTo(moment / Math.hypot(0.85, 0.05), within(0.01 * found.demand()));
        assertThat(found.verdict()).isEqualTo(Verdict.PASS);
        assertThat(One.of(BOX + SADDLE + swap(both, "60 kN", "30 kN"), "what-if/drive-goes-on-when-the-tank-is-down")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        untold(BOX + SADDLE, "drive-goes-on-when-the-tank-is-down", true, "what-if.saddle-rating missing");
        // nothing pulls with oil on one side alone
        String single = swap(BOX, "relief-pressure", "acting: single, relief-pressure") + SADDLE + both;
        assertThat(One.all(single, "what-if"))
                .extracting(Finding::id)
                .doesNotContain("what-if/drive-goes-on-when-the-tank-is-down");
    }

    /** On the cushion alone, where nothing else gives: at most m v^2 / s, less what the load takes off. */
    @Test
    void aCushionAtTheEndOfTheStroke() throws CannotComputeException {
        String yaml = swap(BOX, "stroke: 1000 mm", "stroke: 300 mm") + "supply: {kind: pump, flow: 20 L/min}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml + "what-if: {cushion: 1 mm}\n"));
        Moment m = Objects.requireNonNull(CycleTimer.time(analysis).of("held")).moments().stream()
                .filter(x -> x.phase() == Moment.Phase.RAISE)
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(m.length()).isCloseTo(1.1, within(1e-6));
        Row row = analysis.cases().get(0).rows().get(new MovingMass(analysis).nearest(m.tilt()));
        double reach = row.centroid().xy().minus(analysis.design().pivot().at()).norm();
        double mass = row.load().mass()
                * (reach * reach + 2 / 12.0)
                / (row.pose().arm() * row.pose().arm());
        double even = mass * m.draw().speed() * m.draw().speed() / 0.001;
        double rod = 205e9 * Math.PI / 4 * 0.035 * 0.035 / 0.3;
        double hard = m.draw().speed() * Math.sqrt(rod * mass);
        double peak = Math.max(0, Math.min(even, hard) - m.force());
        assertThat(new WhatIfStop(analysis).atEnd(row, m)).isCloseTo(peak, within(2e-3 * even));
    }

    /** The tank lands as fast as its point over the saddle moves: the rod's speed times that point's way over the arm. */
    @Test
    void howFastItLands() throws CannotComputeException {
        String yaml = swap(BOX, "tilt: {to: 80 deg}", "tilt: {to: 5 deg, step: 0.5 deg}")
                + "supply: {kind: pump, flow: 8 L/min}\n" + SADDLE
                + "what-if: {saddle-stiffness: 2000 N/mm, saddle-rating: 60 kN}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        WhatIfStop stop = new WhatIfStop(analysis);
        // pivot (0.4, 0.4), the saddle's middle (-0.45, 0.35) m
        double reach = Math.hypot(0.85, 0.05);
        double most = 0;
        double speed = 0;
        for (Cycle cycle : CycleTimer.time(analysis).cycles()) {
            Moment last = cycle.moments().stream()
                    .filter(m -> m.phase() == Moment.Phase.LOWER)
                    .reduce((a, b) -> b)
                    .orElseThrow();
            Row row = new MovingMass(analysis).row(cycle.load(), last);
            if (row == null) {
                continue;
            }
            double force = stop.onSaddle(row, last, new Vec3(-0.45, 0.35, 0));
            if (force > most) {
                most = force;
                speed = last.draw().speed() * reach / row.pose().arm();
            }
        }
        assertThat(speed).isPositive();
        Finding found = One.of(yaml, "what-if/lands-on-the-saddle");
        assertThat(found.demand()).isCloseTo(most, within(1e-6 * most));
        assertThat(found.note().metric())
                .isEqualTo("it lands with " + Text.amount(speed, Kind.SPEED).metric());
        untold(
                swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 5 deg") + SADDLE,
                "lands-on-the-saddle",
                true,
                "actuator.speed missing");
    }

    /** Nothing bursts on an electric drive, and what it stops with needs its speed and what gives behind it. */
    @Test
    void anElectricDriveHasNoHose() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 5 deg");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        assertThat(WhatIfFall.find(new Findings(new WhatIfCheck(List.of()), analysis.design()), analysis))
                .extracting(Finding::id)
                .containsExactly("what-if/lost-power");
        untold(yaml, "drive-stops-on-the-way", true, "actuator.speed missing");
        String fast =
                swap(yaml, "pull: 12 kN}", "pull: 12 kN, voltage: 12 V, speed: {no-load: 40 mm/s, rated: 30 mm/s}}");
        untold(fast, "drive-stops-on-the-way", true, "what-if.structure missing");
    }
}
