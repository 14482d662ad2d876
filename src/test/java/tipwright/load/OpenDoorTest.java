// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A box with a door in its dump end, hinged on top. Against statics by hand: a body that hangs from a pin pulls straight down at it, so
 * its moment about the pivot is its weight times the arm of the hinge.
 */
class OpenDoorTest {
    private static final double KG = 120;
    private static final Vec2 HINGE = new Vec2(0.51, 1.5);
    private static final Vec2 PIVOT = new Vec2(0.4, 0.4);
    private static final double OPENS = Math.toRadians(20);
    private static final String END =
            "{name: end, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x, opens-at: 20 deg,"
                    + " door: {hinge: [510 mm, 1500 mm, 0 mm], latch: [510 mm, 500 mm, 0 mm], latch-rating: 50 kN,"
                    + " hinge-rating: 50 kN}}";
    private static final String PART =
            "attached: [{name: end, mass: 120 kg, centre: [530 mm, 1050 mm, 0 mm]}]\n  openings:";
    private static final String BOX = swap(
            Examples.BOX,
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            END,
            "openings:",
            PART,
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 60 %, solids-by-volume: 30 %, solids-density: 2650 kg/m3, packing: 60 %, repose: 35 deg, release: 40 deg}");
    /** The same weight on the tank, but no door that it belongs to. */
    private static final String STIFF = swap(BOX, "{name: end, mass", "{name: lump, mass");

    private static double moment(LoadState state, double tilt, Vec3 up) {
        return state.moment(PIVOT, up.tilted(-tilt));
    }

    private static double moment(LoadState state, double tilt) {
        return moment(state, tilt, new Vec3(0, 1, 0));
    }

    /** What the swing adds, kg m: the arm of the hinge less that of the shut door's centre. */
    private static double byHand(double tilt) {
        Vec2 shut = new Vec2(0.53, 1.05).minus(PIVOT).tilted(tilt);
        Vec2 hinge = HINGE.minus(PIVOT).tilted(tilt);
        // at first it leans on its rim
        Vec2 hangs = new Vec2(0.53, 1.05).minus(HINGE).tilted(tilt);
        return hangs.x() >= 0 ? 0 : KG * (hinge.x() - shut.x());
    }

