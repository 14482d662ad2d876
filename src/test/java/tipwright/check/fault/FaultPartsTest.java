// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.MadeUpCheck;
import tipwright.check.One;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Factors;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.Site;
import tipwright.design.joint.Fastening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/** What goes round the rules when something goes wrong, with rules that tell what they were shown. */
class FaultPartsTest {
    private static final String BOX = swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 10 deg");
    private static final String TWO = swap(
            BOX,
            "{z: 0 mm, actuator",
            "{z: -300 mm, actuator",
            "tilt: {to",
            "      - {z: 300 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}\ntilt: {to");

    /** A rule that finds what it is told to. */
    private static Check told(String id, Function<Analysis, List<Finding>> found) {
        return new MadeUpCheck(id, id.equals("slow") ? Set.of(Trait.SLOW) : Set.of(Trait.BEARS_DRIVE), found);
    }

    private static Findings of(String id, Analysis analysis) {
        return new Findings(told(id, a -> List.of()), analysis.design());
    }

    private static Finding used(String id, Analysis analysis, String part, double use) {
        return of(id, analysis).compare(part, use, 1, 1, Kind.RATIO, Extreme.NOWHERE, "");
    }

    private static Analysis analysis(String yaml) throws CannotComputeException {
        return Analyser.analyse(Examples.read(yaml));
    }

    private static Findings make(Analysis analysis) {
        return new Findings(new WhatIfCheck(List.of()), analysis.design());
    }

    /** 100 mm over 1 m of track and over 2 m between the axles, each way, on top of the site's own slopes; no more than 45 deg. */
    @Test
    void aWheelSinksToEachSideAndEachEnd() throws CannotComputeException {
        List<Site> sites = new ArrayList<>();
        Check told = told("told", a -> {
            sites.add(a.design().site());
            return List.of();
        });
        Check use = told(
                "use",
                a -> List.of(used("use", a, "", 0.1 + Math.abs(a.design().site().grade()))));
        String yaml = BOX + "site: {grade: 2 deg, cross-slope: -1 deg}\n"
                + "what-if: {track: 1 m, wheelbase: 2 m, wheel-drop: 100 mm}\n";
        Analysis analysis = analysis(yaml);
        Finding worst = WhatIfWheel.find(make(analysis), analysis, List.of(told, use));
        double along = Math.atan(0.05);
        double across = Math.atan(0.1);
        double grade = Math.toRadians(2);
        double cross = Math.toRadians(-1);
        assertThat(sites).hasSize(4);
        double[][] expected = {
            {grade + along, cross + across},
            {grade - along, cross + across},
            {grade + along, cross - across},
            {grade - along, cross - across}
        };
        for (int i = 0; i < 4; i++) {
            assertThat(sites.get(i).grade()).isCloseTo(expected[i][0], within(1e-12));
            assertThat(sites.get(i).crossSlope()).isCloseTo(expected[i][1], within(1e-12));
        }
        assertThat(worst.utilisation()).isCloseTo(0.1 + grade + along, within(1e-12));
        sites.clear();
        Analysis steep = analysis(BOX + "what-if: {track: 1 m, wheel-drop: 1.5 m}\n");
        WhatIfWheel.find(make(steep), steep, List.of(told, use));
        assertThat(sites).hasSize(2);
        assertThat(sites.get(0).crossSlope()).isEqualTo(Math.toRadians(45));
        assertThat(sites.get(1).crossSlope()).isEqualTo(-Math.toRadians(45));
        Analysis bare = analysis(BOX);
        Finding missing = WhatIfWheel.find(make(bare), bare, List.of(told));
        assertThat(missing.missing()).isTrue();
        assertThat(missing.note().metric()).isEqualTo("what-if.track missing");
    }

    /** What fails as it fails on the level is not for the wheel to answer for, unless nothing else is left; slow rules are not asked. */
    @Test
    void whatIsNoWorseThanBeforeIsLeftOut() throws CannotComputeException {
        Analysis analysis = analysis(BOX + "what-if: {track: 1 m, wheel-drop: 100 mm}\n");
        Check same = told("same", a -> List.of(used("same", a, "", 2)));
        Check lean = told(
                "lean",
                a -> List.of(
                        used("lean", a, "", 0.5 + Math.abs(a.design().site().crossSlope()))));
        Check slow = told("slow", a -> {
            throw new AssertionError("asked");
        });
        Finding worst = WhatIfWheel.find(make(analysis), analysis, List.of(same, lean, slow));
        assertThat(worst.utilisation()).isCloseTo(0.5 + Math.atan(0.1), within(1e-9));
        assertThat(WhatIfWheel.find(make(analysis), analysis, List.of(same)).utilisation())
                .isEqualTo(2);
        Check worse = told(
                "worse",
                a -> List.of(
                        used("worse", a, "", 1.5 + Math.abs(a.design().site().crossSlope()))));
        assertThat(WhatIfWheel.find(make(analysis), analysis, List.of(same, worse))
                        .utilisation())
                .isCloseTo(1.5 + Math.atan(0.1), within(1e-9));
        // what is close as it was is left out as well; what passes is not
        Check close = told("close", a -> List.of(used("close", a, "", 0.9)));
        assertThat(WhatIfWheel.find(make(analysis), analysis, List.of(close, lean))
                        .utilisation())
                .isCloseTo(0.5 + Math.atan(0.1), within(1e-9));
        Check passes = told("passes", a -> List.of(used("passes", a, "", 0.7)));
        assertThat(WhatIfWheel.find(make(analysis), analysis, List.of(passes, lean))
                        .utilisation())
                .isEqualTo(0.7);
    }

