// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.RandomDesigns;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Straight;
import tipwright.design.drive.TiltRange;

/** What holds for every dump: seeded designs of all tank shapes. */
class CyclePropertiesTest {
    private static final int DESIGNS = 40;

    /** Designs with actuators whose figures are of a real kind: 20 to 60 percent of the power arrives at the rod. */
    static List<Analysis> analyses() {
        return analyses(DESIGNS, 4_000, 40_000, 0.25);
    }

    /** The same with so many designs, a push between these, N, and a duty. */
    static List<Analysis> analyses(int count, double leastPush, double mostPush, double duty) {
        RandomDesigns designs = new RandomDesigns(20261125);
        SplittableRandom random = new SplittableRandom(4);
        List<Analysis> all = new ArrayList<>();
        while (all.size() < count) {
            try {
                Analysis analysis =
                        Analyser.analyse(driven(designs.next(), random.nextDouble(leastPush, mostPush), duty, random));
                if (analysis.poses().size() > 5) {
                    all.add(analysis);
                }
            } catch (CannotComputeException cannot) {
                assertThat(cannot).hasMessageContaining("seeded");
            }
        }
        return all;
    }

    private static Design driven(Design design, double push, double duty, SplittableRandom random) {
        double rated = random.nextDouble(0.004, 0.012);
        double current = push * rated / (12 * random.nextDouble(0.2, 0.6));
        ElectricActuator actuator = new ElectricActuator(
                0.1,
                3,
                push,
                push,
                null,
                new ElectricActuator.Speed(rated * random.nextDouble(1, 1.6), rated),
                12.0,
                new ElectricActuator.Current(current * random.nextDouble(0.05, 0.2), current),
                duty,
                null,
                null,
                1,
                null,
                null,
                false);
        Straight drive = (Straight) design.drive();
        Straight moved = new Straight(
                drive.framePin(),
                drive.tankPin(),
                List.of(new PlacedActuator(0, actuator)),
                drive.framePinJoint(),
                drive.tankPinJoint());
        return design.withDrive(moved);
    }

    @ParameterizedTest
    @MethodSource("analyses")
    void everyDumpKeepsTheLawsOfNature(Analysis analysis) {
        Timing timing = CycleTimer.time(analysis);
        assertThat(timing.missing()).isNull();
        for (Cycle c : timing.cycles()) {
            assertThat(c.spent().energy()).isGreaterThanOrEqualTo(c.spent().work());
            double before = Double.POSITIVE_INFINITY;
            double accuracy = 2e-5 * c.moments().get(0).volume();
            double time = -1;
            for (Moment m : c.moments()) {
                assertThat(m.volume()).isLessThanOrEqualTo(before + accuracy).isGreaterThanOrEqualTo(0);
                assertThat(m.time()).isGreaterThanOrEqualTo(time);
                assertThat(m.discharge()).isGreaterThanOrEqualTo(0);
                before = m.volume();
                time = m.time();
            }
            if (c.complete()) {
                assertThat(c.total()).isGreaterThanOrEqualTo(c.raise() + c.lower());
                assertThat(c.perHour())
                        .isLessThanOrEqualTo(3600 / c.total() + 1e-9)
                        .isPositive();
                Moment last = c.moments().get(c.moments().size() - 1);
                assertThat(last.tilt()).isCloseTo(analysis.poses().get(0).tilt(), within(1e-6));
            } else {
                assertThat(Double.isNaN(c.stalledAt()) && Double.isNaN(c.stuckAt()) && Double.isFinite(c.empty()))
                        .isFalse();
            }
        }
    }

    /** Raising the held load takes at least what its weight gains in height; friction comes on top. */
    @ParameterizedTest
    @MethodSource("analyses")
    void workRaisesTheHeldLoad(Analysis analysis) {
        Cycle held = CycleTimer.time(analysis).of("held");
        CaseResult rows = named(analysis, "held");
        if (held == null || !held.complete()) {
            return;
        }
        Row first = rows.rows().get(0);
        Row last = rows.rows().get(rows.rows().size() - 1);
        tipwright.geometry.Vec3 up = analysis.design().site().up();
        double gain = first.load().mass() * 9.80665 * up.dot(last.centroid().minus(first.centroid()));
        assertThat(held.spent().work()).isGreaterThanOrEqualTo(gain * (1 - 1e-4) - 0.5);
    }

