// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Joints that a design tells too little of, or that are out of what a rule can judge: no verdict, and why; and what is said of others. */
class JointUntoldTest {
    private static final String BOX = swap(Examples.BOX, "to: 80 deg", "to: 40 deg, step: 10 deg");
    private static final String ROUND = swap(
            BOX,
            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
            "{shape: cylinder, axis: x, diameter: 992 mm, length: 1 m, centre: [0 m, 1 m, 0 m]}");
    private static final String NO_WALL = "  wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}\n";
    private static final String WELD =
            "weld: {at: [-600 mm, -550 mm, 0 mm], leg: 6 mm, rectangle: {u: 80 mm, v: 40 mm}}";
    private static final String TUBE = "frame: {cross-member: {at: [-600 mm, -600 mm], height: 100 mm, width: 80 mm,"
            + " wall: 5 mm, z: [-400 mm, 400 mm]}}\n";

    private static String frame(String fastening) {
        return "fastenings:\n  - {joint: frame-pin, " + fastening + "}\n";
    }

    private static void untold(String yaml, String id, boolean missing, String why) throws CannotComputeException {
        Finding found = One.of(yaml, id);
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).isEqualTo(missing);
        assertThat(found.note().metric()).isEqualTo(why);
    }

    @Test
    void theSwingOfAnActuatorNeedsBracketAndBody() throws CannotComputeException {
        String height = ", height: 60 mm";
        untold(BOX, "swing", true, "fastenings: height missing");
        untold(BOX + frame(WELD), "swing/frame-pin", true, "fastenings: height missing");
        String lug = "lug: {width: 60 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm}";
        untold(BOX + frame(lug + height), "swing/frame-pin", true, "fastenings: weld or bolts missing");
        untold(BOX + frame(WELD + height), "swing/frame-pin", true, "actuator.tube missing");
        String tank = swap(frame(WELD + height), "frame-pin", "tank-pin");
        untold(BOX + tank, "swing/tank-pin", true, "actuator.rod missing");
        String bolts = "bolts: {at: [-600 mm, -550 mm, 0 mm], diameter: 12 mm, positions: [[0 mm, 0 mm]]}" + height;
        untold(BOX + frame(bolts), "swing/frame-pin", true, "actuator.tube missing");
        // a plate that lies flat in the side view stops no swing
        String flat = frame(swap(WELD, "leg: 6 mm", "normal: z, leg: 6 mm") + height);
        untold(BOX + flat, "swing", true, "fastenings: height missing");
        assertThat(new SwingCheck().title("frame-pin")).isEqualTo("Actuator: swing in its bracket at the frame pin");
    }

    /** The tank's bracket 40 mm beside that of the frame: the eyes' play must be known. */
    @Test
    void anActuatorThatLeansNeedsItsPinAndItsLug() throws CannotComputeException {
        String aside = "  - {joint: tank-pin, on: tank, weld: {at: [-450 mm, 496 mm, 40 mm], leg: 6 mm,"
                + " rectangle: {u: 80 mm, v: 40 mm}}}\n";
        untold(BOX + frame(WELD) + aside, "clevis/frame-pin", true, "the pin's sizes missing");
        String pin = swap(
                BOX,
                "    actuators:",
                "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm}\n    actuators:");
        untold(pin + frame(WELD) + aside, "clevis/frame-pin", true, "fastenings: lug missing");
        // a ball joint needs no lug: asin(40 mm / the shortest from pin to pin) of 9 deg
        String ball = swap(pin, "gap: 1 mm", "gap: 1 mm, leans: 9 deg");
        Finding told = One.of(ball + frame(WELD) + aside, "clevis/frame-pin");
        double shortest = Analyser.analyse(Examples.read(BOX)).poses().get(0).length();
        assertThat(told.demand()).isCloseTo(Math.atan(0.04 / shortest), within(1e-9));
        assertThat(told.capacity()).isCloseTo(Math.toRadians(9), within(1e-12));
        assertThat(told.note().metric()).isEqualTo("the two brackets are out of line");
        assertThat(new ClevisCheck().fix(told, Examples.read(BOX).limits()).metric())
                .isEqualTo("brackets in line along the pivot, wider gaps at the cheeks, or ball joints in the eyes");
    }

    @Test
    void aTubesFaceIsLevelOrUpright() throws CannotComputeException {
        String leaning = frame(swap(WELD, "leg: 6 mm", "normal: [1, 1, 0], leg: 6 mm"));
        untold(
                BOX + TUBE + leaning,
                "tube-wall/frame-pin",
                false,
                "the bracket is on no face of the tube: fastenings: weld.normal is neither x nor y");
        String beside = frame(swap(WELD, "-550 mm", "-500 mm"));
        untold(
                BOX + TUBE + beside,
                "tube-wall/frame-pin",
                false,
                "the weld does not lie on a face of frame.cross-member");
        assertThat(One.all(BOX + frame(WELD), "tube-wall")).isEmpty();
    }

    /** The actuator in the middle of the tube's ends, at an end, and beyond either. */
    @ParameterizedTest
    @CsvSource({"0, true", "399, true", "400, false", "401, false", "-400, false", "-401, false"})
    void anActuatorSitsBetweenTheEndsOfTheTube(int z, boolean told) throws CannotComputeException {
        String yaml = swap(BOX, "{z: 0 mm, actuator", "{z: " + z + " mm, actuator") + TUBE;
        List<Finding> found = One.all(yaml, "cross-member");
        assertThat(found).hasSize(told ? 2 : 1);
        assertThat(found.get(0).verdict() == Verdict.NOT_CHECKED).isEqualTo(!told);
        if (!told) {
            untold(yaml, "cross-member", false, "an actuator sits beyond the ends in frame.cross-member.z");
        }
    }

    @Test
    void aRoundWallWithoutSeatOrWithoutWall() throws CannotComputeException {
        String cradle = "cradle: {at: [[-300 mm, 500 mm], [300 mm, 500 mm]], angle: 120 deg, width: 100 mm}\n";
        String seat = "fastenings:\n  - {joint: tank-pin, on: tank,"
                + " seat: {at: [0 mm, 504 mm, 0 mm], along: 200 mm, around: 100 mm}}\n";
        untold(
                ROUND,
                "shell",
                true,
                "fastenings: seat missing (where brackets and cradle sit on the tank's wall), or cradle");
        assertThat(One.all(ROUND + cradle, "shell")).isEmpty();
        String bare = swap(ROUND, NO_WALL, "  mass: {empty: 200 kg, centre: [0 m, 1 m, 0 m]}\n");
        untold(bare + seat, "shell", true, "tank.wall missing");
        untold(bare + cradle, "saddle", true, "tank.wall missing");
        untold(BOX + seat, "shell", false, "the tank is not round; a flat wall under a bracket is not worked out");
        assertThat(One.all(BOX, "shell")).isEmpty();
    }

    /** Saddles are for a round tank that lies lengthwise. */
    @ParameterizedTest
    @CsvSource({"x, true", "'[1, 0.1, 0]', true", "'[1, 1, 0]', false", "y, false", "z, false"})
    void saddlesUnderATankThatLiesLengthwise(String axis, boolean told) throws CannotComputeException {
        String yaml = swap(ROUND, "axis: x", "axis: " + axis)
                + "cradle: {at: [[-300 mm, 500 mm], [300 mm, 500 mm]], angle: 120 deg, width: 100 mm}\n";
        List<Finding> found = One.all(yaml, "saddle");
        assertThat(found).hasSize(told ? 8 : 1);
        if (!told) {
            untold(yaml, "saddle", false, "the rule is for a round tank that lies lengthwise");
        }
        assertThat(One.all(ROUND, "saddle")).isEmpty();
    }

    /** A single seam along the pivot under a pin that stands off it: nothing bears the moment about the seam. */
    @Test
    void aSingleSeamCannotBearBendingAboutItself() throws CannotComputeException {
        String single =
                "weld: {at: [-600 mm, -550 mm, 0 mm], leg: 6 mm, segments: [{from: [0 mm, -50 mm], to: [0 mm, 50 mm]}]}";
        Finding found = One.of(BOX + frame(single), "weld/frame-pin");
        assertThat(found.demand()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.note().metric()).isEqualTo("a single seam cannot bear bending about itself; weld both sides");
    }

    /** Bolts in one line across the pivot bear no moment about that line; in two lines they do. */
    @Test
    void boltsInOneLineCannotBearAMomentAboutIt() throws CannotComputeException {
        String line =
                "bolts: {at: [-600 mm, -550 mm, 0 mm], diameter: 12 mm, positions: [[0 mm, -40 mm], [0 mm, 40 mm]]}";
        Finding found = One.of(BOX + frame(line), "bolt/frame-pin");
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.note().metric()).isEqualTo("bolts in one line cannot bear a moment about that line");
        String two =
                swap(line, "[0 mm, -40 mm]", "[-40 mm, -40 mm]", "[0 mm, 40 mm]", "[40 mm, -40 mm], [0 mm, 40 mm]");
        assertThat(One.of(BOX + frame(two), "bolt/frame-pin").note().metric())
                .matches("share of its design strength; up to [0-9.]+ kN shear and [0-9.]+ kN pull in one bolt");
    }

    private static Finding past(String part, double past) {
        Findings make = new Findings(new SteelBehindCheck(), Examples.read(BOX));
        return make.compare(part, past, SteelFaces.GAP, 1, Kind.LENGTH, Extreme.NOWHERE, "in line with it: rail");
    }

    private static Finding edge(double there) {
        Findings make = new Findings(new BoltEdgeCheck(), Examples.read(BOX));
        return make.atLeast(
                "frame pin", there, 0.0156, Kind.LENGTH, 2, Extreme.NOWHERE, Verdict.FAIL, Text.words("of bolt 1"));
    }

    @Test
    void whatIsSaidOfSteelThatIsNotThere() {
        SteelBehindCheck behind = new SteelBehindCheck();
        assertThat(behind.says(past("frame pin", 0.04)).metric())
                .isEqualTo("Bracket at the frame pin: its weld reaches past the steel by 40 mm, 3 mm allowed");
        assertThat(behind.says(past("tank pin seat", 0.04)).metric())
                .isEqualTo(
                        "Bracket at the tank pin: its seat reaches past the tank's straight wall by 40 mm, 3 mm allowed");
        assertThat(behind.says(past("frame pin", 0.0029)).metric())
                .isEqualTo("Bracket at the frame pin: its weld reaches past the steel by 2.9 mm, 3 mm allowed");
        assertThat(behind.says(past("frame pin", 0)).metric())
                .isEqualTo("Bracket at the frame pin: steel behind its weld: needs 0 mm, has 3 mm");
        BoltEdgeCheck edges = new BoltEdgeCheck();
        assertThat(edges.says(edge(0)).metric()).isEqualTo("Bolts at the frame pin: a hole has no steel around it");
        assertThat(edges.says(edge(0.01)).metric())
                .isEqualTo("Bolts at the frame pin: steel around their holes: needs 16 mm, has 10 mm");
        assertThat(behind.bound("steel-behind/bearing-1")).isEmpty();
        assertThat(behind.bound("steel-behind/frame-pin")).isEqualTo("steel behind the bracket");
    }

    /** Bolts in a plane that is seen from its face; and whether either check of the steel could not tell. */
    @Test
    void whatStandsOnNoEdgeCannotBeTold() throws CannotComputeException {
        String bolts = "bolts: {at: [-600 mm, -550 mm, 0 mm], normal: z, diameter: 12 mm, positions: [[0 mm, 0 mm]]}";
        String yaml = BOX + frame(bolts);
        untold(
                yaml,
                "bolt-edge/frame-pin",
                false,
                "fastenings: bolts.normal: seen from the side their plane is not edge-on");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        assertThat(SteelBehindCheck.untold(analysis, "frame-pin")).isTrue();
        assertThat(SteelBehindCheck.untold(analysis, "frame")).isFalse();
        assertThat(SteelBehindCheck.untold(One.all(yaml, "swing"), "frame-pin")).isFalse();
        String welded = BOX + "frame: {members: [{name: rail, outline: [[-1200 mm, -650 mm], [-500 mm, -650 mm],"
                + " [-500 mm, -550 mm], [-1200 mm, -550 mm]]}]}\n" + frame(WELD);
        assertThat(SteelBehindCheck.untold(Analyser.analyse(Examples.read(welded)), "frame-pin"))
                .isFalse();
    }

    /** Yield of a plate 4 mm thick long before bolts of 16 mm; of one 40 mm thick long after them. */
    @Test
    void whatGivesWayUnderABolt() throws CannotComputeException {
        String bolts = "bolts: {at: [-600 mm, -550 mm, 0 mm], diameter: 16 mm,"
                + " positions: [[-40 mm, -40 mm], [40 mm, -40 mm], [0 mm, 40 mm]]},"
                + " flange: {thickness: %s mm, arm: 30 mm, edge: 30 mm, yield: 235 MPa}";
        Map<String, String> how =
                Map.of("4", "pull in one bolt; the plate gives way", "40", "pull in one bolt; the bolt gives way");
        for (Map.Entry<String, String> plate : how.entrySet()) {
            Finding found = One.of(BOX + frame(bolts.formatted(plate.getKey())), "prying/frame-pin");
            assertThat(found.note().metric()).isEqualTo(plate.getValue());
        }
    }

    /** Fatigue is asked of welds, and of the wall under a seat on a round tank whose wall is known. */
    @Test
    void whatFatigueIsAskedOf() throws CannotComputeException {
        String use = "use: {dumps-per-hour: 2, hours-a-year: 100, years: 10}\n";
        String bolts = "bolts: {at: [-600 mm, -550 mm, 0 mm], diameter: 12 mm, positions: [[0 mm, 0 mm]]}";
        String seat = "fastenings:\n  - {joint: %s, seat: {at: [0 mm, 504 mm, 0 mm], along: 200 mm, around: 100 mm}}\n";
        assertThat(One.all(BOX + frame(bolts) + use, "fatigue")).isEmpty();
        untold(BOX + frame(WELD), "fatigue", true, "use: dumps-per-hour, hours-a-year or years missing");
        assertThat(One.all(BOX + frame(WELD) + use, "fatigue").stream().map(Finding::id))
                .containsExactly("fatigue/weld-frame-pin");
        String onTank = seat.formatted("tank-pin, on: tank");
        assertThat(One.all(BOX + onTank + use, "fatigue")).isEmpty();
        assertThat(One.all(ROUND + onTank + use, "fatigue").stream().map(Finding::id))
                .containsExactly("fatigue/wall-tank-pin");
        assertThat(One.all(ROUND + seat.formatted("bearing-1") + use, "fatigue"))
                .isEmpty();
        String weighed = swap(ROUND, NO_WALL, "  mass: {empty: 200 kg, centre: [0 m, 1 m, 0 m]}\n");
        assertThat(One.all(weighed + onTank + use, "fatigue")).isEmpty();
        Finding weld = One.of(BOX + frame(WELD) + use, "fatigue/weld-frame-pin");
        assertThat(weld.note().metric()).isEqualTo("range of stress in a dump, 2000 dumps; detail of category 36");
    }

    /** Only what was judged can be worked out by hand. */
    @Test
    void nothingIsWorkedOutOfAPinThatIsNotKnown() throws CannotComputeException {
        String pin = swap(
                BOX,
                "    actuators:",
                "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm}\n    actuators:");
        Analysis analysis = Analyser.analyse(Examples.read(pin));
        PinCheck check = new PinCheck();
        List<Finding> pins = check.run(analysis);
        assertThat(pins).extracting(Finding::id).containsExactly("pin/frame-pin", "pin/tank-pin");
        assertThat(check.worked(analysis, pins.get(0), UnitSystem.METRIC))
                .endsWith("combined " + pins.get(0).figure(pins.get(0).demand()).metric());
        assertThat(check.worked(analysis, pins.get(1), UnitSystem.METRIC)).isEmpty();
        Finding nowhere = new Findings(check, analysis.design())
                .compare("frame pin", 1, 2, 1, Kind.PRESSURE, Extreme.NOWHERE, "");
        assertThat(check.worked(analysis, nowhere, UnitSystem.METRIC)).isEmpty();
        assertThat(check.title("")).isEqualTo(check.title());
    }
}
