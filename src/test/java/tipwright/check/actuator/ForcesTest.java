// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;

/** What is made of the actuator's force, made up as a function of the tilt in degrees: 10 of them, a degree a step. */
class ForcesTest {
    private static final String ELECTRIC = "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg", "pull: 12 kN", "pull: 8 kN");
    private static final String SINGLE = swap(
            Examples.BOX,
            "80 deg",
            "10 deg",
            ELECTRIC,
            "kind: hydraulic, bore: 60 mm, rod: {diameter: 35 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar,"
                    + " acting: single");
    private static final String ROPE = swap(
            Examples.BOX,
            "80 deg",
            "10 deg",
            ELECTRIC,
            "kind: rope, closed: 800 mm, stroke: 2 m, pull: 12 kN, hold: 14 kN",
            "[-600 mm, -500 mm]",
            "[-500 mm, 3000 mm]");
    private static final String PULLING = swap(
            BOX,
            "frame-pin: [-600 mm, -500 mm]",
            "frame-pin: [1800 mm, 600 mm]",
            "tank-pin: [-450 mm, 400 mm]",
            "tank-pin: [400 mm, 1600 mm]",
            "stroke: 900 mm",
            "stroke: 1500 mm");

    private static Balance balance(Balance b, double force) {
        return new Balance(force, b.pivot(), b.bearings(), b.drive(), b.joints(), b.couples());
    }

    /** Its first load cases, each with a force at rest, 100 N more while raising and less while lowering. */
    private static Analysis forced(String yaml, DoubleUnaryOperator... forces) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        List<CaseResult> cases = new ArrayList<>();
        for (int i = 0; i < forces.length; i++) {
            List<Row> rows = new ArrayList<>();
            for (Row r : analysis.cases().get(i).rows()) {
                double force = forces[i].applyAsDouble(Math.toDegrees(r.tilt()));
                rows.add(new Row(
                        r.pose(),
                        r.load(),
                        r.centroid(),
                        balance(r.rest(), force),
                        balance(r.raise(), force + 100),
                        balance(r.lower(), force - 100)));
            }
            cases.add(new CaseResult(analysis.cases().get(i).load(), rows));
        }
        return analysis.with(cases);
    }

    private static Finding over(String yaml, DoubleUnaryOperator... forces) throws CannotComputeException {
        List<Finding> all = new OverCentreCheck().run(forced(yaml, forces));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static double crossing(double... forces) throws CannotComputeException {
        List<Row> rows = forced(BOX, x -> 0).cases().get(0).rows();
        List<Row> some = new ArrayList<>();
        for (int i = 0; i < forces.length; i++) {
            Row r = rows.get(i);
            Balance b = balance(r.rest(), forces[i]);
            some.add(new Row(r.pose(), r.load(), r.centroid(), b, b, b));
        }
        return Math.toDegrees(OverCentreCheck.crossing(some));
    }

    /** Between two tilts by a straight line; where it is nothing at one of them, there; from nothing on it does not change. */
    @Test
    void theForceChangesSignWhereTheLineCrosses() throws CannotComputeException {
        assertThat(crossing(300, -100)).isCloseTo(0.75, within(1e-9));
        assertThat(crossing(-100, 300, 400)).isCloseTo(0.25, within(1e-9));
        assertThat(crossing(300, 200, -200, 200)).isCloseTo(1.5, within(1e-9));
        assertThat(crossing(300, 0, -100)).isCloseTo(1, within(1e-9));
        assertThat(crossing(0, -100, -100)).isNaN();
        assertThat(crossing(0, 100, -100)).isCloseTo(1.5, within(1e-9));
        assertThat(crossing(100, 200, 300)).isNaN();
        assertThat(crossing(-100)).isNaN();
        assertThat(OverCentreCheck.utilisation(4000, 8000)).isEqualTo(0.5);
        assertThat(OverCentreCheck.utilisation(4000, 0)).isEqualTo(2);
    }

    @Test
    void oneSignAllTheWayIsFine() throws CannotComputeException {
        Finding pushes = over(BOX, x -> 1000 - 100 * x, x -> 2000);
        assertThat(pushes.verdict()).isEqualTo(Verdict.PASS);
        assertThat(pushes.note())
                .isEqualTo(Text.words("the actuator pushes at every tilt; the load never goes over by itself"));
        assertThat(pushes.demand()).isZero();
        assertThat(pushes.capacity()).isEqualTo(8000);
        assertThat(pushes.utilisation()).isZero();
        assertThat(new OverCentreCheck().says(pushes)).isEqualTo(pushes.note());
        assertThat(over(BOX, x -> -100 * x - 1).note().metric()).startsWith("the actuator pulls at every tilt");
        assertThat(over(BOX, x -> 0).note().metric()).startsWith("the actuator pushes at every tilt");
    }

    /** Push to pull at 2.5 deg; the pull of 3 kN at the end against 8 kN. */
    @Test
    void oneOrTwoLoadsAreNamed() throws CannotComputeException {
        Finding one = over(BOX, x -> 1000 - 400 * x, x -> 500);
        assertThat(one.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(one.demand()).isCloseTo(3000, within(1e-6));
        assertThat(one.utilisation()).isCloseTo(0.375, within(1e-9));
        assertThat(one.tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
        assertThat(one.worst().direction()).isEqualTo(MotionDirection.RESTING);
        assertThat(one.note().metric())
                .startsWith("the push turns into a pull: ")
                .contains(" at 2.5 deg; slack in the pins lets the tank drop there, so go slowly");
        assertThat(new OverCentreCheck().says(one).metric())
                .isEqualTo(
                        "the tank goes over by itself and pulls the other way with 3 kN; the actuator holds 8 kN that"
                                + " way");
        assertThat(over(BOX, x -> 1000 - 400 * x, x -> -1000 + 200 * x).note().metric())
                .startsWith("the force changes direction: ")
                .contains(" at 2.5 deg, ")
                .contains(" at 5.0 deg; slack");
        assertThat(over(BOX, x -> -900 + 200 * x).note().metric()).startsWith("the pull turns into a push: ");
    }

    @Test
    void threeLoadsAreToldByTheRange() throws CannotComputeException {
        assertThat(over(BOX, x -> 1000 - 400 * x, x -> 1000 - 200 * x, x -> 1000 - 125 * x)
                        .note()
                        .metric())
                .isEqualTo(
                        "the push turns into a pull at 2.5 deg to 8.0 deg, depending on the load; slack in the pins lets"
                                + " the tank drop there, so go slowly");
    }

    /** One load pushes and another pulls, at every tilt. */
    @Test
    void aLoadThatLeavesIsToldByBoth() throws CannotComputeException {
        Finding leaves = over(BOX, x -> 500, x -> -700);
        assertThat(leaves.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(leaves.demand()).isEqualTo(700);
        assertThat(leaves.note().metric())
                .startsWith("it pushes with the load '")
                .endsWith("'; slack in the pins lets the tank jump as the load leaves, let it leave slowly");
        Finding cannot = over(SINGLE, x -> 500, x -> -700);
        assertThat(cannot.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(cannot.utilisation()).isEqualTo(2);
        assertThat(cannot.note().metric())
                .startsWith("it pushes with the load '")
                .endsWith("', which this cylinder cannot hold back");
    }

    @Test
    void whatCannotPullCannotHoldBack() throws CannotComputeException {
        Finding falls = over(SINGLE, x -> 1000 - 400 * x);
        assertThat(falls.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(falls.capacity()).isZero();
        assertThat(falls.note().metric())
                .startsWith("this cylinder cannot hold back a tank that goes over by itself: ")
                .endsWith(" at 2.5 deg");
        assertThat(over(ROPE, x -> -1000 + 400 * x).note().metric())
                .startsWith("this rope cannot hold back a tank that goes over by itself: ");
    }

    /** Where it pulls the tank over, the push back counts, against the rated push. */
    @Test
    void theWayBackOfOneThatPullsIsAPush() throws CannotComputeException {
        Finding f = over(PULLING, x -> -1000 + 400 * x);
        assertThat(f.demand()).isCloseTo(3000, within(1e-6));
        assertThat(f.capacity()).isEqualTo(12_000);
        assertThat(f.verdict()).isEqualTo(Verdict.CLOSE);
        Finding none = over(PULLING, x -> -1000);
        assertThat(none.demand()).isZero();
    }

    private static Finding push(String yaml, DoubleUnaryOperator... forces) throws CannotComputeException {
        return new PushCheck().run(forced(yaml, forces)).get(0);
    }

    private static Finding pull(String yaml, DoubleUnaryOperator... forces) throws CannotComputeException {
        return new PullCheck().run(forced(yaml, forces)).get(0);
    }

    /** 100 N more while raising. */
    @Test
    void theLargestPushIsHeldAgainstTheRating() throws CannotComputeException {
        Finding f = push(BOX, x -> 1000 + 100 * x, x -> 500);
        assertThat(f.demand()).isCloseTo(2100, within(1e-6));
        assertThat(f.capacity()).isEqualTo(12_000);
        assertThat(f.utilisation()).isCloseTo(2100 * f.factor() / 12_000, within(1e-12));
        assertThat(f.worst().direction()).isEqualTo(MotionDirection.RAISING);
        assertThat(f.note()).isEqualTo(Text.words("largest push, going up"));
        assertThat(new PushCheck().says(f).metric()).startsWith("the actuator must push 2.1 kN and is good for ");
        Finding never = push(BOX, x -> -1000);
        assertThat(never.demand()).isZero();
        assertThat(never.utilisation()).isZero();
        assertThat(never.note()).isEqualTo(Text.words("the actuator never pushes"));
        assertThat(new PushCheck().says(never)).isEqualTo(Text.words("the actuator never pushes"));
        assertThat(push(BOX, x -> -100).note()).isEqualTo(Text.words("the actuator never pushes"));
    }

    /** The same push all the way is worst where the narrower stage moves, past 950 mm: 60 mm at 160 bar and 95 %. */
    @Test
    void theStageThatMovesCounts() throws CannotComputeException {
        String stages = swap(
                BOX,
                "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 8 kN",
                "kind: telescopic, closed: 800 mm, relief-pressure: 160 bar, stages: [{diameter: 80 mm, stroke: 150 mm},"
                        + " {diameter: 60 mm, stroke: 750 mm}]");
        Finding f = push(stages, x -> 1000);
        double narrow = Math.PI / 4 * 0.06 * 0.06 * 160e5 * 0.95;
        assertThat(f.capacity()).isCloseTo(narrow, within(1e-6 * narrow));
        assertThat(f.tilt()).isPositive();
    }

    @Test
    void aRopeCannotPush() throws CannotComputeException {
        Finding never = push(ROPE, x -> -1000);
        assertThat(never.verdict()).isEqualTo(Verdict.PASS);
        assertThat(never.worst()).isEqualTo(Extreme.NOWHERE);
        assertThat(never.note()).isEqualTo(Text.words("the rope is never asked to push"));
        Finding slack = push(ROPE, x -> 50 + 10 * x);
        assertThat(slack.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(slack.demand()).isCloseTo(250, within(1e-6));
        assertThat(Math.toDegrees(slack.tilt())).isCloseTo(10, within(1e-9));
        assertThat(slack.note()).isEqualTo(Text.words("a rope cannot push: it goes slack and the tank falls into it"));
        assertThat(new PushCheck().says(slack).metric()).isEqualTo("the actuator must push 250 N and cannot push");
        assertThat(new PushCheck().fix(slack, Examples.read(ROPE).limits()).metric())
                .isEqualTo("an actuator that can push, or pins so placed that it never has to");
        assertThat(push(ROPE, x -> -100).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void theLargestPullIsHeldAgainstTheRating() throws CannotComputeException {
        Finding f = pull(BOX, x -> -1000 - 100 * x, x -> 500);
        assertThat(f.demand()).isCloseTo(2100, within(1e-6));
        assertThat(f.capacity()).isEqualTo(8000);
        assertThat(f.worst().direction()).isEqualTo(MotionDirection.LOWERING);
        assertThat(f.note()).isEqualTo(Text.words("largest pull"));
        assertThat(new PullCheck().says(f).metric()).startsWith("the actuator must pull 2.1 kN and is good for ");
        Finding never = pull(BOX, x -> 1000);
        assertThat(never.verdict()).isEqualTo(Verdict.PASS);
        assertThat(never.capacity()).isEqualTo(8000);
        assertThat(never.note()).isEqualTo(Text.words("the actuator never pulls"));
        assertThat(new PullCheck().says(never)).isEqualTo(Text.words("the actuator never pulls"));
        Finding cannot = pull(SINGLE, x -> -50);
        assertThat(cannot.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(cannot.note()).isEqualTo(Text.words("but this cylinder cannot pull"));
        assertThat(new PullCheck().says(cannot).metric()).isEqualTo("the actuator must pull 150 N and cannot pull");
        assertThat(new PullCheck().fix(cannot, Examples.read(SINGLE).limits()).metric())
                .isEqualTo("an actuator that can pull, or pins so placed that it never has to");
    }

    @Test
    void theForceAtRestIsHeldEitherWay() throws CannotComputeException {
        String held = swap(BOX, "pull: 8 kN", "pull: 8 kN, hold: 9 kN");
        Finding f = new HoldCheck().run(forced(held, x -> -3000, x -> 2000)).get(0);
        assertThat(f.demand()).isEqualTo(3000);
        assertThat(f.capacity()).isEqualTo(9000);
        assertThat(f.worst().direction()).isEqualTo(MotionDirection.RESTING);
        assertThat(new HoldCheck().says(f).metric())
                .startsWith("stopped, the actuator must hold 3 kN and is good for ");
        Finding missing = new HoldCheck().run(forced(BOX, x -> 1)).get(0);
        assertThat(missing.missing()).isTrue();
        assertThat(missing.note()).isEqualTo(Text.words("actuator.hold missing"));
    }

    /** 60 mm at 160 bar and 95 %: 43.0 kN; the pump's own relief takes its share off, and adds none. */
    @ParameterizedTest
    @CsvSource({"'', 160", "', relief: 80 bar', 80", "', relief: 200 bar', 160"})
    void aCylinderGivesNoMoreThanTheReliefLets(String relief, double bar) throws CannotComputeException {
        double full = Math.PI / 4 * 0.06 * 0.06 * bar * 1e5 * 0.95;
        for (String supply : List.of(
                "supply: {kind: pump, flow: 8 L/min, orifice: {diameter: 3 mm}" + relief + "}\n",
                "supply: {kind: hand-pump, per-stroke: 0.02 L" + relief + "}\n")) {
            assertThat(Ratings.push(Examples.read(SINGLE + supply), 1)).isCloseTo(full, within(1e-6 * full));
        }
        assertThat(Ratings.relief(Examples.read(SINGLE))).isEqualTo(160e5);
        assertThat(Ratings.relief(Examples.read(BOX))).isInfinite();
        assertThat(Ratings.pull(Examples.read(BOX))).isEqualTo(8000);
    }

    /**
     * Of what a cylinder of oil on one side cannot hold at all, the most is told, not the first: it draws 100 N at 1 deg and, on a
     * straight line, 1 kN at 10 deg. Source: p = F / A with no oil on the ring.
     */
    @Test
    void ofWhatCannotBeHeldTheMostIsTold() throws CannotComputeException {
        String rated = swap(SINGLE, "acting: single", "acting: single, hold: 20 kN");
        Finding hold = new HoldCheck()
                .run(forced(rated, x -> 50 - 50 * x, x -> -100 * x))
                .get(0);
        assertThat(hold.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(hold.has()).isZero();
        assertThat(hold.needs()).isCloseTo(1000, within(1e-6));
        assertThat(hold.tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
    }
}
