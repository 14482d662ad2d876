// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.DutyCheck;
import tipwright.check.actuator.PushCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What governs among findings, what is certain before the dump in time is known, and the steps to a border. */
class HalvesTest {
    private static final Design BOX = Examples.read(Examples.BOX);
    private static final Findings PUSH = new Findings(new PushCheck(), BOX);
    private static final Findings DUTY = new Findings(new DutyCheck(), BOX);

    private static Finding used(Findings make, String part, double used) {
        return make.compare(part, used, 1, 1, Kind.RATIO, Extreme.NOWHERE, "");
    }

    @Test
    void theWorstThatCouldBeMadeGoverns() {
        Finding little = used(PUSH, "a", 0.25);
        Finding much = used(PUSH, "b", 0.5);
        Finding close = used(PUSH, "c", 0.9375);
        Finding untold = PUSH.missing("d", "x");
        Part part = new Part(Occasion.NORMAL, List.of(untold, little, much, untold));
        assertThat(part.governing()).isEqualTo(much);
        assertThat(part.verdict()).isEqualTo(Verdict.PASS);
        assertThat(part.count(Verdict.PASS)).isEqualTo(2);
        assertThat(part.count(Verdict.NOT_CHECKED)).isEqualTo(2);
        assertThat(part.count(Verdict.FAIL)).isZero();
        assertThat(part.made()).isEqualTo(2);
        assertThat(new Part(Occasion.FAULT, List.of(close, much)).verdict()).isEqualTo(Verdict.CLOSE);
        Part none = new Part(Occasion.FAULT, List.of(untold));
        assertThat(none.governing()).isNull();
        assertThat(none.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(none.made()).isZero();
    }

    /** The dump in time may mend how long the actuator runs, not what it has to push. */
    @Test
    void whatTheTimeMayMendIsNotCertain() throws CannotComputeException {
        Finding duty = used(DUTY, "", 1.25);
        Finding push = used(PUSH, "", 0.5);
        Early early = new Early(Analyser.analyse(BOX), List.of(duty, push));
        assertThat(early.certain()).containsExactly(push);
        assertThat(early.fails()).isFalse();
        Early failing = new Early(early.analysis(), List.of(duty, push, used(PUSH, "more", 1.25)));
        assertThat(failing.fails()).isTrue();
        Finding unknown = new Finding(
                "nobodys", "t", 2, 1, 1, Kind.RATIO, push.sense(), 2, Extreme.NOWHERE, Verdict.FAIL, "s", Text.NONE);
        assertThat(new Early(early.analysis(), List.of(unknown)).fails()).isTrue();
    }

    /** A finding of no check is told as part of the normal dump. */
    @Test
    void whatNoCheckOwnsIsNormal() throws CannotComputeException {
        Finding push = used(PUSH, "", 0.5);
        Finding unknown = new Finding(
                "nobodys", "t", 2, 1, 1, Kind.RATIO, push.sense(), 2, Extreme.NOWHERE, Verdict.FAIL, "s", Text.NONE);
        Parts parts = Parts.of(Analyser.analyse(BOX), null, List.of(unknown));
        assertThat(parts.normal().findings()).containsExactly(unknown);
        assertThat(parts.fault().findings()).isEmpty();
        assertThat(parts.both()).containsExactly(parts.normal(), parts.fault());
    }

    /** Of several of one id the most used; what was not checked, and what is not there, uses nothing. */
    @Test
    void howMuchOfACheckAFillUses() {
        Finding one = used(PUSH, "a", 0.25);
        Finding more = used(PUSH, "a", 0.75);
        Finding fails = used(PUSH, "b", 1.25);
        Finding worse = used(PUSH, "c", 1.5);
        FillSweep.At at = new FillSweep.At(0.5, List.of(one, more, fails, worse, PUSH.missing("d", "x")));
        assertThat(at.used("push/a")).isEqualTo(0.75);
        assertThat(at.used("push/d")).isZero();
        assertThat(at.used("push/e")).isZero();
        assertThat(at.failure()).isEqualTo(worse);
        assertThat(new FillSweep.At(0.5, List.of(one, more)).failure()).isNull();
    }

    /**
     * Used twice the value: the border lies at a half. The straight line points at it; the first look lies 0.45 of 0.125 before it, the
     * second as far behind it, and that is close enough.
     */
    @Test
    void aStraightLineTakesTwoLooks() throws CannotComputeException {
        List<Double> asked = new ArrayList<>();
        Border border = Border.between(0, List.of(used(PUSH, "", 0)), 1, List.of(used(PUSH, "", 2)), 0.125, x -> {
            asked.add(x);
            return List.of(used(PUSH, "", 2 * x));
        });
        assertThat(asked).hasSize(2);
        assertThat(asked.get(0)).isCloseTo(0.5 - 0.05625, within(1e-12));
        assertThat(asked.get(1)).isCloseTo(0.5 + 0.05625, within(1e-12));
        assertThat(border.good()).isEqualTo(asked.get(0));
        assertThat(border.bad()).isEqualTo(asked.get(1));
        assertThat(border.findings().get(0).utilisation()).isEqualTo(2 * asked.get(0));
    }

    /** By two: 0.45 of what is close enough on either side of where the line points. */
    @Test
    void aStraightLineTakesOnePairWhereItPointsNear() throws CannotComputeException {
        List<Double> asked = new ArrayList<>();
        Border border = byTwo(0.125, asked);
        assertThat(asked).hasSize(2);
        assertThat(asked.get(0)).isCloseTo(0.5 - 0.05625, within(1e-12));
        assertThat(asked.get(1)).isCloseTo(0.5 + 0.05625, within(1e-12));
        assertThat(border.good()).isEqualTo(asked.get(0));
        assertThat(border.bad()).isEqualTo(asked.get(1));
    }

    /** Far away: half way to it and there, which passes; then a hundredth of what is left past it and twice as far. */
    @Test
    void aStraightLineTakesTwoPairsWhereItPointsFarAway() throws CannotComputeException {
        List<Double> asked = new ArrayList<>();
        Border border = byTwo(1 / 128.0, asked);
        assertThat(asked).hasSize(4);
        assertThat(asked.get(0)).isEqualTo(0.25);
        assertThat(asked.get(1)).isEqualTo(0.5);
        assertThat(asked.get(2)).isCloseTo(0.505, within(1e-12));
        assertThat(asked.get(3)).isCloseTo(0.51, within(1e-12));
        assertThat(border.good()).isEqualTo(0.5);
        assertThat(border.bad()).isEqualTo(asked.get(2));
    }

    private static Border byTwo(double close, List<Double> asked) throws CannotComputeException {
        return Border.byTwo(0, List.of(used(PUSH, "", 0)), 1, List.of(used(PUSH, "", 2)), close, (first, second) -> {
            asked.add(first);
            asked.add(second);
            return List.of(List.of(used(PUSH, "", 2 * first)), List.of(used(PUSH, "", 2 * second)));
        });
    }

    /** Where no check tells how far it is, thirds by two and halves one by one; of two checks that fail the first to come counts. */
    @Test
    void theNearestOfTheFailingChecksIsAimedAt() throws CannotComputeException {
        List<Double> asked = new ArrayList<>();
        Border.Findings yesOrNo = x -> {
            asked.add(x);
            return List.of(used(PUSH, "", x > 0.3 ? Double.POSITIVE_INFINITY : 0.5));
        };
        List<Finding> passes = List.of(used(PUSH, "", 0.5));
        List<Finding> fails = List.of(used(PUSH, "", Double.POSITIVE_INFINITY));
        Border.between(0, passes, 1, fails, 0.3, yesOrNo);
        assertThat(asked).containsExactly(0.5, 0.25);
        asked.clear();
        Border.byTwo(0, passes, 1, fails, 0.4, (a, b) -> List.of(yesOrNo.of(a), yesOrNo.of(b)));
        assertThat(asked.get(0)).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(asked.get(1)).isCloseTo(2 / 3.0, within(1e-12));
        asked.clear();
        List<Finding> low = List.of(used(PUSH, "a", 0.5), used(PUSH, "b", 0));
        List<Finding> high = List.of(used(PUSH, "a", 1.5), used(PUSH, "b", 4));
        Border.between(0, low, 1, high, 0.125, x -> {
            asked.add(x);
            return List.of(used(PUSH, "a", 0.5 + x), used(PUSH, "b", 4 * x));
        });
        assertThat(asked.get(0)).isCloseTo(0.25 - 0.05625, within(1e-12));
    }

    /** What is already close enough is not looked at. */
    @Test
    void whatIsCloseEnoughIsLeftAlone() throws CannotComputeException {
        Border.Findings never = x -> {
            throw new AssertionError("looked at " + x);
        };
        Border border = Border.between(0.5, List.of(), 0.625, List.of(), 0.125, never);
        assertThat(border).isEqualTo(new Border(0.5, List.of(), 0.625));
        assertThat(Border.byTwo(0.5, List.of(), 0.625, List.of(), 0.125, (a, b) -> List.of(never.of(a))))
                .isEqualTo(border);
    }
}