    private static CaseResult of(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void openDoorPullsStraightDownAtItsHinge() throws CannotComputeException {
        Analysis open = Analyser.analyse(Examples.read(BOX));
        Analysis stiff = Analyser.analyse(Examples.read(STIFF));
        for (CaseResult result : open.cases()) {
            String name = result.name();
            boolean shut = Set.of("held", "settled", "slid").contains(name);
            boolean always = Set.of("empty", "heel").contains(name);
            double most = 0;
            for (int i = 0; i < result.rows().size(); i++) {
                Row row = result.rows().get(i);
                double tilt = row.tilt();
                double added = !shut && (always || tilt >= OPENS - 1e-9) ? byHand(tilt) : 0;
                LoadState as = of(stiff, name).rows().get(i).load();
                assertThat(row.load().mass()).isCloseTo(as.mass(), within(1e-9));
                assertThat(moment(row.load(), tilt) - moment(as, tilt)).isCloseTo(added, within(1e-9 * as.mass()));
                // without friction the actuator's moment carries it
                double force = row.rest().force()
                        - of(stiff, name).rows().get(i).rest().force();
                assertThat(force * row.pose().arm()).isCloseTo(-added * Gravity.G, within(1e-6 * KG));
                most = Math.max(most, added);
            }
            assertThat(most > 0).isEqualTo(!shut);
        }
    }

    /** Shut in rain, open in the other troubles. */
    @ParameterizedTest
    @ValueSource(ints = {25, 40, 60, 75})
    void shutInRainAndOpenInTheOtherTroubles(int degrees) {
        Design open = Examples.read(BOX);
        double tilt = Math.toRadians(degrees);
        double[] tilts = {0, tilt};
        List<LoadCase> moved = LoadTable.upsets(open, tilts, Vessel.of(open));
        List<LoadCase> stiff = LoadTable.upsets(Examples.read(STIFF), tilts, Vessel.of(open));
        assertThat(moved).hasSizeGreaterThan(2);
        for (int i = 0; i < moved.size(); i++) {
            LoadState now = moved.get(i).states().get(1);
            double shut = moment(stiff.get(i).states().get(1), tilt);
            double hangs = shut + byHand(tilt);
            assertThat(moment(now, tilt))
                    .isCloseTo(moved.get(i).name().equals("brim") ? shut : hangs, within(1e-9 * now.mass()));
        }
    }

    /** A tank that tips far over: the door falls open on, and hangs from its hinge still. */
    @ParameterizedTest
    @ValueSource(ints = {85, 95, 110, 130, 150})
    void hangsFromItsHingeBeyondUpright(int degrees) {
        double tilt = Math.toRadians(degrees);
        Design far = Examples.read(swap(BOX, "tilt: {to: 80 deg}", "tilt: {to: 160 deg}"));
        Vec3 up = new Vec3(0, 1, 0).tilted(-tilt);
        Vec3 moved = new OpenDoors(far).moved("empty", tilt, up);
        assertThat(moved.x() * up.y() - moved.y() * up.x()).isCloseTo(byHand(tilt), within(1e-9 * KG));
    }

    /** The weight that the door itself tells: counted once, whichever way the tank's own weight is told. */
    @Test
    void doorThatTellsItsWeightIsCountedOnce() {
        String told = swap(BOX, PART, "openings:", "latch-rating", "mass: 120 kg, latch-rating");
        double wall = empty(swap(BOX, PART, "openings:")).mass();
        assertThat(empty(told).mass()).isCloseTo(wall + KG, within(1e-9));
        assertThat(empty(BOX).mass()).isCloseTo(wall + KG, within(1e-9));
        String both = swap(BOX, "latch-rating", "mass: 120 kg, latch-rating");
        assertThat(empty(both).mass()).isCloseTo(wall + KG, within(1e-9));
        String weighed = swap(
                told,
                "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                "mass: {empty: 400 kg, centre: [0 m, 1 m, 0 m]}");
        assertThat(empty(weighed).mass()).isCloseTo(400, within(1e-9));
        double tilt = Math.toRadians(60);
        Vec3 up = new Vec3(0, 1, 0).tilted(-tilt);
        Vec3 moved = new OpenDoors(Examples.read(weighed)).moved("draining", tilt);
        // the middle of the opening is where the door's weight is when nothing tells it better
        Vec2 arm = HINGE.minus(new Vec2(0.5, 1));
        assertThat(moved.x() * up.y() - moved.y() * up.x())
                .isCloseTo(KG * (arm.x() * Math.cos(tilt) + arm.y() * Math.sin(tilt)), within(1e-9 * KG));
    }

    private static EmptyTank empty(String yaml) {
        Design design = Examples.read(yaml);
        return EmptyTank.of(design, design.tank().interior().solid());
    }

    /** Where the unit leans it hangs plumb in the true gravity. */
    @ParameterizedTest
    @CsvSource({"empty, 8", "heaped, -6", "draining, 5", "held, 7", "caked, 9"})
    void hangsPlumbWhereTheUnitLeans(String name, double lean) {
        Design open = Examples.read(BOX);
        Design stiff = Examples.read(STIFF);
        double tilt = Math.toRadians(50);
        double slope = Math.toRadians(lean);
        Vec3 up = new Vec3(0, 1, 0).tilted(-slope);
        LoadState now = leaning(open, name, tilt, up);
        LoadState then = leaning(stiff, name, tilt, up);
        double added = name.equals("held") ? 0 : byHand(tilt + slope);
        assertThat(moment(now, tilt, up) - moment(then, tilt, up)).isCloseTo(added, within(1e-9 * now.mass()));
    }

    private static LoadState leaning(Design design, String name, double tilt, Vec3 up) {
        LoadCase load = LoadTable.of(design, new double[] {0, tilt}).cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
        return new Leaning(design, Vessel.of(design)).at(load, load.states().get(1), tilt, up);
    }

    /** One that is hinged at its side stands 105 degrees open about its upright hinge line. */
    @Test
    void doorHingedAtItsSideTakesItsWeightAcross() {
        String side = swap(
                BOX,
                "hinge: [510 mm, 1500 mm, 0 mm], latch: [510 mm, 500 mm, 0 mm]",
                "hinge: [500 mm, 1 m, 500 mm], hinge-axis: y, latch: [500 mm, 1 m, -500 mm]",
                "centre: [530 mm, 1050 mm, 0 mm]",
                "centre: [500 mm, 1 m, 0 mm]");
        Vec3 moved = new OpenDoors(Examples.read(side)).moved("draining", Math.toRadians(30));
        double angle = Math.toRadians(105);
        assertThat(moved.x()).isCloseTo(KG * 0.5 * Math.sin(angle), within(1e-9));
        assertThat(moved.y()).isCloseTo(0, within(1e-9));
        assertThat(moved.z()).isCloseTo(KG * 0.5 * (1 - Math.cos(angle)), within(1e-9));
    }

    /** The hinge line may be told by a direction of any length: one that lies half across hangs, one that stands does not. */
    @ParameterizedTest
    @CsvSource({"'[0, 0, 0.5]', '[0, 0, 1]'", "'[0, 0, -7]', '[0, 0, -1]'", "'[0, 5, 1]', '[0, 1, 0.2]'"})
    void hingeLineIsTheSameHoweverLongItsDirection(String one, String other) {
        double tilt = Math.toRadians(30);
        Vec3 moved = new OpenDoors(Examples.read(hinged(one))).moved("draining", tilt);
        Vec3 same = new OpenDoors(Examples.read(hinged(other))).moved("draining", tilt);
        assertThat(moved.norm()).isGreaterThan(1);
        assertThat(moved.minus(same).norm()).isLessThan(1e-9);
    }

    private static String hinged(String axis) {
        return swap(BOX, "1500 mm, 0 mm], latch:", "1500 mm, 0 mm], hinge-axis: " + axis + ", latch:");
    }

    /** Corners of a rim may be told either way round: its door swings out of the tank. */
    @ParameterizedTest
    @CsvSource({"z, 40", "z, 5"})
    void doorSwingsOutWhicheverWayRoundItsRimIsTold(String axis, double tilt) {
        String corners =
                "[500 mm, 1500 mm, 500 mm], [500 mm, 1500 mm, -500 mm], [500 mm, 500 mm, -500 mm], [500 mm, 500 mm, 500 mm]";
        String round =
                "[500 mm, 500 mm, 500 mm], [500 mm, 500 mm, -500 mm], [500 mm, 1500 mm, -500 mm], [500 mm, 1500 mm, 500 mm]";
        double at = Math.toRadians(tilt);
        Vec3 moved = new OpenDoors(Examples.read(hinged(axis))).moved("empty", at);
        assertThat(moved.norm()).isPositive();
        for (String points : List.of(corners, round)) {
            Design told = Examples.read(swap(
                    hinged(axis),
                    "rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x",
                    "rim: polygon, points: [" + points + "]"));
            assertThat(new OpenDoors(told).moved("empty", at).minus(moved).norm())
                    .isLessThan(1e-9);
        }
    }

    /** A door that opens past the end of the tilt range is shut all the way, up and back. */
    @Test
    void doorThatNeverOpensStaysShut() {
        Design never = Examples.read(swap(BOX, "opens-at: 20 deg", "opens-at: 170 deg"));
        Design last = Examples.read(swap(BOX, "opens-at: 20 deg", "opens-at: 80 deg"));
        double tilt = Math.toRadians(50);
        assertThat(new OpenDoors(never).moved("empty", tilt).norm()).isZero();
        assertThat(new OpenDoors(last).moved("empty", tilt).norm()).isPositive();
    }

    /** Back down it stays open, so it comes back later than a lump that is fixed, if at all, and the drive holds more. */
    @Test
    void staysOpenOnTheWayBack() {
        Design open = Examples.read(BOX);
        OpenDoors doors = new OpenDoors(open);
        double from = Math.toRadians(60);
        double tilt = Math.toRadians(10);
        EmptyTank alone = empty(BOX);
        LoadState shut = new LoadState(alone.mass(), alone.centroid(), null, 0);
        LoadState up = shut.moved(doors.moved("draining", from));
        LoadState back = doors.lowered("draining", up, from, tilt);
        assertThat(moment(back, tilt) - moment(shut, tilt)).isCloseTo(byHand(tilt), within(1e-9 * KG));
        LoadState held = doors.lowered("held", shut, from, tilt);
        assertThat(moment(held, tilt)).isEqualTo(moment(shut, tilt));
    }
}
