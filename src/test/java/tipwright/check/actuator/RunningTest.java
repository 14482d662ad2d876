// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.check.Dumps;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Peaks;
import tipwright.time.Spent;
import tipwright.time.Timing;

/** Heat, stalls and the time of made-up dumps; stroke and angle of made-up poses. */
class RunningTest {
    private static final Peaks NO_PEAKS = new Peaks(0, 0, 0, 0, 0, 0, 0, 0);
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg");
    private static final String RATED =
            swap(BOX, "pull: 12 kN", "pull: 12 kN, duty: 25 %") + "use: {dumps-per-hour: 6}\n";

    private static Analysis analysis(String yaml) throws CannotComputeException {
        return Analyser.analyse(Examples.read(yaml));
    }

    private static Moment at(Moment.Phase phase, double tilt, double pace, double duty) {
        return new Moment(phase, 0, tilt, 1, 0, 0, 0, 0, Double.NaN, Dumps.STILL, pace, duty);
    }

    private static Cycle cycle(
            String load, double total, double stalledAt, double stuckAt, double raise, double onTime, double perHour) {
        return new Cycle(
                load,
                raise,
                5,
                20,
                total,
                stalledAt,
                stuckAt,
                perHour,
                NO_PEAKS,
                new Spent(0, 0, 0, onTime),
                List.of(),
                List.of(
                        at(Moment.Phase.RAISE, 0.0625, 0.75, 0.25),
                        at(Moment.Phase.HOLD, 0.125, 0, 0.5),
                        at(Moment.Phase.LOWER, 0.09375, 0.5, 0.375)));
    }

    private static Cycle sound(String load, double onTime, double perHour) {
        return cycle(load, 60, Double.NaN, Double.NaN, 30, onTime, perHour);
    }

    private static List<Finding> duty(String yaml, Cycle... cycles) throws CannotComputeException {
        return new DutyCheck().run(analysis(yaml), Dumps.of(cycles));
    }

    /** Six dumps an hour of 75 s are an eighth of the hour. */
    @Test
    void theLongestOnTimeCounts() throws CannotComputeException {
        List<Finding> all = duty(RATED, sound("draining", 50, 12.5), sound("held", 75, 3));
        assertThat(all).extracting(Finding::id).containsExactly("duty", "duty/one-stretch");
        assertThat(all.get(0).demand()).isCloseTo(0.125, within(1e-12));
        assertThat(all.get(0).capacity()).isCloseTo(0.25, within(1e-12));
        assertThat(all.get(0).note().metric())
                .isEqualTo("runs 75 s a dump at most; good for 12.5 normal dumps an hour");
        assertThat(new DutyCheck().says(all.get(0)).metric())
                .isEqualTo("the actuator runs 12.5 % of the time and is rated for 25 %");
        assertThat(all.get(1).demand()).isEqualTo(0.5);
        assertThat(all.get(1).capacity()).isEqualTo(1);
        assertThat(all.get(1).worst()).isEqualTo(new Extreme(0.5, 0.125, "draining", MotionDirection.RESTING));
        assertThat(all.get(1).title()).isEqualTo("Actuator: heat in one dump");
        assertThat(new DutyCheck().says(all.get(1)).metric())
                .isEqualTo("one dump uses 50 % of the heat that the actuator's duty allows");
        assertThat(duty(RATED, sound("draining", 0, 0)).get(0).note()).isEqualTo(Text.words("nothing runs on a motor"));
        assertThat(duty(RATED, sound("draining", 50, 0)).get(0).note())
                .isEqualTo(Text.words("the normal dump never gets through"));
    }

    @Test
    void aDumpThatNeverGetsThroughFails() throws CannotComputeException {
        double never = Double.POSITIVE_INFINITY;
        Finding f = duty(RATED, sound("draining", 50, 12.5), cycle("held", never, 0.1, Double.NaN, never, 1, 0))
                .get(0);
        assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(f.demand()).isEqualTo(1);
        assertThat(f.capacity()).isCloseTo(0.25, within(1e-12));
        assertThat(f.utilisation()).isCloseTo(4, within(1e-9));
        assertThat(f.note())
                .isEqualTo(Text.words("it never gets through: it stalls, does not come back or does not run out"));
    }

