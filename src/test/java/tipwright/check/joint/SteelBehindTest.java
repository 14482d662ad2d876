// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.Swap;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Feet of brackets on, half off and beside steel, by hand. The frame pin is at x = -600 mm, y = -500 mm. */
class SteelBehindTest {
    private static final String RAIL =
            "{name: rail, outline: [[-1200 mm, -650 mm], [-600 mm, -650 mm], [-600 mm, -550 mm], [-1200 mm, -550 mm]], z: [-25 mm, 25 mm]}";

    private static Analysis with(String yaml) {
        try {
            return Analyser.analyse(Examples.read(yaml));
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    private static String frame(String members, String fastening) {
        return Examples.BOX + "frame: {members: [" + members + "]}\nfastenings:\n  - {joint: frame-pin, " + fastening
                + "}\n";
    }

    private static Finding only(Check check, String yaml) {
        List<Finding> all = check.run(with(yaml));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static Finding weld(String members, String weld) {
        return only(new SteelBehindCheck(), frame(members, "weld: {leg: 6 mm, " + weld + "}"));
    }

    private static String square(double x, double y, double z) {
        return "at: [" + x + " mm, " + y + " mm, " + z + " mm], rectangle: {u: 80 mm, v: 40 mm}";
    }

    /** The rail ends at x = -600 mm, its top is at y = -550 mm, it is 50 mm wide. */
    @ParameterizedTest
    @CsvSource({
        "-700, -550, 0, 0", // all on
        "-640, -550, 0, 0", // to the very end
        "-637, -550, 0, 3", // the most that may stick out
        "-636.9, -550, 0, 3.1",
        "-600, -550, 0, 40", // half off
        "-400, -550, 0, 240", // off by 160 mm, and 80 mm long
        "-700, -550, 5, 0", // flush with its side
        "-700, -550, 8, 3",
        "-700, -550, -9, 4",
        "-700, -547, 0, 0", // as wide a gap as a weld bridges
        "-700, -553, 0, 0",
        "-597, -550, 8, 43",
    })
    void aWeldOnTheTopOfARail(double x, double y, double z, double past) {
        Finding found = weld(RAIL, square(x, y, z));
        assertThat(found.demand()).isCloseTo(past / 1000, within(1e-9));
        assertThat(found.verdict()).isEqualTo(past > 3 ? Verdict.FAIL : past > 2.7 ? Verdict.CLOSE : Verdict.PASS);
        assertThat(found.utilisation()).isCloseTo(past / 3, within(1e-6));
    }

    /** Where nothing lies in the weld's plane, no verdict: above and below the top, beside it, below the rail, a metre and more away. */
    @ParameterizedTest
    @CsvSource({
        "-700, -546.9, 0",
        "-700, -553.1, 0",
        "-700, -600, 0",
        "-700, -550, 46",
        "-700, -650, 0",
        "600, -550, 0",
    })
    void whatLiesOnNoFaceCannotBeTold(double x, double y, double z) {
        Finding found = weld(RAIL, square(x, y, z));
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).isTrue();
        assertThat(found.note().metric()).contains("frame.members");
    }

    @Test
    void onTheEndOfARailAndOnItsUnderside() {
        String end = "normal: x, at: [-600 mm, %s mm, 0 mm], rectangle: {u: 100 mm, v: 40 mm}";
        // the pin is straight above the end: either side of it may carry
        assertThat(weld(RAIL, end.formatted("-600")).demand()).isZero();
        assertThat(weld(RAIL, end.formatted("-570")).demand()).isCloseTo(0.03, within(1e-9));
        // the pin hangs below
        String high = Swap.swap(RAIL, "-550", "-350").replace("-650", "-450");
        assertThat(weld(high, square(-700, -450, 0)).demand()).isZero();
        assertThat(weld(high, square(-700, -350, 0)).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** Two rails with a gap of 6 mm between them, which a weld bridges from both sides, and with one of 10 mm. */
    @Test
    void acrossTwoRails() {
        String next =
                "{name: next, outline: [[%s mm, -650 mm], [-100 mm, -650 mm], [-100 mm, -550 mm], [%s mm, -550 mm]]}";
        assertThat(weld(RAIL + ", " + next.formatted("-594", "-594"), square(-600, -550, 0))
                        .demand())
                .isLessThanOrEqualTo(0.003);
        assertThat(weld(RAIL + ", " + next.formatted("-590", "-590"), square(-600, -550, 0))
                        .demand())
                .isCloseTo(0.005, within(1e-6));
    }

    /** A face at 10 deg to the weld runs off it: 40 mm either way it is 7.05 mm off, and within 3 mm for 17.01 mm either way. */
    @Test
    void onASlope() {
        double rise = 500 * Math.tan(Math.toRadians(9.9));
        String slope = "{name: slope, outline: [[-1200 mm, -750 mm], [-200 mm, -750 mm], [-200 mm, " + (-550 + rise)
                + " mm], [-1200 mm, " + (-550 - rise) + " mm]]}";
        double reach = 3 / Math.tan(Math.toRadians(9.9));
        assertThat(weld(slope, square(-700, -550, 0)).demand()).isCloseTo((40 - reach) / 1000, within(1e-6));
        String turned = "normal: [-0.17453, 1, 0], ";
        assertThat(weld(slope, turned + square(-700, -550, 0)).demand()).isZero();
    }

    @Test
    void twoSeamsCountOneByOne() {
        String lines = "at: [-700 mm, -550 mm, 0 mm], lines: {length: 80 mm, apart: %s mm}";
        assertThat(weld(RAIL, lines.formatted("50")).demand()).isZero();
        assertThat(weld(RAIL, lines.formatted("60")).demand()).isCloseTo(0.005, within(1e-9));
        // one on each of two rails, nothing between them
        String left = RAIL.replace("z: [-25 mm, 25 mm]", "z: [100 mm, 150 mm]");
        String right =
                RAIL.replace("z: [-25 mm, 25 mm]", "z: [-150 mm, -100 mm]").replace("rail", "right");
        assertThat(weld(left + ", " + right, lines.formatted("250")).demand()).isZero();
        assertThat(weld(left + ", " + right, square(-700, -550, 0)).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    @Test
    void aFlatLyingPlateAndAFrameThatIsNotDrawnCannotBeTold() {
        Finding flat = weld(RAIL, "normal: z, " + square(-700, -600, 25));
        assertThat(flat.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(flat.missing()).isFalse();
        Finding none = only(
                new SteelBehindCheck(),
                Examples.BOX + "fastenings:\n  - {joint: frame-pin, weld: {leg: 6 mm, " + square(-700, -550, 0)
                        + "}}\n");
        assertThat(none.note().metric()).isEqualTo("frame.members missing");
    }

    @Test
    void theCrossMemberCarriesToo() {
        String tube = Examples.BOX
                + "frame: {cross-member: {at: [-600 mm, -600 mm], height: 100 mm, width: 80 mm, wall: 5 mm,"
                + " z: [-400 mm, 400 mm]}}\nfastenings:\n  - {joint: frame-pin, weld: {leg: 6 mm, ";
        assertThat(only(new SteelBehindCheck(), tube + square(-600, -550, 0) + "}}\n")
                        .demand())
                .isZero();
        assertThat(only(new SteelBehindCheck(), tube + square(-590, -550, 0) + "}}\n")
                        .demand())
                .isCloseTo(0.01, within(1e-9));
    }

    /** By hand: a hole for M12 is 13 mm, 1.2 times that 15.6 mm. The rail's sides are at z = 25 mm, its end at x = -600 mm. */
    @ParameterizedTest
    @CsvSource({
        "-700, 0, 9.4, 15.6, PASS",
        "-700, 0, 9.5, 15.5, FAIL",
        "-624.4, 0, 5, 15.6, PASS",
        "-624.3, 0, 5, 15.5, FAIL",
        "-600, 0, 5, 0, FAIL",
        "-500, 0, 5, 0, FAIL",
    })
    void boltsKeepTheirDistance(double x, double z, double v, double edge, Verdict verdict) {
        String bolts = "bolts: {at: [" + x + " mm, -550 mm, " + z
                + " mm], diameter: 12 mm, positions: [[-60 mm, 0 mm], [8.8 mm, " + v + " mm]]}";
        Finding found = only(new BoltEdgeCheck(), frame(RAIL, bolts));
        assertThat(found.capacity()).isCloseTo(0.0156, within(1e-9));
        assertThat(found.demand()).isCloseTo(edge / 1000, within(1e-9));
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.utilisation() > 1).isEqualTo(verdict == Verdict.FAIL);
    }

    /** By hand: 60 mm out of the middle of a welded plate of 160 mm leave 20 mm; of 150 mm 15 mm. Outside a plate they need steel. */
    @Test
    void boltsThroughAWeldedPlate() {
        String both =
                "bolts: {at: [-300 mm, -300 mm, 0 mm], diameter: 12 mm, positions: [[-60 mm, 0 mm], [60 mm, 0 mm]]},"
                        + " weld: {leg: 6 mm, at: [-300 mm, -300 mm, 0 mm], rectangle: {u: %s mm, v: 60 mm}}";
        for (int length : new int[] {160, 150}) {
            Finding found = only(new BoltEdgeCheck(), frame(RAIL, both.formatted(length)));
            assertThat(found.demand()).isCloseTo((length / 2 - 60) / 1000.0, within(1e-9));
            assertThat(found.verdict()).isEqualTo(length == 160 ? Verdict.PASS : Verdict.FAIL);
        }
        assertThat(only(new BoltEdgeCheck(), frame(RAIL, both.formatted(100))).verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
    }
}
