// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/** A tank that comes down fast on a cylinder whose valve shuts: against small steps in time of the mass on its spring. */
class ShutValveTest {
    private static final String YAML = swap(
                    Examples.BOX,
                    "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}",
                    "{kind: hydraulic, bore: 50 mm, rod: {diameter: 30 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar, acting: single}}",
                    "tilt: {to: 80 deg}",
                    "tilt: {to: 30 deg}")
            + "friction: {pivot: 0, pins: 0}\n"
            + "supply: {kind: pump, flow: 8 L/min, orifice: {diameter: 6 mm}}\n";

    /** Kinetic and potential energy are kept in each of the small steps' sums; the force at the turning point is the peak. */
    @Test
    void thePeakIsWhereTheMassTurnsRound() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(YAML));
        Row row = analysis.cases().stream()
                .filter(c -> c.name().equals("held"))
                .findFirst()
                .orElseThrow()
                .rows()
                .get(10);
        Pose pose = row.pose();
        Moment m = CycleTimer.time(analysis).of("held").moments().stream()
                .filter(x -> x.phase() == Moment.Phase.LOWER)
                .min((a, b) -> Double.compare(Math.abs(a.tilt() - row.tilt()), Math.abs(b.tilt() - row.tilt())))
                .orElseThrow();
        double out = m.length() - 0.8;
        double oil = 1.8e9 * Math.PI / 4 * 0.05 * 0.05 / out;
        double rod = 205e9 * Math.PI / 4 * 0.03 * 0.03 / out;
        double stiffness = oil * rod / (oil + rod);
        double reach = row.centroid().xy().minus(analysis.design().pivot().at()).norm();
        // a straight drive turns about the pivot; a block of 1 m by 1 m
        double inertia = row.load().mass() * (reach * reach + 2 / 12.0);
        double mass = inertia / (pose.arm() * pose.arm());
        double static0 = m.force();
        double speed = m.draw().speed();
        double way = 0;
        double step = 1e-7;
        double energy = mass * speed * speed / 2;
        double most = 0;
        for (int i = 0; i < 1_000_000 && speed > 0; i++) {
            speed -= stiffness * way / mass * step;
            way += speed * step;
            most = Math.max(most, static0 + stiffness * way);
        }
        assertThat(stiffness * way * way / 2).isCloseTo(energy, within(1e-3 * energy));
        double peak = new WhatIfShut(analysis).peak(row, m);
        assertThat(peak).isCloseTo(most, within(5e-3 * most));
        assertThat(peak).isGreaterThan(1.2 * static0);
    }

    private static Finding found(String yaml) throws CannotComputeException {
        return Checker.findings(Examples.read(yaml)).stream()
                .filter(f -> f.id().equals("what-if/valve-shuts-on-the-way-down"))
                .findFirst()
                .orElseThrow();
    }

    /** A narrower orifice lets it down more slowly; a structure that gives takes up more; what never comes down is not told. */
    @Test
    void slowerOrSofterIsLess() throws CannotComputeException {
        double fast = found(YAML).utilisation();
        assertThat(found(YAML.replace("diameter: 6 mm}}", "diameter: 3 mm}}")).utilisation())
                .isLessThan(fast);
        assertThat(found(YAML + "what-if: {structure: 2000 N/mm}\n").utilisation())
                .isLessThan(fast);
        assertThat(found(YAML.replace("to: 30 deg", "to: 80 deg")).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }
}
