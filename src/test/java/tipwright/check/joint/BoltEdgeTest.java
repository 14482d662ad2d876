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

/** Bolts of 12 mm, which want 15.6 mm from the middle of a hole of 13 mm to the edge, on a rail and through welded plates, by hand. */
class BoltEdgeTest {
    private static final String BOX = swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 10 deg");
    /** Its top is at y = -550 mm, it ends at x = -600 mm and is 50 mm wide. */
    private static final String RAIL =
            "frame: {members: [{name: rail, outline: [[-1200 mm, -650 mm], [-600 mm, -650 mm],"
                    + " [-600 mm, -550 mm], [-1200 mm, -550 mm]], z: [-25 mm, 25 mm]}]}\n";

    private static Finding found(String fastening) throws CannotComputeException {
        List<Finding> all = new BoltEdgeCheck()
                .run(Analyser.analyse(
                        Examples.read(BOX + RAIL + "fastenings:\n  - {joint: frame-pin, " + fastening + "}\n")));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static String bolts(double x, double y, double z, String positions) {
        return "bolts: {at: [" + x + " mm, " + y + " mm, " + z + " mm], diameter: 12 mm, positions: [" + positions
                + "]}";
    }

    /** The use goes on beyond a tenth of what is wanted in a straight line, into the air too. */
    @ParameterizedTest
    @CsvSource({
        "-620, 20, 0.78",
        "-615.6, 15.6, 1",
        "-604, 4, 3.9",
        "-601.56, 1.56, 10",
        "-600.78, 0.78, 10.5",
        "-600, 0, 11",
        "-598.44, 0, 12",
        "-561, 0, 36",
    })
    void theNearerToTheEdgeTheMoreItIsUsed(double x, double edge, double use) throws CannotComputeException {
        Finding found = found(bolts(x, -550, 0, "[0 mm, 0 mm], [-200 mm, 0 mm]"));
        assertThat(found.demand()).isCloseTo(edge / 1000, within(1e-9));
        assertThat(found.utilisation()).isCloseTo(use, within(1e-6));
        assertThat(found.verdict()).isEqualTo(use > 1 ? Verdict.FAIL : Verdict.PASS);
    }

    /** The bolt that is nearest to an edge is named; of several that are as near, the first. */
    @Test
    void theWorstBoltIsNamed() throws CannotComputeException {
        String third = "[0 mm, 0 mm], [-60 mm, 0 mm], [0 mm, 7 mm], [-60 mm, 5 mm]";
        Finding found = found(bolts(-700, -550, 0, third));
        assertThat(found.demand()).isCloseTo(0.018, within(1e-9));
        assertThat(found.note().metric()).isEqualTo("from the middle of bolt 3; in line with it: rail");
        String alike = "[0 mm, 0 mm], [-60 mm, -7 mm], [0 mm, 7 mm]";
        assertThat(found(bolts(-700, -550, 0, alike)).note().metric()).startsWith("from the middle of bolt 2;");
    }

    /** A plate of 160 by 60 mm whose middle is 30 mm along and 10 mm across from the point that the bolts are measured from. */
    @ParameterizedTest
    @CsvSource({
        "30, 10, 30",
        "80, 10, 30",
        "95, 10, 15",
        "-40, 10, 10",
        "30, 32, 8",
        "30, -12, 8",
        "109, 39, 1",
        "-49, -19, 1",
        "111, 10, NaN",
        "-51, 10, NaN",
        "30, 41, NaN",
        "30, -21, NaN",
    })
    void throughAPlateAsideOfTheBolts(double u, double v, double edge) throws CannotComputeException {
        String weld = ", weld: {leg: 6 mm, at: [-270 mm, -300 mm, 10 mm], rectangle: {u: 160 mm, v: 60 mm}}";
        Finding found = found(bolts(-300, -300, 0, "[" + u + " mm, " + v + " mm]") + weld);
        if (Double.isNaN(edge)) {
            assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        } else {
            assertThat(found.demand()).isCloseTo(edge / 1000, within(1e-9));
            assertThat(found.note().metric())
                    .isEqualTo("from the middle of bolt 1; in line with it: the plate that is welded on");
        }
    }

    /** A plate in another plane, or turned another way, is not what the bolts go through. */
    @Test
    void aPlateInAnotherPlane() throws CannotComputeException {
        String weld = ", weld: {leg: 6 mm, at: [-300 mm, Y mm, 0 mm], NORMAL rectangle: {u: 160 mm, v: 60 mm}}";
        for (String y : List.of("-302.9", "-297.1")) {
            String near = swap(weld, "Y mm", y + " mm", "NORMAL ", "");
            assertThat(found(bolts(-300, -300, 0, "[0 mm, 0 mm]") + near).demand())
                    .isCloseTo(0.03, within(1e-9));
        }
        for (String y : List.of("-303.1", "-296.9")) {
            String off = swap(weld, "Y mm", y + " mm", "NORMAL ", "");
            assertThat(found(bolts(-300, -300, 0, "[0 mm, 0 mm]") + off).verdict())
                    .isEqualTo(Verdict.NOT_CHECKED);
        }
        String turned = swap(weld, "Y mm", "-300 mm", "NORMAL ", "normal: x, ");
        assertThat(found(bolts(-300, -300, 0, "[0 mm, 0 mm]") + turned).verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        String back = swap(weld, "Y mm", "-300 mm", "NORMAL ", "normal: [0, -1, 0], ");
        assertThat(found(bolts(-300, -300, 0, "[0 mm, 0 mm]") + back).demand()).isCloseTo(0.03, within(1e-9));
    }
}
