// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec3;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/** A moving tank that is stopped, against the mass on its spring in small steps of time, energy kept in each. */
class StopTest {
    private static final double G = 9.80665;
    private static final String DRIVE = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String ELECTRIC = swap(
                    Examples.BOX,
                    DRIVE,
                    "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 20 kN, pull: 20 kN, voltage: 12 V,"
                            + " rod: {diameter: 25 mm}, speed: {no-load: 40 mm/s, rated: 30 mm/s}}}",
                    "tilt: {to: 80 deg}",
                    "tilt: {to: 40 deg}")
            + "friction: {pivot: 0, pins: 0}\n";
    private static final String SADDLED = ELECTRIC
            + "obstacles: [{name: saddle, outline: [[-500 mm, 300 mm], [-400 mm, 300 mm], [-400 mm, 400 mm], [-500 mm, 400 mm]],"
            + " rest: yes}]\n";
    private static final String OIL = swap(
                    Examples.BOX,
                    DRIVE,
                    "{kind: hydraulic, bore: 60 mm, rod: {diameter: 30 mm}, closed: 800 mm, stroke: 500 mm,"
                            + " relief-pressure: 180 bar}}",
                    "tilt: {to: 80 deg}",
                    "tilt: {to: 60 deg}")
            + "friction: {pivot: 0, pins: 0}\n"
            + "supply: {kind: pump, flow: 16 L/min}\n";

    /** A mass at a speed on a spring, with a steady force that drives it on: the farthest it gets, m, checked by its energy. */
    private static double farthest(double mass, double start, double stiffness, double steady) {
        double step = 2 * Math.PI * Math.sqrt(mass / stiffness) / 200_000;
        double speed = start;
        double way = 0;
        for (int i = 0; i < 200_000 && speed > 0; i++) {
            speed += (steady - stiffness * way) / mass * step;
            way += speed * step;
        }
        double in = mass * start * start / 2 + steady * way;
        assertThat(stiffness * way * way / 2).isCloseTo(in, within(1e-3 * in));
        return way;
    }

    private static Moment last(Analysis analysis, String load, Moment.Phase phase) {
        List<Moment> all = Objects.requireNonNull(CycleTimer.time(analysis).of(load)).moments().stream()
                .filter(m -> m.phase() == phase)
                .toList();
        return all.get(all.size() - 1);
    }