    @ParameterizedTest
    @MethodSource("analyses")
    void doesNotDependOnTheStep(Analysis analysis) {
        Timing usual = CycleTimer.time(analysis);
        Timing fine = CycleTimer.time(analysis, 1e-9);
        for (int i = 0; i < usual.cycles().size(); i++) {
            Cycle a = usual.cycles().get(i);
            Cycle b = fine.cycles().get(i);
            assertThat(a.complete()).isEqualTo(b.complete());
            if (a.complete()) {
                assertThat(a.raise()).isCloseTo(b.raise(), within(2e-4 * b.raise()));
                assertThat(a.lower()).isCloseTo(b.lower(), within(2e-4 * b.lower()));
                assertThat(a.spent().energy())
                        .isCloseTo(b.spent().energy(), within(5e-4 * b.spent().energy()));
                if (Double.isFinite(b.empty())) {
                    assertThat(a.empty()).isCloseTo(b.empty(), within(1e-3 * b.empty() + 0.01));
                }
            }
        }
    }

    /** The tilt step of the design's own tables must not matter either. */
    @Test
    void doesNotDependOnTheDesignsTiltStep() throws CannotComputeException {
        Design design = Examples.read(box("", "outflow: {coefficient: 0.62}"));
        Cycle coarse = Simple.dump(CycleTimer.time(Analyser.analyse(step(design, 4))));
        Cycle fine = Simple.dump(CycleTimer.time(Analyser.analyse(step(design, 0.5))));
        assertThat(coarse.total()).isCloseTo(fine.total(), within(1e-5 * fine.total()));
    }

    private static Design step(Design design, double degrees) {
        return design.withTilt(new TiltRange(0, design.tilt().to(), Math.toRadians(degrees)));
    }

    private static String box(String supply, String outflow) {
        return swap(
                        Examples.BOX,
                        "pull: 12 kN",
                        "pull: 12 kN, voltage: 12 V, speed: {no-load: 9 mm/s, rated: 6 mm/s}, current: {no-load: 5 A, rated: 32 A}",
                        "normal: y}",
                        "normal: y, " + outflow + "}")
                + supply;
    }

    /** Hours for the way up and a wide open top: volume and force follow the quasi-static draining case to 0.1 %. */
    @ParameterizedTest
    @ValueSource(strings = {"fill: 100 %", "fill: 60 %"})
    void slowActuatorAndInstantLiquidAreQuasiStatic(String fill) throws CannotComputeException {
        String slow = "supply: {kind: hand-winch, travel-per-turn: 0.01 mm, turns-per-minute: 30}\n";
        Analysis analysis =
                Analyser.analyse(Examples.read(swap(box(slow, "outflow: {coefficient: 1}"), "fill: 100 %", fill)));
        Cycle c = Simple.dump(CycleTimer.time(analysis));
        CaseResult draining = named(analysis, "draining");
        Grid grid = new Grid(draining.rows().stream().mapToDouble(Row::tilt).toArray());
        double[] volumes =
                draining.rows().stream().mapToDouble(r -> r.load().volume()).toArray();
        double[] forces =
                draining.rows().stream().mapToDouble(r -> r.raise().force()).toArray();
        double most = forces[0];
        int compared = 0;
        for (Moment m : c.moments()) {
            // at the poses of the analysis only, so that its own straight lines between them do not count
            double nearest = Math.rint(Math.toDegrees(m.tilt()));
            if (m.phase() == Moment.Phase.RAISE && Math.abs(Math.toDegrees(m.tilt()) - nearest) < 0.02) {
                assertThat(m.volume()).isCloseTo(grid.linear(volumes, m.tilt()), within(1e-3));
                assertThat(m.force()).isCloseTo(grid.linear(forces, m.tilt()), within(1e-3 * most));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(5);
    }

    private static CaseResult named(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(r -> r.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
