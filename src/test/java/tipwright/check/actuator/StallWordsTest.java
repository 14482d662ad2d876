// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.MotionDirection;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** A dump that does not get on: whether it goes on by itself, and which way it was going. */
class StallWordsTest {
    private static Analysis analysis;
    private static Timing timing;

    @BeforeAll
    static void time() throws Exception {
        Reading reading = DesignFile.shipped("silt-trailer.yaml");
        analysis = Analyser.analyse(((Reading.Good) reading).design());
        timing = CycleTimer.time(analysis);
    }

    /**
     * The normal dump changed: what stalls going up and gets there later is close; what does not get up, and what does not come back
     * down, fails, also after it went on going up.
     *
     * @param stalledAt deg; NaN: never
     * @param raise time, s; Infinity: it never gets up
     * @param stuckAt deg; NaN: never
     */
    @ParameterizedTest
    @CsvSource({
        "20, 90, NaN, CLOSE, RAISING, 'the actuator stalls, and goes on when enough has run out'",
        "20, Infinity, NaN, FAIL, RAISING, the actuator stalls",
        "NaN, 90, 30, FAIL, LOWERING, the tank does not come back down",
        "20, 90, 30, FAIL, RAISING, the actuator stalls",
    })
    void tellsWhetherItGoesOn(
            double stalledAt, double raise, double stuckAt, Verdict verdict, MotionDirection direction, String words) {
        Cycle dump = timing.cycles().get(0);
        Cycle changed = Copy.with(
                Copy.with(Copy.with(dump, "stalledAt", Math.toRadians(stalledAt)), "stuckAt", Math.toRadians(stuckAt)),
                "raise",
                raise);
        List<Cycle> cycles = new ArrayList<>(timing.cycles());
        cycles.set(0, changed);
        StallCheck check = new StallCheck();
        List<Finding> found = check.run(analysis, new Timing(cycles, null, false));
        assertThat(found).hasSize(1);
        Finding one = found.get(0);
        assertThat(one.id()).isEqualTo("stall/draining-load");
        assertThat(one.verdict()).isEqualTo(verdict);
        assertThat(one.worst().direction()).isEqualTo(direction);
        assertThat(one.tilt()).isEqualTo(Math.toRadians(Double.isNaN(stalledAt) ? stuckAt : stalledAt));
        assertThat(check.says(one).show(UnitSystem.METRIC)).isEqualTo(words);
        String where = Double.isNaN(stalledAt) ? "it stops at 30.0 deg" : "stalls at 20.0 deg";
        assertThat(one.note().metric()).contains(where);
        assertThat(one.note().metric().contains("goes on")).isEqualTo(verdict == Verdict.CLOSE);
    }

    /** Two dumps that stall are two findings. */
    @Test
    void eachDumpHasItsOwn() {
        List<Cycle> cycles = new ArrayList<>(timing.cycles());
        for (int i = 0; i < 2; i++) {
            cycles.set(i, Copy.with(cycles.get(i), "stalledAt", 0.2));
        }
        assertThat(new StallCheck().run(analysis, new Timing(cycles, null, false)))
                .extracting(Finding::id)
                .containsExactly(
                        "stall/" + cycles.get(0).load() + "-load",
                        "stall/" + cycles.get(1).load() + "-load");
        assertThat(new StallCheck().run(analysis, timing))
                .extracting(Finding::id)
                .containsExactly("stall");
    }
}
