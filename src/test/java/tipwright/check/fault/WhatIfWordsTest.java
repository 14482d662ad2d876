// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.PushCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Then;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What the what-ifs are called, what they say, and what would help. */
class WhatIfWordsTest {
    private static final Design BOX = Examples.read(Examples.BOX);
    private static final WhatIfCheck CHECK = new WhatIfCheck(List.of(new PushCheck()));
    private static final Findings MAKE = new Findings(CHECK, BOX);

    @ParameterizedTest
    @CsvSource({
        "'', If something goes wrong: load",
        "upset loads, Loads if something goes wrong",
        "burst hose, Hose bursts: sinking speed",
        "jam other parts, Tank jams: other parts",
        "valve shuts on the way down, Valve shuts on the way down: shock",
        "drive stops on the way, Drive stops at once on the way: shock",
        "end of the stroke other parts, Runs against the end of the stroke: other parts",
        "lands on the saddle, Tank lands on its saddle: force",
        "upper strut breaks, Spring breaks: upper strut",
        "gas springs hot and new, Gas springs hot and new: worst check then",
        "pin frame pin when one carries all, One actuator carries everything: pin frame pin",
        "a load of its own, A load of its own: worst check then",
    })
    void titles(String part, String title) {
        assertThat(CHECK.title(part)).isEqualTo(title);
    }

    /** 12 kN against 8 kN: words, and the rating that would do where one does: 12 kN over 0.85. */
    @ParameterizedTest
    @CsvSource({
        "lost power, an actuator that holds more (14.12 kN in place of 8 kN)",
        "load let go at once, an actuator that holds more (14.12 kN in place of 8 kN)",
        "one carries all, 'stronger actuators (14.12 kN in place of 8 kN), or less in the tank'",
        "one runs ahead, 'stronger actuators (14.12 kN in place of 8 kN), or less in the tank'",
        "burst hose, 'a lock valve on the cylinder port, or a restrictor in it'",
        "jam, 'a lower relief setting, or a stronger part where it is worst'",
        "valve shuts on the way down, 'a smaller orifice or a throttle, so that it comes down more slowly, or a stronger part'",
        "drive stops on the way, 'a slower actuator, or a stronger part where it is worst'",
        "end of the stroke, 'a cylinder with a cushion (what-if.cushion), more stroke, or a slower flow'",
        "lands on the saddle, 'softer pads, a stronger saddle, or let it down more slowly'",
        "wheel sinks, same as under the check that is named",
        "frozen solid, same as under the check that is named",
        "full of rainwater, same as under the check that is named",
        "outlet blocks on the way, same as under the check that is named",
        "gas springs hot and new, 'gas springs that push less, or that are nearer to the pivot'",
        "twist when one carries all, 'a part rated 14.12 kN in place of 8 kN, or less load'",
    })
    void whatWouldHelp(String part, String fix) {
        Finding found = MAKE.compare(part, 12_000, 8000, 1, Kind.FORCE, Extreme.NOWHERE, "a note");
        assertThat(CHECK.fix(found, BOX.limits()).metric()).startsWith(fix);
    }

    /** No strength helps one that cannot hold at all. */
    @Test
    void oneThatCannotHoldIsNotToBeStronger() {
        String another = "an actuator that can hold the tank that way, or pins so placed that it never has to";
        Finding lost = MAKE.compare("lost power", 12_000, 0, 1, Kind.FORCE, Extreme.NOWHERE, "a note");
        assertThat(CHECK.fix(lost, BOX.limits()).metric()).isEqualTo(another);
        HoldCheck hold = new HoldCheck();
        Finding stopped = new Findings(hold, BOX).compare("", 12_000, 0, 1, Kind.FORCE, Extreme.NOWHERE, "");
        assertThat(hold.fix(stopped, BOX.limits()).metric()).isEqualTo(another);
    }

    /** Numbers with their note; of what stands for another finding, what that one's own check says, after the cause. */
    @Test
    void whatIsSaid() throws CannotComputeException {
        Finding jam = MAKE.compare("jam", 12_000, 8000, 1, Kind.FORCE, Extreme.NOWHERE, "a note");
        assertThat(CHECK.says(jam).metric()).isEqualTo("drive at its hardest: needs 12 kN, has 8 kN; a note");
        assertThat(CHECK.trouble(jam)).isEqualTo("Tank jams");
        Finding fast = MAKE.compare("burst hose", 0.2, 0.1, 1, Kind.SPEED, Extreme.NOWHERE, "a note");
        assertThat(CHECK.says(fast).metric()).isEqualTo("it sinks at 200 mm/s, 100 mm/s allowed; a note");
        Finding untold = MAKE.missing("jam", "a reason");
        assertThat(CHECK.says(untold).metric()).isEqualTo("drive at its hardest: a reason");
        Finding push =
                new Findings(new PushCheck(), BOX).compare("", 15_000, 12_000, 1, Kind.FORCE, Extreme.NOWHERE, "");
        Then then = new Then(push, Text.words("stuck fast"), List.of());
        assertThat(CHECK.says(MAKE.of("jam", then, Extreme.NOWHERE)).metric())
                .isEqualTo("stuck fast; " + new PushCheck().says(push).metric());
        // one that none of its checks made
        Then other = new Then(jam, Text.NONE, List.of());
        assertThat(CHECK.says(MAKE.of("wheel sinks", other, Extreme.NOWHERE)).metric())
                .isEqualTo("Tank jams: drive at its hardest");
        Analysis analysis = Analyser.analyse(BOX);
        assertThat(CHECK.concerned(analysis, MAKE.of("jam", then, Extreme.NOWHERE))
                        .words())
                .isEqualTo("stuck fast; worst then: " + push.title());
        assertThat(CHECK.concerned(analysis, jam).named()).isTrue();
    }

    private static Finding of(String part, double use, Verdict verdict) {
        return new Findings(new PushCheck(), BOX)
                .given(part, use, 1, 1, Kind.RATIO, use, Extreme.at(use, 0.5), verdict, part);
    }

    /** The worst by verdict, then by use; of what is alike, the first; what fails besides is named once. */
    @Test
    void theWorstOfAll() {
        List<Finding> all = List.of(
                of("a", 0.9, Verdict.CLOSE),
                of("b", 1.5, Verdict.FAIL),
                of("c", 2.0, Verdict.FAIL),
                of("d", 2.0, Verdict.FAIL),
                of("c", 1.2, Verdict.FAIL),
                of("b", 1.1, Verdict.FAIL),
                of("e", 3.0, Verdict.CLOSE));
        Finding worst = WorstOfAll.of(MAKE, "wheel sinks", all);
        assertThat(worst.id()).isEqualTo("what-if/wheel-sinks");
        assertThat(worst.utilisation()).isEqualTo(2);
        assertThat(worst.tilt()).isEqualTo(0.5);
        assertThat(worst.verdict()).isEqualTo(Verdict.FAIL);
        String title = new PushCheck().title("c");
        assertThat(worst.note().metric())
                .isEqualTo("worst then: " + title + "; also fail: " + new PushCheck().title("b") + ", "
                        + new PushCheck().title("d"));
        Finding close = WorstOfAll.of(MAKE, "wheel sinks", List.of(all.get(0), of("f", 0.2, Verdict.PASS)));
        assertThat(close.note().metric()).isEqualTo("closest to failing then: " + new PushCheck().title("a"));
    }
}
