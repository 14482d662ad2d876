// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.joint.Fastening;

/** What of a tank's wall a bracket stands on: round walls that lie along the pivot, outlines as drawn, openings nearby. */
class DrawnSteelTest {
    private static final String OUT = swap(
            Examples.BOX,
            "tank-pin: [-450 mm, 400 mm]",
            "tank-pin: [-550 mm, 400 mm]",
            "to: 80 deg",
            "to: 20 deg, step: 10 deg");
    /** Outside its lowest line is at y = 500 mm, its farthest one at x = -500 mm; it is straight from z = -500 mm to 500 mm. */
    private static final String ACROSS = swap(
            OUT,
            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
            "{shape: cylinder, axis: z, diameter: 992 mm, length: 1 m, centre: [0 m, 1 m, 0 m]}");

    private static final String LENGTHWISE = swap(ACROSS, "axis: z", "axis: x");
    private static final String NO_FACE = "tank.attached: no face in line with the weld is drawn";

    private static Finding weld(String tank, String weld) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(
                tank + "fastenings:\n  - {joint: tank-pin, on: tank, weld: {leg: 6 mm, " + weld + "}}\n"));
        List<Finding> found = new SteelBehindCheck().run(analysis);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static String plate(String normal, double x, double y, double z, double u, double v) {
        return "normal: " + normal + ", at: [" + x + " mm, " + y + " mm, " + z + " mm], rectangle: {u: " + u
                + " mm, v: " + v + " mm}";
    }

    private static void untold(Finding found, String why) {
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.note().metric()).isEqualTo(why);
    }

    /** Plates of 80 mm by 40 mm, the 40 mm along the pivot, under a round wall that lies along the pivot, and at its far side. */
    @ParameterizedTest
    @CsvSource({"0, 0", "480, 0", "484, 4", "-480, 0", "-490, 10"})
    void aRoundWallAlongThePivot(double z, double past) throws CannotComputeException {
        assertThat(weld(ACROSS, plate("y", 0, 500, z, 80, 40)).demand()).isCloseTo(past / 1000, within(1e-9));
        assertThat(weld(ACROSS, plate("x", -500, 1000, z, 80, 40)).demand()).isCloseTo(past / 1000, within(1e-9));
        // the same along x, with the axis either way
        assertThat(weld(LENGTHWISE, plate("y", z, 500, 0, 40, 80)).demand()).isCloseTo(past / 1000, within(1e-9));
        assertThat(weld(swap(LENGTHWISE, "axis: x", "axis: '-x'"), plate("y", z, 500, 0, 40, 80))
                        .demand())
                .isCloseTo(past / 1000, within(1e-9));
    }

    /** Half as wide as the radius a plate that is cut to fit may be, and no wider; it follows the bend by 500 - sqrt(500^2 - 100^2) mm. */
    @Test
    void aPlateThatIsCutToFitTheWall() throws CannotComputeException {
        assertThat(weld(ACROSS, plate("y", 0, 500, 0, 499, 40)).demand()).isZero();
        untold(weld(ACROSS, plate("y", 0, 500, 0, 501, 40)), NO_FACE);
        assertThat(weld(LENGTHWISE, plate("y", 0, 500, 0, 40, 499)).demand()).isZero();
        untold(weld(LENGTHWISE, plate("y", 0, 500, 0, 40, 501)), NO_FACE);
        double bend = 500 - Math.sqrt(500 * 500 - 100 * 100);
        assertThat(weld(ACROSS, plate("y", 0, 500 + bend + 2.9, 0, 200, 40)).demand())
                .isZero();
        untold(weld(ACROSS, plate("y", 0, 500 + bend + 3.1, 0, 200, 40)), NO_FACE);
        assertThat(weld(ACROSS, plate("y", 0, 497.1, 0, 200, 40)).demand()).isZero();
        untold(weld(ACROSS, plate("y", 0, 496.9, 0, 200, 40)), NO_FACE);
    }

    /** A seam from 60 mm before to 20 mm behind the point that it is measured from ends with the wall 20 mm behind that point. */
    @Test
    void aSeamThatReachesFartherToOneSide() throws CannotComputeException {
        String seam = "normal: y, at: [%s mm, 500 mm, %s mm], segments: [{from: [%s mm, %s mm], to: [%s mm, %s mm]}]";
        for (int sign : new int[] {1, -1}) {
            assertThat(weld(ACROSS, seam.formatted(0, sign * 480, 0, -sign * 60, 0, sign * 20))
                            .demand())
                    .isZero();
            assertThat(weld(ACROSS, seam.formatted(0, sign * 485, 0, -sign * 60, 0, sign * 20))
                            .demand())
                    .isCloseTo(0.005, within(1e-9));
            assertThat(weld(LENGTHWISE, seam.formatted(sign * 480, 0, -sign * 60, 0, sign * 20, 0))
                            .demand())
                    .isZero();
        }
    }

    /** A pin in the plane of the plate does not tell on which side the bracket is: the wall counts. */
    @Test
    void aPinInThePlaneOfThePlate() throws CannotComputeException {
        String in = swap(ACROSS, "tank-pin: [-550 mm, 400 mm]", "tank-pin: [-550 mm, 500 mm]");
        assertThat(weld(in, plate("y", 0, 500, 0, 80, 40)).demand()).isZero();
    }

    /** On the far side of the tank from the pin, beside the line where the wall is level, and across a wall that lies slanting. */
    @Test
    void whatDoesNotLieOnTheRoundWall() throws CannotComputeException {
        untold(weld(ACROSS, plate("y", 0, 1500, 0, 80, 40)), NO_FACE);
        untold(weld(ACROSS, plate("y", 80, 500, 0, 80, 40)), NO_FACE);
        assertThat(weld(ACROSS, plate("y", 20, 500, 0, 80, 40)).demand()).isZero();
        untold(weld(swap(ACROSS, "axis: z", "axis: [1, 0, 1]"), plate("y", 0, 500, 0, 80, 40)), NO_FACE);
    }

    /** An outline that is drawn goes before the inside and its wall; without a wall the inside is the outside. */
    @Test
    void theOutsideOfAFlatTank() throws CannotComputeException {
        String drawn = swap(
                OUT,
                "  openings:",
                "  outline: [[-600 mm, 480 mm], [600 mm, 480 mm], [600 mm, 1500 mm], [-600 mm, 1500 mm]]\n  openings:");
        assertThat(weld(drawn, plate("y", -574, 480, 0, 80, 40)).demand()).isCloseTo(0.014, within(1e-9));
        assertThat(weld(drawn, plate("y", -500, 480, 494, 80, 40)).demand()).isCloseTo(0.01, within(1e-9));
        untold(weld(drawn, plate("y", -400, 496, 0, 80, 40)), NO_FACE);
        String weighed = swap(
                OUT,
                "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                "mass: {empty: 160 kg, centre: [0 m, 900 mm, 0 m]}");
        assertThat(weld(weighed, plate("y", -474, 500, 0, 80, 40)).demand()).isCloseTo(0.014, within(1e-9));
        assertThat(weld(weighed, plate("y", -400, 500, 490, 80, 40)).demand()).isCloseTo(0.01, within(1e-9));
    }

    /** The rim at y = 1500 mm, and a plate on the wall below it that ends 4 mm or 2 mm from it: a weld bridges 3 mm. */
    @Test
    void anOpeningNearTheWeld() throws CannotComputeException {
        assertThat(weld(OUT, plate("x", -504, 1456, 0, 80, 40)).demand()).isZero();
        untold(weld(OUT, plate("x", -504, 1458, 0, 80, 40)), "an opening of the tank is too near to the weld");
        // a narrow opening counts where the plate is: from z = 40 mm to 60 mm
        String narrow = swap(
                OUT,
                "width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]",
                "width: 20 mm, height: 1 m, centre: [0 m, 1.5 m, 50 mm]");
        untold(weld(narrow, plate("x", -504, 1464, 18, 80, 40)), "an opening of the tank is too near to the weld");
        untold(weld(narrow, plate("x", -504, 1464, 82, 80, 40)), "an opening of the tank is too near to the weld");
        for (double z : new double[] {16, 84}) {
            assertThat(weld(narrow, plate("x", -504, 1464, z, 80, 40)).demand()).isZero();
        }
    }

    /** A joint that a mechanism does not have, or not on that body. */
    @Test
    void aJointThatIsNotThere() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(OUT));
        assertThat(FasteningParts.unknown(analysis, joint("knee", null)))
                .isEqualTo(
                        "fastenings: this mechanism has no joint 'knee'; it has frame-pin, tank-pin, bearing-1, bearing-2");
        assertThat(FasteningParts.unknown(analysis, joint("knee", "tank")))
                .startsWith("fastenings: this mechanism has no joint 'knee' on tank; it has frame-pin, ");
        assertThat(FasteningParts.unknown(analysis, joint("frame-pin", "tank")))
                .isEqualTo("fastenings: the joint 'frame-pin' is not on 'tank'");
        assertThat(JointLoad.of(analysis, joint("pivot", null), 0)).isNull();
        assertThat(JointLoad.of(analysis, joint("frame-pin", "tank"), 0)).isNull();
    }

    private static Fastening joint(String joint, @Nullable String on) {
        return new Fastening(joint, on, null, null, null, null, null, null);
    }
}