    /** Coarse is not finer than it was, not coarser than 5 deg where it was not, and never more than all of the way. */
    @Test
    void tiltsForAWheelAreFew() {
        String[][] steps = {
            {"to: 80 deg", "5"}, {"to: 80 deg, step: 7 deg", "7"}, {"to: 3 deg", "3"}, {"from: 70 deg, to: 73 deg", "3"}
        };
        for (String[] step : steps) {
            double made = WhatIfWheel.coarse(Examples.read(swap(Examples.BOX, "to: 80 deg", step[0])))
                    .tilt()
                    .step();
            assertThat(Math.toDegrees(made)).isCloseTo(Double.parseDouble(step[1]), within(1e-9));
        }
    }

    /** Pushed and pulled by so much, without factors; the rules of bearings, shaft and other pins are not asked. */
    @Test
    void whatBearsTheDriveIsAskedAgain() throws CannotComputeException {
        String lug = "lug: {width: 60 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm}";
        Analysis analysis = analysis(BOX + "fastenings:\n  - {joint: bearing-1, " + lug + "}\n  - {joint: frame-pin, "
                + lug + "}\n  - {joint: tank-pin, " + lug + "}\n");
        List<Analysis> shown = new ArrayList<>();
        Check rod = told("rod", a -> {
            shown.add(a);
            return List.of(used("rod", a, "", 0.5));
        });
        Check pin = told("pin", a -> List.of(used("pin", a, "frame pin", 0.6), used("pin", a, "link pin", 9)));
        List<Check> others = new ArrayList<>(List.of(rod, pin));
        for (String id : List.of("bearing-static", "bush", "shaft", "slow")) {
            others.add(told(id, a -> List.of(used(id, a, "", 8))));
        }
        List<Finding> found = new DrivePath(make(analysis), analysis, others)
                .under("jam", "stuck, it", row -> 100 + row.tilt(), row -> 50);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).utilisation()).isEqualTo(0.6);
        assertThat(found.get(0).note().metric())
                .isEqualTo("stuck, it pushes with 0 N; closest to failing then: Told pin, frame pin");
        Analysis strained = shown.get(0);
        assertThat(strained.design().factors()).isEqualTo(Factors.none());
        assertThat(strained.design().fastenings())
                .extracting(Fastening::joint)
                .containsExactly("frame-pin", "tank-pin");
        assertThat(strained.cases()).hasSize(1);
        for (Row row : strained.cases().get(0).rows()) {
            assertThat(row.raise().force()).isEqualTo(100 + row.tilt());
            assertThat(row.lower().force()).isEqualTo(-50);
            assertThat(row.rest().force()).isZero();
            assertThat(row.raise().joints())
                    .hasSize(analysis.mechanism().joints().size())
                    .containsOnly(Vec2.ZERO);
        }
    }

    /** What fails besides is named; what cannot be told is told apart, unless it stands for parts that were left out. */
    @Test
    void whatFailsAndWhatIsUnknown() throws CannotComputeException {
        Analysis analysis = analysis(BOX);
        Check fails = told(
                "fails", a -> List.of(used("fails", a, "a", 2), used("fails", a, "b", 3), used("fails", a, "c", 1)));
        Check unknown = told("unknown", a -> List.of(of("unknown", a).missing("", "no")));
        Check cannot = told("cannot", a -> List.of(of("cannot", a).cannot("", "no")));
        Check known = told(
                "known",
                a -> a == analysis
                        ? List.of(used("known", a, "part", 0.1))
                        : List.of(of("known", a).missing("", "no")));
        List<Finding> found = new DrivePath(make(analysis), analysis, List.of(fails, unknown, known))
                .under("jam", "it", row -> 5, row -> 5);
        assertThat(found).hasSize(2);
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.get(0).note().metric()).endsWith("worst then: Told fails, b; also fails: Told fails, a");
        assertThat(found.get(1).id()).isEqualTo("what-if/jam-other-parts");
        assertThat(found.get(1).missing()).isTrue();
        assertThat(found.get(1).note().metric()).isEqualTo("what their own checks cannot tell: told unknown");
        List<Finding> nothing =
                new DrivePath(make(analysis), analysis, List.of(cannot)).under("jam", "it", row -> 5, row -> 5);
        assertThat(nothing).hasSize(1);
        assertThat(nothing.get(0).missing()).isFalse();
        assertThat(nothing.get(0).note().metric()).isEqualTo("what their own checks cannot tell: told cannot");
    }

    /** One that carries all is held by its own brackets, and by what holds the others only where that is not nearer to them. */
    @Test
    void theBracketsOfTheOneThatCarriesAll() throws CannotComputeException {
        String weld = "  - {joint: frame-pin, height: %s mm, weld: {at: [-600 mm, -550 mm, %s mm], leg: 6 mm,"
                + " rectangle: {u: 80 mm, v: 40 mm}}}\n";
        String bolts = "  - {joint: rod-pin, height: %s mm, bolts: {at: [-450 mm, 350 mm, %s mm], diameter: 12 mm,"
                + " positions: [[0 mm, 0 mm]]}}\n";
        String lug =
                "  - {joint: tank-pin, height: 50 mm, lug: {width: 60 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm}}\n";
        Analysis analysis = analysis(TWO + "fastenings:\n" + weld.formatted(51, -300) + weld.formatted(52, 290)
                + weld.formatted(53, 0) + bolts.formatted(54, -310) + bolts.formatted(55, 300) + lug
                + swap(weld.formatted(56, 300), "frame-pin", "bearing-1"));
        List<PlacedActuator> both = analysis.design().drive().actuators();
        assertThat(heights(OneAlone.of(analysis, both.get(0)))).containsExactly(51, 53, 54, 50, 56);
        assertThat(heights(OneAlone.of(analysis, both.get(1)))).containsExactly(52, 53, 55, 50, 56);
        // one at -250 mm and one at 125 mm: half way is at -62.5 mm
        String unequal = swap(
                TWO, "{z: -300 mm, actuator", "{z: -250 mm, actuator", "{z: 300 mm, actuator", "{z: 125 mm, actuator");
        Analysis aside = analysis(unequal + "fastenings:\n"
                + weld.formatted(51, -500) + weld.formatted(52, -63) + weld.formatted(53, -62)
                + weld.formatted(54, 900) + bolts.formatted(55, -62.5) + bolts.formatted(56, 0));
        List<PlacedActuator> unlike = aside.design().drive().actuators();
        assertThat(heights(OneAlone.of(aside, unlike.get(0)))).containsExactly(51, 52, 55);
        assertThat(heights(OneAlone.of(aside, unlike.get(1)))).containsExactly(53, 54, 55, 56);
        // half way between -300 and 100 mm, which no binary number hits
        Analysis tenths = analysis(
                swap(TWO, "{z: 300 mm, actuator", "{z: 100 mm, actuator") + "fastenings:\n" + weld.formatted(51, -100));
        for (PlacedActuator one : tenths.design().drive().actuators()) {
            assertThat(heights(OneAlone.of(tenths, one))).containsExactly(51);
        }
    }

    /** What bears more or less when one carries all is told, with the one that is worse; what bears as much is not. */
    @Test
    void whatOneThatCarriesAllLoads() throws CannotComputeException {
        Analysis analysis = analysis(TWO);
        Check more = told("more", a -> List.of(used("more", a, "x", alone(a, 0.2, 0.9, 0.5))));
        Check less = told("less", a -> List.of(used("less", a, "", alone(a, 0.2, 0.1, 0.5))));
        Check same = told("same", a -> List.of(used("same", a, "", 0.5)));
        Check newly = told("newly", a -> List.of(used("newly", a, alone(a, 0, 0, 1) > 0 ? "shared" : "alone", 0.3)));
        Check slow = told("slow", a -> List.of(used("slow", a, "", alone(a, 2, 3, 1))));
        List<Finding> found = WhatIfShare.find(make(analysis), analysis, List.of(more, less, same, newly, slow));
        assertThat(found)
                .extracting(Finding::id)
                .containsExactly(
                        "what-if/one-carries-all",
                        "what-if/more-x-when-one-carries-all",
                        "what-if/less-when-one-carries-all",
                        "what-if/newly-alone-when-one-carries-all",
                        "what-if/one-runs-ahead");
        assertThat(found.get(1).utilisation()).isEqualTo(0.9);
        assertThat(found.get(1).title()).isEqualTo("One actuator carries everything: Told more, x");
        assertThat(found.get(2).utilisation()).isEqualTo(0.2);
        Check unknown = told("unknown", a -> List.of(of("unknown", a).missing("", "x")));
        Check cannot = told("cannot", a -> List.of(of("cannot", a).cannot("", "x")));
        Finding untold = WhatIfShare.find(make(analysis), analysis, List.of(cannot, unknown))
                .get(1);
        assertThat(untold.id()).isEqualTo("what-if/other-parts-when-one-carries-all");
        assertThat(untold.note().metric()).isEqualTo("what their own checks cannot tell: told cannot; told unknown");
        assertThat(untold.missing()).isTrue();
        Finding none =
                WhatIfShare.find(make(analysis), analysis, List.of(cannot)).get(1);
        assertThat(none.missing()).isFalse();
        Analysis single = analysis(BOX);
        assertThat(WhatIfShare.find(make(single), single, List.of(more))).isEmpty();
    }

    /** One number where the actuator at -z is alone, another where that at +z is, a third where both share. */
    private static double alone(Analysis analysis, double minus, double plus, double both) {
        List<PlacedActuator> all = analysis.design().drive().actuators();
        return all.size() > 1 ? both : all.get(0).z() < 0 ? minus : plus;
    }

    private static List<Integer> heights(Analysis alone) {
        return alone.design().fastenings().stream()
                .map(Fastening::height)
                .map(h -> (int) Math.rint(1000 * h))
                .toList();
    }

    /** The pose nearest to a tilt; of two that are as near, the first. A point moves by its way from the pivot for one radian. */
    @Test
    void theNearestPoseAndTheWayOfAPoint() throws CannotComputeException {
        Analysis analysis = analysis(swap(BOX, "to: 20 deg, step: 10 deg", "to: 2 deg, step: 0.5 deg"));
        MovingMass moving = new MovingMass(analysis);
        List<Double> tilts = analysis.poses().stream().map(p -> p.tilt()).toList();
        assertThat(moving.nearest(-1)).isZero();
        assertThat(moving.nearest(9)).isEqualTo(tilts.size() - 1);
        for (int i = 1; i < tilts.size(); i++) {
            double step = tilts.get(i) - tilts.get(i - 1);
            assertThat(moving.nearest(tilts.get(i) - 0.49 * step)).isEqualTo(i);
            assertThat(moving.nearest(tilts.get(i) - 0.51 * step)).isEqualTo(i - 1);
        }
        for (Row row : analysis.cases().get(0).rows()) {
            double reach = Math.hypot(0.9, 0.2);
            assertThat(moving.way(row, new Vec3(-0.5, 0.6, 0.3))).isCloseTo(reach, within(1e-3 * reach));
        }
    }

    /**
     * Two actuators on one crank: if one of them carries all, it pushes 200 mm beside the crank's own pins, whose share in that twist
     * nobody works out. They are not told, where they stood as bearing no more than before.
     */
    @Test
    void thePinsOfACrankThatOnePushesAsideAreNotTold() throws Exception {
        String yaml = Files.readString(Path.of("geometry", "crank-cart.yaml"));
        int from = yaml.indexOf("      - {z: 0 mm, actuator: ");
        int to = yaml.indexOf("    pins:", from);
        String one = yaml.substring(from, to);
        String two = swap(yaml, one, swap(one, "z: 0 mm", "z: -200 mm") + swap(one, "z: 0 mm", "z: 200 mm"));
        Finding found = One.of(two, "what-if/other-parts-when-one-carries-all");
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.note().metric()).contains("crank pivot; link pin;");
        assertThat(One.all(two, "what-if").stream().map(Finding::id))
                .doesNotContain("what-if/crank-pivot-when-one-carries-all");
    }

    /**
     * Of a knee both links meet the actuators at one pin: if one of them carries all, it pushes 150 mm beside them, 10 kN on that arm
     * make 1.5 kN m out of their plane. Neither link nor any pin of them is told as bearing no more than before.
     */
    @Test
    void theLinksOfAKneeThatOnePushesAsideAreNotTold() throws Exception {
        String yaml = Files.readString(Path.of("geometry", "knee-stand.yaml"));
        int from = yaml.indexOf("      - {z: 0 mm, actuator: ");
        int to = yaml.indexOf("    pins:", from);
        String one = yaml.substring(from, to);
        String two = swap(yaml, one, swap(one, "z: 0 mm", "z: -150 mm") + swap(one, "z: 0 mm", "z: 150 mm"));
        String told =
                One.of(two, "what-if/other-parts-when-one-carries-all").note().metric();
        assertThat(told)
                .contains("foot pin; knee; tank pin; welds at the tank pin; lug at the tank pin; lower; upper;");
        assertThat(One.all(two, "what-if").stream().map(Finding::id))
                .contains("what-if/frame-pin-when-one-carries-all")
                .doesNotContain("what-if/tank-pin-when-one-carries-all");
    }
}
