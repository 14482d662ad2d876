// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.actuator.DutyCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/**
 * Two unlike electric actuators with half of the force each: the weak one is near its rating while the strong one idles, so each is
 * held against its own current and its own heat. By hand from the straight line of a motor's current, i = i0 + (ir - i0) F/Fr.
 */
class UnlikeMotorsTest {
    private static final String STRONG =
            "closed: 800 mm, stroke: 900 mm, push: 40 kN, pull: 40 kN, voltage: 24 V, duty: 40 %,"
                    + " speed: {no-load: 9 mm/s, rated: 7 mm/s}, current: {no-load: 2 A, rated: 60 A}}";
    private static final String WEAK =
            "closed: 800 mm, stroke: 900 mm, push: 3 kN, pull: 3 kN, voltage: 24 V, duty: 20 %,"
                    + " speed: {no-load: 9 mm/s, rated: 7 mm/s}, current: {no-load: 1 A, rated: 8 A}}";
    private static final String TWO = swap(
            Examples.BOX,
            "{z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}",
            "{z: -300 mm, actuator: {kind: electric, " + STRONG + "}\n      - {z: 300 mm, actuator: {kind: electric, "
                    + WEAK + "}",
            "80 deg",
            "45 deg");
    private static final String YAML =
            TWO + "use: {dumps-per-hour: 1}\nsupply: {kind: battery, voltage: 24 V, fuse: 80 A}\n";

    private static double weak(Moment m) {
        // out while it tips, in while it comes back; what helps takes nothing
        double against = m.phase() == Moment.Phase.LOWER ? -m.force() : m.force();
        return 1 + 7 * Math.min(2, Math.max(0, against / 2) / 3000);
    }

    @Test
    void theWeakOneIsHeldAgainstItsOwnCurrentAndItsOwnHeat() throws Exception {
        Analysis analysis = Analyser.analyse(Examples.read(YAML));
        List<Moment> moments = CycleTimer.time(analysis).cycles().stream()
                .flatMap(c -> c.moments().stream())
                .toList();
        double peak = moments.stream().mapToDouble(UnlikeMotorsTest::weak).max().orElseThrow();
        Finding current = One.of(YAML, "electrical/current-of-actuator-2");
        assertThat(current.title()).isEqualTo("Actuator 2: current");
        assertThat(current.demand()).isCloseTo(peak, within(1e-9));
        assertThat(current.capacity()).isEqualTo(8);
        assertThat(current.verdict()).isEqualTo(Verdict.FAIL);
        // both added up are far from the 68 A of both ratings
        assertThat(One.of(YAML, "electrical/current").verdict()).isEqualTo(Verdict.PASS);

        double most = 0;
        for (Cycle cycle : CycleTimer.time(analysis).cycles()) {
            double heat = 0;
            List<Moment> all = cycle.moments();
            for (int i = 1; i < all.size(); i++) {
                Moment a = all.get(i - 1);
                Moment b = all.get(i);
                if (a.phase() == b.phase() && a.phase() != Moment.Phase.HOLD) {
                    double square = weak(a) * weak(a) + weak(b) * weak(b);
                    heat += (b.time() - a.time()) * square / 2 / 64 / (0.2 * 600);
                }
            }
            most = Math.max(most, heat);
        }
        Finding stretch = new DutyCheck()
                .run(analysis, CycleTimer.time(analysis)).stream()
                        .filter(f -> f.id().equals("duty/one-stretch"))
                        .findFirst()
                        .orElseThrow();
        assertThat(stretch.demand()).isCloseTo(most, within(0.01 * most));
    }

    @Test
    void alikeOnesAreToldTogether() throws Exception {
        String alike = swap(YAML, WEAK, STRONG);
        assertThat(One.all(alike, "electrical"))
                .extracting(Finding::id)
                .doesNotContain("electrical/current-of-actuator-2");
    }
}