    @Test
    void whatIsMissingOfTheDutyIsNamed() throws CannotComputeException {
        List<Finding> bare = duty(BOX, sound("draining", 50, 12.5));
        assertThat(bare).hasSize(1);
        assertThat(bare.get(0).note()).isEqualTo(Text.words("actuator.duty missing"));
        assertThat(new DutyCheck().says(bare.get(0))).isEqualTo(bare.get(0).note());
        Finding unused = duty(swap(RATED, "use: {dumps-per-hour: 6}", ""), sound("draining", 50, 12.5))
                .get(0);
        assertThat(unused.missing()).isTrue();
        assertThat(unused.note()).isEqualTo(Text.words("use.dumps-per-hour missing"));
        Finding untimed = new DutyCheck().run(analysis(RATED), Dumps.UNKNOWN).get(0);
        assertThat(untimed.missing()).isTrue();
        assertThat(untimed.note()).isEqualTo(Text.words("actuator.speed missing"));
        Finding lost = new DutyCheck()
                .run(analysis(RATED), new Timing(List.of(), "lost at 3 s", true))
                .get(0);
        assertThat(lost.missing()).isFalse();
        assertThat(lost.note()).isEqualTo(Text.words("lost at 3 s"));
        Finding atRest = new DutyCheck().run(analysis(RATED)).get(0);
        assertThat(atRest.note()).isEqualTo(Text.words("actuator.speed or actuator.flow missing"));
        assertThat(atRest.missing()).isTrue();
    }

