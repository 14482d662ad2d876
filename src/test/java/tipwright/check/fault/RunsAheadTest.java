// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.geometry.Vec2;

/**
 * Two actuators 600 mm apart on a stiff cradle, one of them 5 mm ahead: they work against each other with more than half of what the
 * load asks for, so that pins, bearings and the cradle's tube bear more than when one carries all. By hand: k s / r^2 goes from one to
 * the other; statics.
 */
class RunsAheadTest {
    private static final String PINS =
            "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm, yield: 235 MPa}\n";
    private static final String TWO = swap(
                    Examples.BOX,
                    "80 deg",
                    "30 deg",
                    "    actuators:",
                    PINS + "    actuators:",
                    "{z: 0 mm, actuator",
                    "{z: -300 mm, actuator",
                    "tilt: {to",
                    "      - {z: 300 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}\ntilt: {to")
            + "twist: {tank: {height: 100 mm, width: 100 mm, wall: 5 mm}}\n";
    private static final String AHEAD = "what-if: {torsion: 20000 N m/deg, runs-ahead: 5 mm}\n";
    private static final double STIFFNESS = 20_000 * 180 / Math.PI;

    private static double forced(Row row) {
        return STIFFNESS * 0.005 / (row.pose().arm() * row.pose().arm());
    }

    private static double most(Analysis analysis, ToDoubleBiFunction<Row, Balance> of) {
        double most = 0;
        for (CaseResult c : analysis.cases()) {
            for (Row r : c.rows()) {
                for (Balance b : List.of(r.rest(), r.raise(), r.lower())) {
                    most = Math.max(most, of.applyAsDouble(r, b));
                }
            }
        }
        return most;
    }

    private static List<Finding> found(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Check check = Checks.all().stream()
                .filter(c -> c.id().equals("what-if"))
                .findFirst()
                .orElseThrow();
        return ((WhatIfCheck) check).atRest(analysis);
    }

    private static Finding of(List<Finding> all, String part) {
        return all.stream()
                .filter(f -> f.id().equals("what-if/" + part))
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError(all.stream().map(Finding::id).toList()));
    }

    @Test
    void pinsBearingsAndTubeBearWhatGoesFromOneToTheOther() throws CannotComputeException {
        List<Finding> all = found(TWO + AHEAD);
        Analysis analysis = Analyser.analyse(Examples.read(TWO));
        double force = most(analysis, (r, b) -> Math.abs(b.force()) / 2 + forced(r));
        // double shear: M = F (10/4 + 20/8 + 1/2 mm)
        double sigma = 32 * force * 0.0055 / (Math.PI * Math.pow(0.02, 3));
        double tau = 4 * force / 2 / (3 * Math.PI / 4 * 0.02 * 0.02);
        Finding pin = of(all, "frame-pin-when-one-runs-ahead");
        assertThat(pin.title()).isEqualTo("One actuator gets ahead of the other: Frame pin: bending and shear");
        assertThat(pin.demand()).isCloseTo(Math.sqrt(sigma * sigma + 3 * tau * tau), within(1e-6 * pin.demand()));

        // 600 of 1000 mm between the bearings
        double bearing = most(analysis, (r, b) -> {
            Vec2 along = r.pose().tankPin().minus(r.pose().framePin()).unit();
            Vec2 moved = along.times(0.6 * forced(r));
            Vec2 load = b.bearings().get(0).xy();
            return Math.max(load.plus(moved).norm(), load.minus(moved).norm());
        });
        // friction turns the force a little out of the line from pin to pin
        assertThat(of(all, "bearing-1-when-one-runs-ahead").demand()).isCloseTo(bearing, within(0.03 * bearing));

        // both sides twist the cradle the same way, alone only one does
        double arm = most(analysis, (r, b) -> 2 * 0.3 * forced(r) * lever(r));
        double alone = most(analysis, (r, b) -> 0.3 * Math.abs(b.force()) * lever(r));
        double told = of(all, "twist-of-the-tank-when-one-runs-ahead").demand()
                / of(all, "twist-of-the-tank-when-one-carries-all").demand();
        assertThat(told).isCloseTo(arm / alone, within(0.03 * told));
    }

    private static double lever(Row row) {
        Vec2 along = row.pose().tankPin().minus(row.pose().framePin()).unit();
        return Math.abs(
                along.cross(row.pose().tankPin().minus(new Vec2(0.4, 0.4)).unit()));
    }

    /** On a soft cradle one that carries all is worse for every part; where that cannot happen, sharing is what it is held against. */
    @Test
    void whatIsLessThanOneThatCarriesAllIsToldOnlyWhereThatCannotBe() throws CannotComputeException {
        String soft = "what-if: {torsion: 500 N m/deg, runs-ahead: 5 mm%s}\n";
        assertThat(found(TWO + soft.formatted("")))
                .extracting(Finding::id)
                .noneMatch(id -> id.endsWith("-when-one-runs-ahead"));
        List<Finding> all = found(TWO + soft.formatted(", never: [one-carries-all]"));
        assertThat(all).extracting(Finding::id).contains("what-if/frame-pin-when-one-runs-ahead");
        assertThat(all).extracting(Finding::id).noneMatch(id -> id.endsWith("-when-one-carries-all"));
    }
}
