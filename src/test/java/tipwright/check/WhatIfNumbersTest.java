// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** What the notes of the troubles say in figures, worked out here. Source: orifice formula and statics, from memory. */
class WhatIfNumbersTest {
    private static final String ELECTRIC = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
    private static final String OIL =
            "{kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm,"
                    + " relief-pressure: 160 bar, hold: 30 kN}";
    private static final String QUIET = swap(Examples.BOX, "80 deg", "30 deg")
            + "friction: {pivot: 0, pins: 0}\ncases: {skip: [draining, heaped, caked, heel]}\n";
    private static final String TWICE = swap(
            QUIET,
            "{z: 0 mm, actuator",
            "{z: -300 mm, actuator",
            "tilt: {to",
            "      - {z: 300 mm, actuator: " + ELECTRIC + "}\ntilt: {to");

    private static Finding of(String yaml, String id) throws CannotComputeException {
        return Checker.check(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals("what-if/" + id))
                .findFirst()
                .orElseThrow();
    }

    private static Analysis analysis(String yaml) throws CannotComputeException {
        return Analyser.analyse(Examples.read(yaml));
    }

    /** The rod's way from the worst tilt to rest, step by step at the mean of the speeds at both ends of each. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void timeToSinkIsTheRodsWayOverItsSpeed(int cylinders) throws CannotComputeException {
        String oil = swap(QUIET, ELECTRIC, OIL) + "what-if: {leak-bore: 0.2 mm}\n";
        String yaml =
                cylinders == 1 ? oil : swap(oil, "tilt: {to", "      - {z: 300 mm, actuator: " + OIL + "}\ntilt: {to");
        Finding f = of(yaml, "burst-hose");
        Matcher told = Pattern.compile("sinks from ([0-9.]+) deg to rest in ([0-9.]+) s through a bore of 0.2 mm")
                .matcher(f.note().metric());
        assertThat(told.find()).as(f.note().metric()).isTrue();
        assertThat(Double.parseDouble(told.group(1))).isCloseTo(Math.toDegrees(f.tilt()), within(0.051));
        CaseResult load = analysis(yaml).cases().stream()
                .filter(c -> c.name().equals(f.loadCase()))
                .findFirst()
                .orElseThrow();
        double time = 0;
        List<Row> rows = load.rows();
        for (int i = 1; i < rows.size() && rows.get(i).tilt() <= f.tilt(); i++) {
            double speed = (rodSpeed(rows.get(i - 1), cylinders) + rodSpeed(rows.get(i), cylinders)) / 2;
            time += (rows.get(i).pose().length() - rows.get(i - 1).pose().length()) / speed;
        }
        assertThat(time).isGreaterThan(10);
        assertThat(Double.parseDouble(told.group(2))).isCloseTo(time, within(0.051));
    }

    private static double rodSpeed(Row row, int cylinders) {
        double area = Math.PI * 0.06 * 0.06 / 4;
        double pressure = row.rest().force() / cylinders / area;
        return 0.62 * Math.PI * 0.0002 * 0.0002 / 4 * Math.sqrt(2 * pressure / 870) / area;
    }

    @ParameterizedTest
    @CsvSource({"15, false", "30, true"})
    void holdingRatingAgainstTheLargestForceAtRest(double kilonewtons, boolean holds) throws CannotComputeException {
        double most = analysis(QUIET).cases().stream()
                .flatMap(c -> c.rows().stream())
                .mapToDouble(r -> Math.abs(r.rest().force()))
                .max()
                .orElseThrow();
        String rated = swap(QUIET, "pull: 12 kN}", "pull: 12 kN, hold: " + most * kilonewtons / 20_000 + " kN}");
        Finding f = of(rated, "lost-power");
        assertThat(f.demand()).isCloseTo(most, within(1e-9 * most));
        assertThat(f.utilisation()).isCloseTo(20 / kilonewtons, within(1e-6));
        assertThat(f.note().metric())
                .isEqualTo(holds ? "it stays where it is" : "the actuator cannot hold the tank; the tank comes down");
        // a factor on the force may turn that
        assertThat(of(rated + "factors: {service: 1.6}\n", "lost-power").note().metric())
                .contains("cannot hold");
    }

    @Test
    void cradleTwistsByHalfTheTorque() throws CannotComputeException {
        double torque = 0;
        for (CaseResult c : analysis(TWICE).cases()) {
            for (Row r : c.rows()) {
                torque = Math.max(torque, Math.abs(r.rest().force() * r.pose().arm()));
            }
        }
        assertThat(of(TWICE, "one-carries-all").note().metric())
                .contains(String.format(Locale.ROOT, "twists the cradle with up to %.0f N m", torque / 2));
        assertThat(of(TWICE + "what-if: {torsion: 900 N m/deg}\n", "one-carries-all")
                        .note()
                        .metric())
                .contains(String.format(Locale.ROOT, "twists the cradle by up to %.2f deg", torque / 2 / 900));
    }

    /** The weakest of both bears half of what both are rated for together; the pull is rated apart. */
    @Test
    void oneThatCarriesAllStallsButMayHold() throws CannotComputeException {
        double push = of(TWICE, "one-carries-all").demand() / 1000;
        for (double share : new double[] {0.8, 1.25}) {
            String weak = swap(
                    TWICE,
                    "push: 12 kN, pull: 12 kN",
                    String.format(
                            Locale.ROOT,
                            "push: %.6f kN, pull: 12 kN, hold: %.6f kN",
                            0.6 * push,
                            0.6 * push * share / 0.6));
            Finding f = of(weak, "one-carries-all");
            assertThat(f.demand()).isCloseTo(1000 * push, within(1e-2));
            assertThat(f.verdict()).isEqualTo(share > 1 ? Verdict.CLOSE : Verdict.FAIL);
            assertThat(f.note().metric().startsWith("that actuator stalls (it moves "))
                    .isEqualTo(share > 1);
        }
    }