    /** The slowest while it moves; what stands still does not count. */
    @Test
    void theSlowestPaceIsTold() throws CannotComputeException {
        List<Finding> all = new StallCheck().run(analysis(BOX), Dumps.of(sound("draining", 1, 1)));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).capacity()).isEqualTo(0.5);
        assertThat(all.get(0).tilt()).isEqualTo(0.09375);
        assertThat(all.get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(all.get(0).note().metric()).isEqualTo("at its slowest it still makes 50 % of its free speed");
        Finding untimed = new StallCheck().run(analysis(BOX), Dumps.UNKNOWN).get(0);
        assertThat(untimed.note()).isEqualTo(Text.words("actuator.speed missing"));
    }

    /** On its way up for good, on its way up for a while, on its way back, and both. */
    @ParameterizedTest
    @CsvSource({
        "0.1, NaN, Infinity, FAIL, true, 'the actuator stalls at 5.7 deg with the load', 'the actuator stalls'",
        "0.1, NaN, 40, CLOSE, true, 'the actuator stalls at 5.7 deg with the load',"
                + " 'the actuator stalls, and goes on when enough has run out'",
        "0.1, 0.05, 40, FAIL, true, 'the actuator stalls at 5.7 deg with the load', 'the actuator stalls'",
        "NaN, 0.05, 40, FAIL, false, 'the tank does not come back: it stops at 2.9 deg with the load',"
                + " 'the tank does not come back down'"
    })
    void aStallIsToldWithItsTilt(
            double stalledAt, double stuckAt, double raise, Verdict verdict, boolean up, String note, String says)
            throws CannotComputeException {
        List<Finding> all = new StallCheck()
                .run(
                        analysis(BOX),
                        Dumps.of(sound("draining", 1, 1), cycle("held", 60, stalledAt, stuckAt, raise, 1, 0)));
        assertThat(all).hasSize(1);
        Finding f = all.get(0);
        assertThat(f.id()).isEqualTo("stall/held-load");
        assertThat(f.verdict()).isEqualTo(verdict);
        assertThat(f.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(f.capacity()).isZero();
        assertThat(f.worst())
                .isEqualTo(new Extreme(
                        0, up ? stalledAt : stuckAt, "held", up ? MotionDirection.RAISING : MotionDirection.LOWERING));
        assertThat(f.note().metric())
                .isEqualTo(note + " 'full, load still in it'"
                        + (verdict == Verdict.CLOSE ? "; goes on when enough has run out" : ""));
        assertThat(new StallCheck().says(f).metric()).isEqualTo(says);
    }

    @Test
    void theTimeOfADumpIsHeldAgainstTheOneWanted() throws CannotComputeException {
        String timed = BOX + "dump: {cycle-time: 80 s}\n";
        Finding f = new CycleTimeCheck()
                .run(analysis(timed), Dumps.of(sound("draining", 1, 1)))
                .get(0);
        assertThat(f.demand()).isEqualTo(60);
        assertThat(f.capacity()).isEqualTo(80);
        assertThat(f.note().metric()).isEqualTo("raises in 30 s, comes back in 20 s");
        double never = Double.POSITIVE_INFINITY;
        Finding stalls = new CycleTimeCheck()
                .run(analysis(timed), Dumps.of(cycle("draining", never, 0.1, Double.NaN, never, 1, 0)))
                .get(0);
        assertThat(stalls.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(stalls.utilisation()).isEqualTo(never);
        assertThat(stalls.capacity()).isEqualTo(80);
        assertThat(new CycleTimeCheck().says(stalls)).isEqualTo(stalls.note());
        assertThat(new CycleTimeCheck()
                        .run(analysis(timed), Dumps.UNKNOWN)
                        .get(0)
                        .note())
                .isEqualTo(Text.words("actuator.speed missing"));
        assertThat(new CycleTimeCheck().run(analysis(BOX), Dumps.UNKNOWN)).isEmpty();
    }

    /** A margin that is just kept is used up; half of it left is twice used, and less is worse and worse. */
    @Test
    void theMarginOfTheStroke() {
        assertThat(StrokeCheck.used(0.02, 0.005)).isCloseTo(0.25, within(1e-12));
        assertThat(StrokeCheck.used(0.005, 0.005)).isEqualTo(1);
        assertThat(StrokeCheck.used(0.0025, 0.005)).isEqualTo(2);
        assertThat(StrokeCheck.used(0, 0.005)).isCloseTo(2.5, within(1e-12));
        assertThat(StrokeCheck.used(-0.005, 0.005)).isCloseTo(3.5, within(1e-12));
        assertThat(StrokeCheck.used(-0.002, 0)).isCloseTo(4, within(1e-12));
        assertThat(StrokeCheck.used(0.002, 0)).isZero();
        assertThat(StrokeCheck.used(0, 0)).isEqualTo(2);
    }

    private static Analysis lengths(String yaml, double shortest, double longest) throws CannotComputeException {
        Analysis a = analysis(yaml);
        Pose first = a.poses().get(0);
        Pose last = a.poses().get(a.poses().size() - 1);
        return a.over(List.of(posed(first, shortest, 1), posed(last, longest, 1)), a.cases());
    }

    private static Pose posed(Pose p, double length, double angle) {
        return new Pose(p.tilt(), length, p.arm(), angle, p.swing(), p.framePin(), p.tankPin(), p.bodies(), p.tank());
    }

    /** Closed 800 mm, out 1700 mm, 5 mm wanted at each end. */
    @Test
    void whatIsLeftOfTheStrokeAtEachEnd() throws CannotComputeException {
        StrokeCheck check = new StrokeCheck();
        List<Finding> all = check.run(lengths(BOX, 0.82, 1.75));
        assertThat(all).extracting(Finding::id).containsExactly("stroke/drawn-in", "stroke/drawn-out");
        Finding in = all.get(0);
        Finding out = all.get(1);
        assertThat(in.demand()).isCloseTo(0.02, within(1e-12));
        assertThat(in.verdict()).isEqualTo(Verdict.PASS);
        assertThat(in.tilt()).isZero();
        assertThat(in.title()).isEqualTo("Actuator: stroke left when closed");
        assertThat(in.note()).isEqualTo(Text.words("stroke left at this end, against the margin wanted"));
        assertThat(check.says(in).metric())
                .isEqualTo("the actuator has 20 mm of stroke left before it is closed, 5 mm wanted");
        assertThat(out.demand()).isCloseTo(-0.05, within(1e-12));
        assertThat(out.capacity()).isCloseTo(0.005, within(1e-12));
        assertThat(out.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(out.tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
        assertThat(out.title()).isEqualTo("Actuator: stroke left when fully out");
        assertThat(out.note()).isEqualTo(Text.words("the actuator is too short by this much"));
        assertThat(check.says(out).metric())
                .isEqualTo(
                        "the actuator has no stroke left before it is fully out: it is 55 mm short, with the 5 mm spare"
                                + " that is wanted");
        assertThat(check.fix(out, Examples.read(BOX).limits()).metric())
                .startsWith("an actuator with 55 mm more stroke");
        Finding tight = check.run(lengths(BOX, 0.79, 1.0)).get(0);
        assertThat(tight.note()).isEqualTo(Text.words("the actuator is too long by this much"));
        assertThat(check.fix(tight, Examples.read(BOX).limits()).metric())
                .startsWith("an actuator that is 15 mm shorter when closed");
        assertThat(check.fix(in, Examples.read(BOX).limits()).metric())
                .startsWith("a little more room at that end of the stroke");
        assertThat(check.bounding()).containsExactly("stroke/drawn-in", "stroke/drawn-out");
        assertThat(check.bound("stroke/drawn-in")).isEqualTo("actuator too long when closed");
        assertThat(check.bound("stroke/drawn-out")).isEqualTo("stroke too short");
        assertThat(check.title("")).isEqualTo("Actuator: stroke");
    }

    /** Under 10 deg it fails, under 25 deg it is close; at these it does not. */
    @ParameterizedTest
    @CsvSource({"10, CLOSE", "9.9999, FAIL", "25, PASS", "24.9999, CLOSE", "40, PASS"})
    void theAngleAcrossTheArm(double degrees, Verdict verdict) throws CannotComputeException {
        Analysis a = analysis(BOX);
        Pose first = a.poses().get(0);
        Pose last = a.poses().get(a.poses().size() - 1);
        double angle = Math.toRadians(degrees);
        Finding f = new TransmissionCheck()
                .run(a.over(List.of(posed(first, 1, 1.25), posed(last, 1, angle)), a.cases()))
                .get(0);
        assertThat(f.verdict()).isEqualTo(verdict);
        assertThat(f.demand()).isEqualTo(angle);
        assertThat(f.utilisation()).isCloseTo(10 / degrees, within(1e-9));
        assertThat(f.tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
        assertThat(f.note().metric())
                .startsWith(
                        verdict == Verdict.PASS ? "the actuator pushes well across" : "the actuator points almost at");
    }
}
