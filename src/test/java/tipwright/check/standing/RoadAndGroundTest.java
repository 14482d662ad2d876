// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.One;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.check.standing.Footprint.Mass;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** A box on the road and on the ground: rules by hand with whole numbers, and what is told where something is missing. */
class RoadAndGroundTest {
    private static final double G = 9.80665;
    private static final double EMPTY = 5 * 0.004 * 7850;
    private static final String BOX = swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 10 deg");
    private static final String INSERT = "{z: %s, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN}}";
    private static final String FRAME = "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 0 mm]}\n";
    private static final String FEET =
            "outline: [[-800 mm, -500 mm], [700 mm, -500 mm], [700 mm, 500 mm], [-800 mm, 500 mm]]";

    private static void missing(String yaml, String id, String why) throws CannotComputeException {
        Finding found = One.of(yaml, id);
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).isTrue();
        assertThat(found.note().metric()).isEqualTo(why);
    }

    /** 1 kN, 0.8 of it along: it lifts by its height over the pivot, holds by its way behind it, and turns over when it is before it. */
    @ParameterizedTest
    @CsvSource({
        "-0.5, 0.25, 0, 200, 500",
        "-0.5, -0.25, 0, 200, 500",
        "0.5, 0.25, 0, 700, 0",
        "0.5, 0.25, 125, 700, 125",
        "-0.5, 0.25, 125, 200, 625",
        "0, 0, 0, 0, 0",
    })
    void thePullAlongLiftsTheTank(double x, double y, double tie, double lifts, double holds) {
        Usage usage = RoadCheck.lifting(1000, new Vec2(x, y), tie, 1.25);
        assertThat(usage).isEqualTo(new Usage(lifts, holds, 1.25, Kind.MOMENT));
    }

    /**
     * Empty the box's centre is 0.4 m behind the pivot and 0.5 m over it: 0.8 W 0.5 against W 0.4 / factor. What ties it down counts by
     * its way behind the pivot; before it, not at all.
     */
    @Test
    void whatKeepsTheEmptyTankDown() throws CannotComputeException {
        double weight = EMPTY * G;
        Finding bare = One.of(BOX + "road: {loaded: no}\n", "road/lift");
        assertThat(bare.demand()).isCloseTo(0.8 * weight * 0.5, within(1e-6));
        assertThat(bare.capacity()).isCloseTo(0.4 * weight, within(1e-6));
        assertThat(bare.note().metric()).isEqualTo("nothing but the actuator ties it down");
        assertThat(bare.verdict()).isEqualTo(Verdict.FAIL);
        String lock = "road: {loaded: no, lock: [%s mm, 300 mm, 0 mm], rating: 5 kN, locks: 2}\n";
        Finding tied = One.of(BOX + lock.formatted("-600"), "road/lift");
        assertThat(tied.capacity()).isCloseTo(0.4 * weight + 2 * 5000 * 1.0, within(1e-6));
        assertThat(tied.note().metric()).isEqualTo("with what ties it down");
        assertThat(One.of(BOX + lock.formatted("500"), "road/lift").capacity()).isEqualTo(bare.capacity());
        missing(
                BOX + swap(lock.formatted("-600"), ", rating: 5 kN", ""),
                "road/lift",
                "road.rating missing; the tank's weight alone does not keep it down");
        // a centre half as high and far behind the pivot needs no tie
        String low = swap(
                BOX,
                "at: [400 mm, 400 mm]",
                "at: [900 mm, 700 mm]",
                "tank-pin: [-450 mm, 400 mm]",
                "tank-pin: [-450 mm, 450 mm]");
        Finding alone = One.of(low + "road: {loaded: no}\n", "road/lift");
        assertThat(alone.utilisation())
                .isCloseTo(Objects.requireNonNull(alone).factor() * 0.8 * 0.2 / 0.9, within(1e-9));
        assertThat(alone.note().metric()).isEqualTo("its weight alone keeps it down");
        assertThat(alone.verdict()).isEqualTo(Verdict.PASS);
    }

    /** Half of the weight and 0.8 of it along on each bearing; half of it across on the one that locates the shaft. */
    @Test
    void bearingsOnTheRoad() throws CannotComputeException {
        for (String loaded : List.of("no", "yes")) {
            double weight = (EMPTY + (loaded.equals("yes") ? 1400 : 0)) * G;
            String road = "road: {loaded: " + loaded + "}\n";
            Finding rests = One.of(BOX + road, "road/bearing-2");
            assertThat(rests.demand()).isCloseTo(weight / 2 * Math.hypot(0.8, 1), within(1e-6 * weight));
            assertThat(rests.capacity()).isEqualTo(19_000);
            assertThat(rests.note().metric()).isEqualTo("half of the pull along with half of the weight");
            String grip = swap(BOX, "c0: 19 kN", "c0: 19 kN, c: 30 kN");
            Finding across = One.of(grip + road, "road/across");
            assertThat(across.demand()).isCloseTo(weight / 2, within(1e-6 * weight));
            // a fifth of the dynamic rating
            assertThat(across.capacity()).isCloseTo(6000, within(1e-9));
            assertThat(across.note().metric()).isEqualTo("push along the shaft on the locating bearing");
        }
        missing(
                BOX + "road: {loaded: no}\n",
                "road/across",
                "what the locating bearing holds along the shaft is not known; 769.8 N push on it");
        missing(swap(BOX, ", c0: 19 kN", "") + "road: {loaded: no}\n", "road/bearing-1", "bearing.c0 missing");
        String bush =
                swap(BOX, INSERT.formatted("500 mm"), "{z: 500 mm, bearing: {kind: bush, bore: 40 mm, length: 50 mm}}");
        assertThat(One.all(bush + "road: {loaded: no}\n", "road").stream().map(Finding::id))
                .containsExactly("road/lift", "road/bearing-1", "road/across");
        // a bush does not tell what it holds along the shaft
        String first = swap(
                BOX, INSERT.formatted("-500 mm"), "{z: -500 mm, bearing: {kind: bush, bore: 40 mm, length: 50 mm}}");
        missing(
                first + "road: {loaded: no}\n",
                "road/across",
                "what the locating bearing holds along the shaft is not known; 769.8 N push on it");
    }

    /** On a vehicle the road is asked for; on the ground alone it is not. */
    @Test
    void theRoadIsAskedForOnAVehicle() throws CannotComputeException {
        assertThat(One.all(BOX, "road")).isEmpty();
        assertThat(One.all(BOX + "supports: {" + FEET + "}\n", "road")).isEmpty();
        String van = BOX + "supports: {" + FEET + ", vehicle: {mass: 900 kg, centre: [0 m, 0 m, 0 m]}}\n";
        missing(van, "road", "road missing");
    }

    /** tan(slope) against friction: the steeper of the ground, 3 by 4 in 100, and of the slope asked for. */
    @Test
    void skiddingOnTheSteeperSlope() throws CannotComputeException {
        missing(BOX, "skid", "supports missing");
        String feet = "supports: {" + FEET + ", friction: 0.5%s}\n";
        double ground = Math.hypot(Math.tan(Math.toRadians(3)), Math.tan(Math.toRadians(4)));
        String site = "site: {grade: 3 deg, cross-slope: 4 deg}\n";
        Finding stands = One.of(BOX + feet.formatted("") + site, "skid");
        assertThat(stands.demand()).isCloseTo(ground, within(1e-3 * ground));
        assertThat(stands.capacity()).isEqualTo(0.5);
        Finding asked = One.of(BOX + feet.formatted(", slope: 10 deg") + site, "skid");
        assertThat(asked.demand()).isCloseTo(Math.tan(Math.toRadians(10)), within(1e-12));
        assertThat(asked.note().metric()).isEqualTo("slope as rise over run; a slope of 10.0 deg");
        double skids = Math.toDegrees(Math.atan(0.5 / asked.factor()));
        assertThat(new SkidCheck().says(asked).metric())
                .isEqualTo("on a slope of 10.0 deg; it would skid from "
                        + Text.number(skids, 1).metric() + " deg on, with its margin");
        assertThat(One.of(BOX + feet.formatted(", slope: 2 deg") + site, "skid").demand())
                .isEqualTo(stands.demand());
    }

    /** Where it may stand any way round, it stands straight down that slope too. */
    @Test
    void skiddingOnTheSlopeAnyWayRound() throws CannotComputeException {
        String feet = "supports: {" + FEET + ", friction: 0.5%s}\n";
        String site = "site: {grade: 3 deg, cross-slope: 4 deg, any-way: 19 deg}\n";
        for (String asked : new String[] {"", ", slope: 10 deg"}) {
            Finding any = One.of(BOX + feet.formatted(asked) + site, "skid");
            assertThat(any.demand()).isCloseTo(Math.tan(Math.toRadians(19)), within(1e-12));
            assertThat(any.verdict()).isEqualTo(Verdict.FAIL);
        }
        Finding steeper = One.of(BOX + feet.formatted(", slope: 25 deg") + site, "skid");
        assertThat(steeper.demand()).isCloseTo(Math.tan(Math.toRadians(25)), within(1e-12));
    }

    @Test
    void whatOverturningNeedsToKnow() throws CannotComputeException {
        missing(BOX, "tip-over", "supports missing");
        missing(BOX + FRAME + "supports: {" + FEET + "}\n", "tip-over", "supports.y missing, and no ground");
        missing(BOX + "supports: {" + FEET + ", y: -700 mm}\n", "tip-over", "frame.mass or frame.centre missing");
        String yaml = BOX + FRAME + "supports: {" + FEET + ", y: -700 mm}\n";
        String ground = BOX + FRAME + "ground: {y: -700 mm}\nsupports: {" + FEET + "}\n";
        assertThat(One.all(yaml, "tip-over")).isEqualTo(One.all(ground, "tip-over"));
        assertThat(One.all(yaml, "tip-over").stream().map(Finding::id))
                .containsExactly("tip-over/as-it-stands", "tip-over/supports");
        assertThat(One.of(yaml, "tip-over/supports").note().metric())
                .startsWith("supports.rating missing; the most on one is ");
    }

    /** The feet that bear the most are shown for the load on one of them; for overturning all of them. */
    @Test
    void whichFeetAreConcerned() throws CannotComputeException {
        TipOverCheck check = new TipOverCheck();
        Analysis analysis = Analyser.analyse(
                Examples.read(BOX + FRAME + "supports: {" + FEET + ", y: -700 mm, rating: 5 kN, slope: 5 deg}\n"));
        List<Finding> found = check.run(analysis);
        assertThat(found.stream().map(Finding::title))
                .containsExactly(
                        "Machine: overturning, as parked in the file",
                        "Machine: overturning, parked any way round",
                        "Wheels and feet: load");
        assertThat(check.concerned(analysis, found.get(2)).words()).startsWith("support ");
        assertThat(check.concerned(analysis, found.get(0))).isEqualTo(Concerned.of(check.looksAt(), found.get(0)));
        Analysis unknown = Analyser.analyse(Examples.read(BOX + FRAME + "supports: {" + FEET + "}\n"));
        assertThat(check.concerned(unknown, found.get(2))).isEqualTo(Concerned.of(check.looksAt(), found.get(2)));
        Findings make = new Findings(check, analysis.design());
        assertThat(check.says(make.compare("any way round", 0.25, 0.5, 1, Kind.ANGLE, Extreme.NOWHERE, ""))
                        .metric())
                .isEqualTo(
                        "parked any way round, the machine keeps its margin on slopes up to 28.65 deg, 14.32 deg wanted");
        assertThat(check.says(make.compare("as it stands", 100, 400, 2, Kind.MOMENT, Extreme.NOWHERE, ""))
                        .metric())
                .isEqualTo(
                        "parked as in the file, 100 N m turn the machine over and 200 N m hold it, the margin taken off");
    }

    /** Without a frame nothing of it catches wind. */
    @Test
    void windOnADesignWithoutAFrame() {
        FrameWind none = FrameWind.of(Examples.read(BOX));
        assertThat(none.shown(new Vec3(1, 0, 0))).containsExactly(0, 0);
        assertThat(none.caught(new Vec3(1, 0, 0)).metric()).isEqualTo("none of the frame (frame.members missing)");
        assertThat(FrameWind.NONE.shown(new Vec3(0, 0, 1))).containsExactly(0, 0);
    }

    /** Springs a little harder than those on which a weight runs away come to rest so slowly that it counts as tipping over. */
    @Test
    void nearTheLimitOfItsSpringsItCountsAsTippingOver() {
        List<Vec2> feet = List.of(new Vec2(-1, -0.75), new Vec2(1, -0.75), new Vec2(1, 0.75), new Vec2(-1, 0.75));
        double limit = 1200 * G * 2 / (4 * 0.75 * 0.75);
        List<Double> springs = List.of(1.02 * limit, 1.02 * limit, 1.02 * limit, 1.02 * limit);
        Mass high = new Mass(1200, new Vec3(0, 2, 0.001));
        assertThat(new SpringFeet(feet, springs, 0).rest(up -> List.of(high), new Vec3(0, 1, 0), Vec2.ZERO))
                .isNull();
    }
}
