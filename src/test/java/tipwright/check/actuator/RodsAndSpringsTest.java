// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.analysis.Stop;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Rods as columns, springs in their range, screws that the load may turn, and unlike actuators side by side. */
class RodsAndSpringsTest {
    private static final double E = 205e9;
    private static final String ONE =
            "{z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN," + " pull: 12 kN%s}}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg");

    private static Analysis analysis(String yaml) throws CannotComputeException {
        return Analyser.analyse(Examples.read(yaml));
    }

    private static String with(String more) {
        return swap(BOX, ONE.formatted(""), ONE.formatted(more));
    }

    /** Two side by side. */
    private static String two(String first, String second) {
        return swap(
                BOX,
                ONE.formatted(""),
                swap(ONE.formatted(first), "z: 0 mm", "z: -100 mm") + "\n      - "
                        + swap(ONE.formatted(second), "z: 0 mm", "z: 100 mm"));
    }

    private static void isMissing(Finding finding, String what) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isTrue();
        assertThat(finding.note()).isEqualTo(Text.words(what));
    }

    /** Slender, so by Euler: pi^2 E I / L^2 at each tilt's own length. */
    @Test
    void aRodBucklesAtTheLengthOfItsTilt() throws CannotComputeException {
        Analysis analysis = analysis(with(", rod: {diameter: 20 mm}"));
        Finding f = new BucklingCheck().run(analysis).get(0);
        double inertia = Math.PI * Math.pow(0.02, 4) / 64;
        double most = 0;
        double column = 0;
        double push = 0;
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                for (MotionDirection way : MotionDirection.ALL) {
                    double here = Math.PI
                            * Math.PI
                            * E
                            * inertia
                            / Math.pow(row.pose().length(), 2);
                    double force = row.balance(way).force();
                    if (force / here > most) {
                        most = force / here;
                        column = here;
                        push = force;
                    }
                }
            }
        }
        assertThat(f.id()).isEqualTo("buckling");
        assertThat(f.title()).isEqualTo("Actuator rod: buckling");
        assertThat(f.demand()).isCloseTo(push, within(1e-6 * push));
        assertThat(f.capacity()).isCloseTo(column, within(1e-6 * column));
        assertThat(f.utilisation()).isCloseTo(most * f.factor(), within(1e-9));
        assertThat(f.note()).isEqualTo(Text.words("bare rod over the whole length"));
        assertThat(new BucklingCheck().part(f)).isEqualTo("rod");
        Finding body = new BucklingCheck()
                .run(analysis(with(", rod: {diameter: 20 mm}, tube: {outside: 60 mm, inside: 50 mm, length: 500 mm}")))
                .get(0);
        assertThat(body.note()).isEqualTo(Text.words("rod and body"));
        assertThat(body.capacity()).isGreaterThan(f.capacity());
    }

    /** Each bears half of the push; a pull buckles none. */
    @Test
    void eachOfTwoRodsIsTold() throws CannotComputeException {
        Analysis both = analysis(two(", rod: {diameter: 20 mm}", ""));
        List<Finding> all = new BucklingCheck().run(both);
        assertThat(all).extracting(Finding::id).containsExactly("buckling/actuator-1", "buckling/actuator-2");
        assertThat(all.get(1).title()).isEqualTo("Actuator rod: buckling, actuator 2");
        isMissing(all.get(1), "actuator.rod missing");
        double one = new BucklingCheck()
                .run(analysis(with(", rod: {diameter: 20 mm}")))
                .get(0)
                .utilisation();
        assertThat(all.get(0).utilisation()).isCloseTo(one / 2, within(1e-6 * one));
        Design design = both.design();
        assertThat(BucklingCheck.usage(-500, 1000, design.factors()).demand()).isZero();
        assertThat(BucklingCheck.usage(500, 1000, design.factors()).demand()).isEqualTo(500);
    }

    @Test
    void stagesWithoutABoreAreMissing() throws CannotComputeException {
        String stages = swap(
                BOX,
                "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN",
                "kind: telescopic, closed: 800 mm, relief-pressure: 160 bar, stages: [{diameter: 80 mm, stroke: 450 mm},"
                        + " {diameter: 60 mm, stroke: 450 mm}]");
        isMissing(
                new BucklingCheck().run(analysis(stages)).get(0),
                "actuator.rod missing, and actuator.stages: bore missing");
        String bored = swap(
                stages,
                "80 mm, stroke: 450 mm",
                "80 mm, stroke: 450 mm, bore: 65 mm",
                "60 mm, stroke: 450 mm",
                "60 mm, stroke: 450 mm, bore: 40 mm");
        assertThat(new BucklingCheck().run(analysis(bored)).get(0).note())
                .isEqualTo(Text.words("each stage as far as it is out"));
    }

    /** Slope of the thread lead / (pi d) against mu / cos(flank): 5 over 20 pi is 0.0796, 0.08 / cos 15 deg is 0.0828. */
    @Test
    void aScrewHoldsByItsFriction() throws CannotComputeException {
        List<Finding> all = new BackDriveCheck()
                .run(analysis(two(", screw: {diameter: 20 mm, lead: 5 mm}", ", screw: {diameter: 20 mm, lead: 6 mm}")));
        assertThat(all).extracting(Finding::id).containsExactly("back-drive/actuator-1", "back-drive/actuator-2");
        Finding holds = all.get(0);
        assertThat(holds.demand()).isCloseTo(5 / (20 * Math.PI), within(1e-12));
        assertThat(holds.capacity()).isCloseTo(0.08 / Math.cos(Math.toRadians(15)), within(1e-12));
        assertThat(holds.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(holds.note()).isEqualTo(Text.words("slope of the thread against its friction"));
        assertThat(all.get(1).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(all.get(1).note()).isEqualTo(Text.words("the load turns the screw: a brake must hold it"));
    }

    @Test
    void aBrakeOrARatingHoldsWithoutAScrew() throws CannotComputeException {
        Finding brake = new BackDriveCheck()
                .run(analysis(with(", screw: {diameter: 20 mm, lead: 6 mm}, brake: true")))
                .get(0);
        assertThat(brake.id()).isEqualTo("back-drive");
        assertThat(brake.verdict()).isEqualTo(Verdict.PASS);
        assertThat(brake.utilisation()).isZero();
        assertThat(brake.note()).isEqualTo(Text.words("a brake holds the screw"));
        assertThat(new BackDriveCheck().run(analysis(with(", hold: 9 kN")))).isEmpty();
        isMissing(
                new BackDriveCheck().run(analysis(BOX)).get(0),
                "actuator.hold, actuator.screw or actuator.brake missing");
    }

    private static final String SPRING =
            "assists:\n  - {kind: extension-spring, name: side, from: {body: frame, at: [1200 mm,"
                    + " 400 mm]}, to: {body: tank, at: [400 mm, 1200 mm]}, free: 800 mm, rate: 2 N/mm, tension: 50 N, longest: %s}\n";

    /** From (0.8, 0) to a point 0.8 m from the pivot, a quarter turn off when stowed: 2 x 0.8 m x sin(45 deg - tilt / 2). */
    private static double stretched(double tilt) {
        return 1.6 * Math.sin(Math.PI / 4 - tilt / 2);
    }

    @Test
    void aSpringStaysWithinItsRange() throws CannotComputeException {
        Finding f = new AssistCheck()
                .run(analysis(BOX + SPRING.formatted("1250 mm")))
                .get(0);
        double longest = stretched(0);
        assertThat(new Vec2(0.8, -0.8).norm()).isCloseTo(longest, within(1e-12));
        assertThat(f.id()).isEqualTo("assist/side");
        assertThat(f.title()).isEqualTo("Side: stretch");
        assertThat(f.demand()).isCloseTo(1.25 - longest, within(1e-9));
        assertThat(f.utilisation()).isCloseTo(longest / 1.25, within(1e-9));
        assertThat(f.verdict()).isEqualTo(Verdict.PASS);
        assertThat(f.tilt()).isZero();
        double force = 50 + 2000 * (longest - 0.8);
        assertThat(f.note())
                .isEqualTo(Text.of("way left at its nearer end; gives up to {}", Text.amount(force, Kind.FORCE)));
        Finding over = new AssistCheck()
                .run(analysis(BOX + SPRING.formatted("1100 mm")))
                .get(0);
        assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(over.demand()).isCloseTo(1.1 - longest, within(1e-9));
        assertThat(over.note().metric()).startsWith("it is out of its range; gives up to ");
        assertThat(new AssistCheck().says(over).metric()).isEqualTo("Side is out of its range by 31 mm");
        assertThat(new AssistCheck().says(f).metric()).startsWith("Side: stretch: needs 0 mm, has 119 mm");
    }

    /** Pressed in by 400 mm it is 850 mm long; by 500 mm of 1500 mm, 1 m, which is nearer at the last tilt. */
    @Test
    void aGasSpringHasTwoEnds() throws CannotComputeException {
        String gas = swap(
                SPRING,
                "extension-spring",
                "gas-spring",
                "free: 800 mm, rate: 2 N/mm, tension: 50 N, longest: %s",
                "extended: %s, stroke: %s, force: 300 N, compressed-force: 400 N");
        Finding out = new AssistCheck()
                .run(analysis(BOX + gas.formatted("1250 mm", "400 mm")))
                .get(0);
        assertThat(out.utilisation()).isCloseTo(1 - (1.25 - stretched(0)) / 0.4, within(1e-9));
        assertThat(out.tilt()).isZero();
        Finding in = new AssistCheck()
                .run(analysis(BOX + gas.formatted("1500 mm", "500 mm")))
                .get(0);
        double least = stretched(Math.toRadians(10));
        assertThat(in.demand()).isCloseTo(least - 1, within(1e-9));
        assertThat(in.utilisation()).isCloseTo(1 - (least - 1) / 0.5, within(1e-9));
        assertThat(in.tilt()).isCloseTo(Math.toRadians(10), within(1e-9));
    }

    @Test
    void aTorsionSpringWithoutARateHasNoRange() throws CannotComputeException {
        String coil = "assists:\n  - {kind: torsion-spring, name: coil, pin: pivot, moment: 60 N m, rate: %s%s}\n";
        List<Finding> all = new AssistCheck().run(analysis(BOX + coil.formatted("0 N m/deg", ", wind-range: 30 deg")));
        assertThat(all).extracting(Finding::id).containsExactly("assist/coil-moment", "assist/coil-wind");
        assertThat(all.get(0).note().metric()).isEqualTo("assists: rated missing; it gives up to 60 N m");
        isMissing(all.get(1), "assists: rate above 0 missing");
        isMissing(
                new AssistCheck()
                        .run(analysis(BOX + coil.formatted("2 N m/deg", "")))
                        .get(1),
                "assists: wind-range missing");
    }

    private static Finding reach(Stop stop) throws CannotComputeException {
        Analysis a = analysis(swap(BOX, "{to: 10 deg}", "{from: 2 deg, to: 10 deg}"));
        return new ReachCheck().run(Copy.with(a, "stop", stop)).get(0);
    }

    /** Stopped at 6 of 2 to 10 degrees, half of the way is lacking. */
    @Test
    void whereTheLinkageStopsIsTold() throws CannotComputeException {
        Finding stops = reach(new Stop(Math.toRadians(6), "it jams at 6 deg"));
        assertThat(stops.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(stops.utilisation()).isCloseTo(1.5, within(1e-9));
        assertThat(stops.demand()).isCloseTo(Math.toRadians(10), within(1e-12));
        assertThat(stops.capacity()).isCloseTo(Math.toRadians(6), within(1e-12));
        assertThat(stops.tilt()).isCloseTo(Math.toRadians(6), within(1e-12));
        assertThat(new ReachCheck().says(stops).metric())
                .isEqualTo("the tank gets to 6 deg and not to 10 deg: it jams at 6 deg");
        Finding all = reach(null);
        assertThat(all.verdict()).isEqualTo(Verdict.PASS);
        assertThat(all.utilisation()).isZero();
        assertThat(all.note()).isEqualTo(Text.words("no dead centre, no jam"));
        assertThat(new ReachCheck().says(all)).isEqualTo(Text.words("the tank reaches full tilt"));
    }

    /** Of two that differ in what they reach the worse is told by its number, at each end its own. */
    @Test
    void theWorseOfTwoUnlikeStrokesIsTold() throws CannotComputeException {
        Analysis analysis = analysis(swap(
                two("", ""),
                "z: 100 mm, actuator: {kind: electric, closed: 800 mm",
                "z: 100 mm, actuator: {kind: electric, closed: 920 mm"));
        double shortest =
                analysis.poses().stream().mapToDouble(Pose::length).min().orElseThrow();
        double longest =
                analysis.poses().stream().mapToDouble(Pose::length).max().orElseThrow();
        List<Finding> all = new StrokeCheck().run(analysis);
        assertThat(all).hasSize(2);
        assertThat(all.get(0).demand()).isCloseTo(shortest - 0.92, within(1e-12));
        assertThat(all.get(0).note()).isEqualTo(Text.words("actuator 2 is too long by this much"));
        assertThat(all.get(1).demand()).isCloseTo(1.7 - longest, within(1e-12));
    }

    /** The weaker of two that share alike decides: twice its own rating. */
    @Test
    void togetherTheyBearAsMuchAsTheFirstAtItsRating() throws CannotComputeException {
        Design unlike = Examples.read(swap(
                two("", ""),
                "z: 100 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN",
                "z: 100 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 9 kN"));
        assertThat(Ratings.push(unlike, 1)).isCloseTo(18_000, within(1e-9));
        assertThat(Ratings.pull(unlike)).isCloseTo(24_000, within(1e-9));
    }
}