    @Test
    void oneAheadTellsItsTwistAndShift() throws CannotComputeException {
        Finding f = of(TWICE + "what-if: {torsion: 100 N m/deg, runs-ahead: 2 mm}\n", "one-runs-ahead");
        double arm = analysis(TWICE).cases().get(0).rows().stream()
                .filter(r -> r.tilt() == f.tilt())
                .findFirst()
                .orElseThrow()
                .pose()
                .arm();
        double stiffness = 100 * 180 / Math.PI;
        assertThat(f.note().metric())
                .contains(String.format(
                        Locale.ROOT,
                        "2.0 mm ahead twists the cradle by %.2f deg and shifts %.0f N from one to the other",
                        Math.toDegrees(0.002 / arm),
                        stiffness * 0.002 / (arm * arm)));
    }

    @Test
    void allTheLoadOnOneSideMovesBetweenTheBearings() throws CannotComputeException {
        String aside = swap(TWICE, "{z: 300 mm, actuator", "{z: 100 mm, actuator");
        for (int bearing : new int[] {0, 1}) {
            double worst = 0;
            for (CaseResult c : analysis(aside).cases()) {
                for (Row r : c.rows()) {
                    for (double z : new double[] {-0.3, 0.1}) {
                        // bearings 1 m apart, drive at z = -100 mm when shared
                        double moved = (bearing == 1 ? 1 : -1) * (z + 0.1);
                        worst = Math.max(
                                worst,
                                r.rest()
                                        .bearings()
                                        .get(bearing)
                                        .xy()
                                        .plus(r.rest().drive().times(moved))
                                        .norm());
                    }
                }
            }
            assertThat(of(aside, "bearing-" + (bearing + 1) + "-when-one-carries-all")
                            .demand())
                    .isCloseTo(worst, within(1e-6 * worst));
        }
    }

    @Test
    void recoilSaysWhichWayAndAgainstWhichRating() throws CannotComputeException {
        Finding f = of(QUIET, "load-let-go-at-once");
        assertThat(f.note().metric()).isEqualTo("the tank springs up and pulls at the rod");
        Finding held = of(swap(QUIET, "pull: 12 kN}", "pull: 12 kN, hold: 15 kN}"), "load-let-go-at-once");
        assertThat(held.capacity()).isEqualTo(15_000);
        assertThat(held.demand()).isCloseTo(f.demand(), within(1e-9));
        Finding single = of(swap(QUIET, ELECTRIC, swap(OIL, "hold:", "acting: single, hold:")), "load-let-go-at-once");
        assertThat(single.demand()).isCloseTo(f.demand(), within(1e-6));
        assertThat(single.capacity()).isZero();
    }
}
