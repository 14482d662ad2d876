// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.load.Gravity;

/** What goes wrong on a small design, against hand calculation. */
class WhatIfTest {
    private static final String ELECTRIC = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
    private static final String OIL =
            "{kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm,"
                    + " relief-pressure: 160 bar, hold: 30 kN}";
    private static final String QUIET = swap(Examples.BOX, "80 deg", "30 deg") + "friction: {pivot: 0, pins: 0}\n";

    private static Finding of(String yaml, String id) throws CannotComputeException {
        return Checker.check(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals("what-if/" + id))
                .findFirst()
                .orElseThrow();
    }

    private static CaseResult loadCase(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void burstHoseSinksAsTheOrificeLetsIt() throws CannotComputeException {
        String yaml = swap(QUIET, ELECTRIC, OIL) + "what-if: {leak-bore: 2 mm}\n";
        Finding f = of(yaml, "burst-hose");
        Row row = null;
        for (Row r : loadCase(Analyser.analyse(Examples.read(yaml)), String.valueOf(f.loadCase()))
                .rows()) {
            row = r.tilt() == f.tilt() ? r : row;
        }
        assertThat(row).isNotNull();
        // By hand: p = F/A, Q = 0.62 a sqrt(2 p / 870), v = Q/A; the load sinks at v F / W.
        double area = Math.PI * 0.06 * 0.06 / 4;
        double force = row.rest().force();
        double flow = 0.62 * Math.PI * 0.002 * 0.002 / 4 * Math.sqrt(2 * force / area / 870);
        assertThat(f.demand()).isCloseTo(flow / area * force / (row.load().mass() * Gravity.G), within(1e-12));
        assertThat(f.capacity()).isEqualTo(0.1);
        assertThat(f.verdict()).isEqualTo(Verdict.PASS);
        assertThat(of(swap(yaml, "2 mm}", "8 mm}"), "burst-hose").verdict()).isEqualTo(Verdict.FAIL);
        Finding locked = of(swap(yaml, "leak-bore: 2 mm", "lock-valve: true"), "burst-hose");
        assertThat(locked.verdict()).isEqualTo(Verdict.PASS);
        assertThat(locked.capacity()).isEqualTo(30_000);
    }

    @Test
    void nothingSinksWhereTheTankAlreadyRests() throws CannotComputeException {
        String yaml = swap(QUIET, ELECTRIC, OIL) + "what-if: {leak-bore: 100 mm}\n";
        Finding f = of(yaml, "burst-hose");
        // However wide the leak, it is no faster than a free fall from there.
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        double most = 0;
        for (CaseResult c : analysis.cases()) {
            double bottom = c.rows().get(0).centroid().y();
            for (Row r : c.rows()) {
                most = Math.max(
                        most, Math.sqrt(2 * Gravity.G * Math.max(0, r.centroid().y() - bottom)));
            }
        }
        assertThat(f.tilt()).isGreaterThan(0);
        assertThat(f.demand()).isLessThanOrEqualTo(most);
    }

    @Test
    void lostPowerAsksForTheHoldingRating() throws CannotComputeException {
        assertThat(of(QUIET, "lost-power").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        Finding weak = of(swap(QUIET, "pull: 12 kN}", "pull: 12 kN, hold: 1 kN}"), "lost-power");
        assertThat(weak.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(weak.note().metric()).contains("the tank comes down");
    }

    @Test
    void loadThatLetsGoRecoilsByTheStep() throws CannotComputeException {
        Finding f = of(QUIET, "load-let-go-at-once");
        Analysis analysis = Analyser.analyse(Examples.read(QUIET));
        double loaded = loadCase(analysis, "held").rows().get(0).rest().force();
        double empty = loadCase(analysis, "empty").rows().get(0).rest().force();
        assertThat(f.demand()).isCloseTo(Math.abs(2 * empty - loaded), within(1e-6));
        assertThat(f.capacity()).isEqualTo(12_000);
        String single = swap(OIL, "hold:", "acting: single, hold:");
        Finding jumps = of(swap(QUIET, ELECTRIC, single), "load-let-go-at-once");
        assertThat(jumps.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(jumps.note().metric()).contains("jumps up");
    }

    @Test
    void sunkenWheelIsTheWorstCheckOnTheSlopeThatFollows() throws CannotComputeException {
        assertThat(of(QUIET, "wheel-sinks").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        Finding f = of(QUIET + "what-if: {wheelbase: 1 m, wheel-drop: 100 mm}\n", "wheel-sinks");
        Design design = Examples.read(QUIET);
        Map<String, Double> before = new HashMap<>();
        for (Finding g : Checks.run(Analyser.analyse(design))) {
            before.put(g.id(), g.utilisation());
        }
        double worst = 0;
        int told = 0;
        for (double side : new double[] {1, -1}) {
            Design leaning = design.withSite(design.site().leaning(side * Math.atan(0.1), 0));
            for (Finding g : Checks.run(Analyser.analyse(leaning))) {
                boolean wrong = g.verdict() == Verdict.FAIL || g.verdict() == Verdict.CLOSE;
                boolean already = wrong && g.utilisation() <= before.get(g.id()) * (1 + 1e-6);
                told += already ? 1 : 0;
                worst = g.verdict() == Verdict.NOT_CHECKED || already ? worst : Math.max(worst, g.utilisation());
            }
        }
        assertThat(told).as("what fails on the level as well is told there").isPositive();
        assertThat(f.utilisation()).isCloseTo(worst, within(0.02 * worst));
        assertThat(f.utilisation())
                .isGreaterThan(
                        Checker.check(Examples.read(QUIET)).findings().get(3).utilisation());
    }

    @Test
    void oneOfTwoCarriesAllAndRunsAhead() throws CannotComputeException {
        String second = "- {z: 300 mm, actuator: " + ELECTRIC + "}\n";
        String twice = swap(
                QUIET, "{z: 0 mm, actuator", "{z: -300 mm, actuator", "tilt: {to", "      " + second + "tilt: {to");
        Finding all = of(twice + "what-if: {torsion: 900 N m/deg}\n", "one-carries-all");
        double push = Checker.check(Examples.read(twice)).findings().stream()
                .filter(f -> f.id().equals("push"))
                .findFirst()
                .orElseThrow()
                .demand();
        assertThat(all.demand()).isCloseTo(push, within(1e-5));
        assertThat(of(twice, "one-runs-ahead").verdict()).isEqualTo(Verdict.NOT_CHECKED);
        Finding ahead = of(twice + "what-if: {torsion: 100 N m/deg, runs-ahead: 2 mm}\n", "one-runs-ahead");
        Analysis analysis = Analyser.analyse(Examples.read(twice));
        double stiffness = 100 * 180 / Math.PI;
        double most = 0;
        for (CaseResult c : analysis.cases()) {
            for (Row r : c.rows()) {
                double forced = stiffness * 0.002 / (r.pose().arm() * r.pose().arm());
                most = Math.max(most, Math.abs(r.rest().force() / 2) + forced);
            }
        }
        assertThat(ahead.demand()).isCloseTo(most, within(1e-5));
    }

    @Test
    void bearingOnTheSideThatCarriesAllTakesWhatASingleActuatorThereWould() throws CannotComputeException {
        String second = "- {z: 300 mm, actuator: " + ELECTRIC + "}\n";
        String twice = swap(
                QUIET, "{z: 0 mm, actuator", "{z: -300 mm, actuator", "tilt: {to", "      " + second + "tilt: {to");
        String alone = swap(QUIET, "{z: 0 mm, actuator", "{z: -300 mm, actuator");
        double single = Checker.check(Examples.read(alone)).findings().stream()
                .filter(f -> f.id().equals("bearing-static/bearing-1"))
                .findFirst()
                .orElseThrow()
                .demand();
        double other = Checker.check(Examples.read(alone)).findings().stream()
                .filter(f -> f.id().equals("bearing-static/bearing-2"))
                .findFirst()
                .orElseThrow()
                .demand();
        Finding f = of(twice, "bearing-1-when-one-carries-all");
        assertThat(f.demand()).isCloseTo(Math.max(single, other), within(1e-6));
    }
}
