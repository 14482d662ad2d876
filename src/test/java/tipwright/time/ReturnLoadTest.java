// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;

/** The tank comes back with what is in it at the top, and only with loads that the design allows for. */
class ReturnLoadTest {
    private static final String FAST = swap(
            Examples.BOX,
            "centre: [0 m, 1.5 m, 0 m], normal: y",
            "centre: [0.5 m, 1 m, 0 m], normal: x",
            "stroke: 900 mm, push: 12 kN, pull: 12 kN",
            "stroke: 1500 mm, push: 30 kN, pull: 30 kN, speed: {no-load: 20 mm/s, rated: 10 mm/s}, voltage: 24 V,"
                    + " current: {no-load: 2 A, rated: 50 A}");

    private static CaseResult find(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> loads(Analysis analysis) {
        return CycleTimer.time(analysis).cycles().stream().map(Cycle::load).toList();
    }

    private static List<Moment> back(Timing timing) {
        Cycle caked = timing.of("caked");
        return Objects.requireNonNull(caked).moments().stream()
                .filter(m -> m.phase() == Moment.Phase.LOWER)
                .toList();
    }

    /** A cake that never lets go, or not before the end, comes back whole: force by the caked case on its way down. */
    @ParameterizedTest
    @ValueSource(strings = {"never", "88 deg"})
    void aCakeThatSticksComesBackToo(String release) throws CannotComputeException {
        Analysis analysis =
                Analyser.analyse(Examples.read(swap(FAST, "repose: 30 deg", "repose: 30 deg, release: " + release)));
        CaseResult caked = find(analysis, "caked");
        List<Moment> back = back(CycleTimer.time(analysis));
        assertThat(back).isNotEmpty();
        for (Moment m : back) {
            assertThat(m.volume()).isCloseTo(caked.load().contents(), within(1e-9));
        }
        Row top = caked.rows().get(caked.rows().size() - 1);
        assertThat(back.get(0).tilt()).isCloseTo(top.tilt(), within(1e-6));
        assertThat(back.get(0).force())
                .isCloseTo(
                        top.lower().force(), within(1e-3 * Math.abs(top.lower().force())));
    }

    /** One that has let go comes back with what the heap leaves, whether or not the design looks at that case by itself. */
    @ParameterizedTest
    @ValueSource(strings = {"", "cases: {skip: [heel]}\n"})
    void aCakeThatLetsGoComesBackAsAHeel(String cases) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(
                swap(FAST, "80 deg", "60 deg", "repose: 30 deg", "repose: 30 deg, release: 40 deg") + cases));
        CaseResult caked = find(analysis, "caked");
        double left = caked.load().residual();
        assertThat(left).isLessThan(0.9 * caked.load().contents());
        assertThat(back(CycleTimer.time(analysis))).isNotEmpty().allSatisfy(m -> assertThat(m.volume())
                .isCloseTo(left, within(1e-9)));
    }

    /** When the stroke ends before the cake lets go, it is still there on the way back. */
    @Test
    void aStrokeThatEndsBeforeTheReleaseLeavesTheCakeIn() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(
                swap(FAST, "stroke: 1500 mm", "stroke: 500 mm", "repose: 30 deg", "repose: 30 deg, release: 70 deg")));
        double whole = find(analysis, "caked").load().contents();
        assertThat(back(CycleTimer.time(analysis))).isNotEmpty().allSatisfy(m -> assertThat(m.volume())
                .isCloseTo(whole, within(1e-9)));
    }

    /** A design that leaves a load out has it out of the time as well. */
    @Test
    void aLoadLeftOutIsNotTimed() throws CannotComputeException {
        Analysis with = Analyser.analyse(Examples.read(FAST));
        assertThat(loads(with)).containsExactly("draining", "held", "caked", "settled", "slid");
        Analysis without = Analyser.analyse(Examples.read(FAST + "cases: {skip: [held]}\n"));
        assertThat(loads(without)).containsExactly("draining", "caked", "settled", "slid");
    }
}
