// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Brackets on tanks with flat and with round walls, by hand. The tank pin is at x = -450 mm, y = 400 mm, below the tank. */
class SteelBehindTankTest {
    private static final String BOX = Examples.BOX;
    private static final String PRISM = swap(
            BOX,
            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
            "{shape: prism, outline: [[-500 mm, 500 mm], [500 mm, 500 mm], [500 mm, 1500 mm], [-500 mm, 1500 mm]], width: 1 m}");
    private static final String ROUND = swap(
            BOX,
            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
            "{shape: cylinder, axis: x, diameter: 992 mm, length: 1 m, centre: [0 m, 1 m, 0 m]}");

    private static List<Finding> found(String tank, String fastening) {
        try {
            return new SteelBehindCheck()
                    .run(Analyser.analyse(
                            Examples.read(tank + "fastenings:\n  - {joint: tank-pin, on: tank, " + fastening + "}\n")));
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    private static Finding weld(String tank, String weld) {
        List<Finding> all = found(tank, "weld: {leg: 6 mm, " + weld + "}");
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static String square(double x, double y, double z) {
        return "at: [" + x + " mm, " + y + " mm, " + z + " mm], rectangle: {u: 80 mm, v: 40 mm}";
    }

    /** Outside the flat floor is at y = 496 mm and ends at x and z = 504 mm either way. */
    @ParameterizedTest
    @CsvSource({"-400, 496, 0, 0", "-464, 496, 484, 0", "-474, 496, 0, 10", "-464, 496, 494, 10", "-400, 493, 0, 0"})
    void aFlatFloor(double x, double y, double z, double past) {
        for (String tank : List.of(BOX, PRISM)) {
            assertThat(weld(tank, square(x, y, z)).demand()).isCloseTo(past / 1000, within(1e-9));
        }
    }

    /** Its lowest line is at y = 500 mm; the straight wall ends at x = 500 mm either way, and bends by 0.4 mm 20 mm beside that line. */
    @ParameterizedTest
    @CsvSource({"-400, 500, 0, 0", "-460, 500, 0, 0", "-480, 500, 0, 20", "-400, 497, 0, 0", "-400, 503.4, 0, 0"})
    void aRoundBelly(double x, double y, double z, double past) {
        assertThat(weld(ROUND, square(x, y, z)).demand()).isCloseTo(past / 1000, within(1e-9));
    }

    private static boolean untold(String fastening, String joint) throws CannotComputeException {
        return SteelBehindCheck.untold(
                Analyser.analyse(
                        Examples.read(BOX + "fastenings:\n  - {joint: tank-pin, on: tank, " + fastening + "}\n")),
                joint);
    }

    /** Who moves a bracket asks whether there is steel behind: of that bracket, by weld, seat or bolts; not of what passes or fails. */
    @Test
    void tellsOfWhichBracketItCannotTell() throws CannotComputeException {
        String off = "weld: {leg: 6 mm, " + square(-400, 450, 0) + "}";
        String on = "weld: {leg: 6 mm, " + square(-400, 496, 0) + "}";
        String past = "weld: {leg: 6 mm, " + square(-474, 496, 0) + "}";
        String bolts =
                "bolts: {at: [-400 mm, 450 mm, 0 mm], positions: [[-20 mm, 0 mm], [20 mm, 0 mm]], diameter: 12 mm}";
        assertThat(untold(off, "tank-pin")).isTrue();
        assertThat(untold(off, "frame-pin")).isFalse();
        assertThat(untold(on, "tank-pin")).isFalse();
        assertThat(untold(past, "tank-pin")).isFalse();
        assertThat(untold(bolts, "tank-pin")).isTrue();
        assertThat(untold(bolts, "frame-pin")).isFalse();
        String seat = "seat: {at: [-400 mm, 300 mm, 0 mm], along: 100 mm, around: 80 mm}";
        assertThat(found(BOX, seat)).allMatch(f -> f.verdict() == Verdict.NOT_CHECKED);
        assertThat(untold(seat, "tank-pin")).isTrue();
        assertThat(untold(seat, "frame-pin")).isFalse();
    }

    /** What fails says by how much; what passes or cannot be told leaves that to the figures. */
    @Test
    void saysByHowMuchItReachesPast() {
        SteelBehindCheck check = new SteelBehindCheck();
        assertThat(check.says(weld(BOX, square(-474, 496, 0))).metric())
                .contains("weld reaches past the steel by 10 mm");
        assertThat(check.says(weld(BOX, square(-400, 496, 0))).metric()).doesNotContain("reaches past");
        assertThat(check.says(weld(BOX, square(-400, 450, 0))).metric()).doesNotContain("reaches past");
    }

    @Test
    void whatLiesOnNoWallCannotBeTold() {
        for (String tank : List.of(BOX, PRISM, ROUND)) {
            assertThat(weld(tank, square(-400, 450, 0)).verdict()).isEqualTo(Verdict.NOT_CHECKED);
            assertThat(weld(tank, square(-400, 540, 0)).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        }
        // beside the belly the round wall slopes
        assertThat(weld(ROUND, square(-400, 540, 250)).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** The open top of a box is no steel, though its walls end there. */
    @Test
    void anOpeningIsNoSteel() {
        Finding top =
                weld(swap(BOX, "tank-pin: [-450 mm, 400 mm]", "tank-pin: [-450 mm, 1600 mm]"), square(-400, 1504, 0));
        assertThat(top.verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** A cradle that is drawn carries the lug; outside its steel the lug hangs over. */
    @Test
    void whatIsAttachedCarries() {
        String cradle = swap(
                ROUND,
                "  openings:",
                "  attached:\n    - {name: cradle, mass: 20 kg, centre: [-400 mm, 480 mm, 0 mm], outline: [[-480 mm, 460 mm],"
                        + " [-320 mm, 460 mm], [-320 mm, 500 mm], [-480 mm, 500 mm]], z: [-30 mm, 30 mm]}\n  openings:");
        assertThat(weld(cradle, square(-440, 460, 0)).demand()).isZero();
        assertThat(weld(cradle, square(-450, 460, 0)).demand()).isCloseTo(0.01, within(1e-9));
    }

    /** The straight wall is 1 m long: a seat of 300 mm reaches its end at x = 350 mm, one with a pad of 400 mm at 300 mm. */
    @ParameterizedTest
    @CsvSource({"350, '', 0", "353, '', 3", "-353, '', 3", "360, '', 10", "300, PAD, 0", "-310, PAD, 10"})
    void aSeatStaysOnTheStraightWall(double x, String pad, double past) {
        String plate = pad.isEmpty() ? "" : ", pad: {thickness: 5 mm, along: 400 mm, around: 300 mm}";
        List<Finding> all =
                found(ROUND, "seat: {at: [" + x + " mm, 500 mm, 0 mm], along: 300 mm, around: 200 mm" + plate + "}");
        assertThat(all).hasSize(1);
        assertThat(all.get(0).id()).isEqualTo("steel-behind/tank-pin-seat");
        assertThat(all.get(0).demand()).isCloseTo(past / 1000, within(1e-9));
        assertThat(all.get(0).verdict()).isEqualTo(past > 3 ? Verdict.FAIL : past > 2.7 ? Verdict.CLOSE : Verdict.PASS);
    }

    /** The lug's weld 50 mm below the belly is on what stands on the seat; only on a face that is drawn it counts by itself. */
    @Test
    void whereASeatIsGivenItTells() {
        String seat = ", seat: {at: [-300 mm, 500 mm, 0 mm], along: 300 mm, around: 200 mm}";
        assertThat(found(ROUND, "weld: {leg: 6 mm, " + square(-400, 450, 0) + "}" + seat))
                .extracting(Finding::id)
                .containsExactly("steel-behind/tank-pin-seat");
        assertThat(found(ROUND, "weld: {leg: 6 mm, normal: z, " + square(-400, 450, 0) + "}" + seat))
                .hasSize(1);
        assertThat(found(ROUND, "weld: {leg: 6 mm, " + square(-480, 500, 0) + "}" + seat))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.FAIL, Verdict.PASS);
    }

    @Test
    void aSeatIsLookedAtOnARoundTankAlone() {
        String seat = "seat: {at: [%s mm, %s mm, 0 mm], along: 300 mm, around: 200 mm}";
        assertThat(found(BOX, seat.formatted("0", "500")).get(0).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found(ROUND, seat.formatted("0", "900")).get(0).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }
}