    private static Row row(Analysis analysis, String load, int at) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(load))
                .findFirst()
                .orElseThrow()
                .rows()
                .get(at);
    }

    /** J = m (r^2 + (a^2 + b^2)/12) of a box 1 m by 1 m about the pivot. */
    private static double inertia(Analysis analysis, Row row) {
        double reach = row.centroid().xy().minus(analysis.design().pivot().at()).norm();
        return row.load().mass() * (reach * reach + 2 / 12.0);
    }

    private static Finding found(String yaml, String id) throws CannotComputeException {
        return Checker.asFilled(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void driveThatStopsAtOnceHangsTheMassOnItsRod() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(ELECTRIC + "what-if: {structure: 3000 N/mm}\n"));
        Row row = row(analysis, "held", 20);
        Moment m = CycleTimer.time(analysis).of("held").moments().stream()
                .filter(x -> x.phase() == Moment.Phase.LOWER)
                .min((a, b) -> Double.compare(Math.abs(a.tilt() - row.tilt()), Math.abs(b.tilt() - row.tilt())))
                .orElseThrow();
        double rod = 205e9 * Math.PI / 4 * 0.025 * 0.025 / (m.length() - 0.8);
        double stiffness = 1 / (1 / rod + 1 / 3e6);
        double mass = inertia(analysis, row) / (row.pose().arm() * row.pose().arm());
        double more = stiffness * farthest(mass, m.draw().speed(), stiffness, 0);
        assertThat(new WhatIfStop(analysis).peak(row, m))
                .isCloseTo(m.force() + more, within(2e-3 * (m.force() + more)));
        assertThat(more).isGreaterThan(0.3 * m.force());
    }

    /**
     * Stopped while it raises, the mass swings on and back: the rod bears the most when it comes back, the static force and the whole
     * swing. Second computation: the swing in small steps of time, without damping.
     */
    @Test
    void stoppedOnTheWayUpTheMassComesBackOntoItsRod() throws CannotComputeException {
        String yaml = ELECTRIC + "what-if: {structure: 3000 N/mm}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Row row = row(analysis, "held", 20);
        Moment m = CycleTimer.time(analysis).of("held").moments().stream()
                .filter(x -> x.phase() == Moment.Phase.RAISE)
                .min((a, b) -> Double.compare(Math.abs(a.tilt() - row.tilt()), Math.abs(b.tilt() - row.tilt())))
                .orElseThrow();
        double rod = 205e9 * Math.PI / 4 * 0.025 * 0.025 / (m.length() - 0.8);
        double stiffness = 1 / (1 / rod + 1 / 3e6);
        double mass = inertia(analysis, row) / (row.pose().arm() * row.pose().arm());
        double most = swing(mass, m.draw().speed(), stiffness, m.force());
        assertThat(new WhatIfStop(analysis).rebound(row, m)).isCloseTo(most, within(2e-3 * most));
        assertThat(most).isGreaterThan(m.force());
        Finding told = found(yaml, "what-if/drive-stops-on-the-way");
        assertThat(told.verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
    }

    /** The largest push of a spring that bears a load and stops a mass that moves away from it, N. */
    private static double swing(double mass, double speed, double stiffness, double load) {
        double step = 2 * Math.PI * Math.sqrt(mass / stiffness) / 100_000;
        double way = 0;
        double v = speed;
        double most = load;
        for (int i = 0; i < 100_000; i++) {
            v -= stiffness * way / mass * step;
            way += v * step;
            most = Math.max(most, load - stiffness * way);
        }
        return most;
    }

    @Test
    void saddleTakesTheEnergyAndTheWeight() throws CannotComputeException {
        String hard = "what-if: {saddle-stiffness: 2000 N/mm, saddle-rating: 60 kN}\n";
        Analysis analysis = Analyser.analyse(Examples.read(SADDLED + hard));
        Row row = row(analysis, "held", 0);
        Moment m = last(analysis, "held", Moment.Phase.LOWER);
        // pivot (0.4, 0.4), the saddle's middle (-0.45, 0.35) m
        double arm = Math.hypot(0.85, 0.05);
        double speed = m.draw().speed() / row.pose().arm() * arm;
        double weight = row.load().mass() * G * (0.4 - row.centroid().x()) / arm;
        double mass = inertia(analysis, row) / (arm * arm);
        double force = 2e6 * farthest(mass, speed, 2e6, weight);
        assertThat(new WhatIfStop(analysis).onSaddle(row, m, new Vec3(-0.45, 0.35, 0)))
                .isCloseTo(force, within(2e-3 * force));
        // suddenly laid down from no speed at all it would be twice the weight
        assertThat(force).isGreaterThan(2 * weight);
        Finding lands = found(SADDLED + hard, "what-if/lands-on-the-saddle");
        assertThat(lands.demand()).isGreaterThanOrEqualTo(force * 0.998);
        assertThat(lands.note().metric()).startsWith("it lands with");
        Finding unknown = found(SADDLED, "what-if/lands-on-the-saddle");
        assertThat(unknown.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(unknown.note().metric()).contains("what-if.saddle-stiffness missing");
    }

    /** A cylinder that is drawn in to its end as the tank comes to rest stops it there: the rod bears the load and the blow. */
    @Test
    void theOtherEndOfTheStrokeStopsTheTankThatComesDown() throws CannotComputeException {
        String yaml = swap(OIL, "closed: 800 mm", "closed: 912 mm", "tilt: {to: 60 deg}", "tilt: {to: 30 deg}")
                + "limits: {stroke-margin: 0 mm}\n";
        Analysis analysis = Analyser.analyse(Examples.read(yaml + "what-if: {structure: 4000 N/mm}\n"));
        Row row = row(analysis, "held", 0);
        Moment m = last(analysis, "held", Moment.Phase.LOWER);
        assertThat(m.length()).isCloseTo(Math.hypot(0.15, 0.9), within(1e-6));
        double area = Math.PI / 4 * (0.06 * 0.06 - 0.03 * 0.03);
        assertThat(m.draw().speed()).isCloseTo(0.016 / 60 / area, within(1e-6));
        double rod = 205e9 * Math.PI / 4 * 0.03 * 0.03 / (m.length() - 0.912);
        double stiffness = 1 / (1 / rod + 1 / 4e6);
        double mass = inertia(analysis, row) / (row.pose().arm() * row.pose().arm());
        double blow = stiffness * farthest(mass, m.draw().speed(), stiffness, 0);
        double rests =
                row.load().mass() * G * (0.4 - row.centroid().x()) / row.pose().arm();
        Finding found = found(yaml + "what-if: {structure: 4000 N/mm}\n", "what-if/end-of-the-stroke");
        // the bare rod of 30 mm is the only part that is known, as a column; the load presses on it
        assertThat(found.demand()).isCloseTo(rests + blow, within(2e-3 * (rests + blow)));
        assertThat(found.note().metric()).contains("run against its end, the load pushes");
        assertThat(found(yaml, "what-if/end-of-the-stroke").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        String saddle = SADDLED.substring(SADDLED.indexOf("obstacles:"));
        assertThat(Checker.asFilled(Examples.read(yaml + saddle)).findings())
                .noneMatch(f -> f.id().equals("what-if/end-of-the-stroke"));
    }

    @Test
    void endOfTheStrokeWithAndWithoutACushion() throws CannotComputeException {
        Analysis bare = Analyser.analyse(Examples.read(OIL + "what-if: {structure: 4000 N/mm}\n"));
        Moment m = last(bare, "held", Moment.Phase.RAISE);
        assertThat(m.length()).isCloseTo(1.3, within(1e-6));
        Row row = row(bare, "held", 0);
        for (Row r : bare.cases().get(0).rows()) {
            row = Math.abs(r.tilt() - m.tilt()) < Math.abs(row.tilt() - m.tilt()) ? r : row;
        }
        double rod = 205e9 * Math.PI / 4 * 0.03 * 0.03 / 0.5;
        double stiffness = 1 / (1 / rod + 1 / 4e6);
        double mass = inertia(bare, row) / (row.pose().arm() * row.pose().arm());
        double jolt = stiffness * farthest(mass, m.draw().speed(), stiffness, 0);
        WhatIfStop hard = new WhatIfStop(bare);
        assertThat(hard.atEnd(row, m)).isCloseTo(Math.max(0, jolt - m.force()), within(2e-3 * jolt));
        // over 50 mm of cushion the same energy needs m v^2 / 2 s on the average, at most twice that
        Analysis soft = Analyser.analyse(Examples.read(OIL + "what-if: {structure: 4000 N/mm, cushion: 50 mm}\n"));
        double even = mass * m.draw().speed() * m.draw().speed() / 2 / 0.05;
        assertThat(new WhatIfStop(soft).atEnd(row, m))
                .isCloseTo(Math.max(0, 2 * even - m.force()), within(2e-3 * even));
    }

    /** A hose that widens makes the oil softer: A^2 / (V / K + V_hose / K + V_hose / K_hose). */
    @Test
    void hoseBetweenCylinderAndValveSoftensTheOil() throws CannotComputeException {
        String pump = "supply: {kind: pump, flow: 16 L/min, return-line: {bore: 10 mm, length: 3 m}}\n";
        String yaml = OIL.substring(0, OIL.indexOf("supply:")) + pump + "what-if: {hose: 0.2 GPa}\n";
        double length = 1.1;
        double out = 0.3;
        double area = Math.PI / 4 * 0.06 * 0.06;
        double hose = Math.PI / 4 * 0.01 * 0.01 * 3;
        double oil = area * area / ((area * out + hose) / 1.8e9 + hose / 0.2e9);
        double rod = 205e9 * Math.PI / 4 * 0.03 * 0.03 / out;
        MovingMass moving = new MovingMass(Analyser.analyse(Examples.read(yaml)));
        double stiffness = 1 / (1 / oil + 1 / rod);
        assertThat(moving.onOil(length, true)).isCloseTo(stiffness, within(1e-9 * stiffness));
    }
}
