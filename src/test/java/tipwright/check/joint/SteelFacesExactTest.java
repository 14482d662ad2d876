// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.joint.Bolts;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.PlaneAxes;

/** Faces of steel under a foot at the very limits of the rules, with numbers that a double holds exactly. */
class SteelFacesExactTest {
    /** From -0.5 to 0.5 m along u and from -0.25 to 0.25 m along v, which are x and z here. */
    private static SteelFaces faces() {
        return new SteelFaces(foot(1));
    }

    private static Foot foot(int side) {
        return new Foot(Vec3.ZERO, PlaneAxes.of(new Vec3(0, 1, 0)), side, new Vec2(-0.5, -0.25), new Vec2(0.5, 0.25));
    }

    private static SteelFaces one() {
        SteelFaces faces = faces();
        faces.add("plate", -0.5, 0.5, -0.25, 0.25);
        return faces;
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0.25",
        "0.375, 0, 0.125",
        "-0.375, 0, 0.125",
        "0, 0.125, 0.125",
        "0, -0.1875, 0.0625",
        "0.5, 0, 0",
        "0, -0.25, 0",
        "0.75, 0, -0.25",
        "-0.625, 0, -0.125",
        "0, 0.5, -0.25",
        "0, -0.375, -0.125",
        "0.625, 0.75, -0.5", // the longer of both ways
        "-1, -0.375, -0.5",
    })
    void fromAPointToTheNearestEdge(double u, double v, double expected) {
        assertThat(one().toEdge(new Vec2(u, v))).isEqualTo(expected);
    }

    /** Three plates in a row, told in another order, are one; a fourth behind a gap of 1 mm is not. Each way round, along u and along v. */
    @ParameterizedTest
    @CsvSource({"true, 1", "true, -1", "false, 1", "false, -1"})
    void steelGoesOnFromPlateToPlate(boolean alongU, int sign) {
        double[][] rows = {{0.75, 1}, {1.001, 2}, {0.25, 0.75}, {-2, 0.25}};
        PlaneAxes axes = PlaneAxes.of(new Vec3(0, 1, 0));
        SteelFaces faces = new SteelFaces(new Foot(Vec3.ZERO, axes, 1, new Vec2(-1, -1), new Vec2(1, 1)));
        for (double[] row : rows) {
            double low = Math.min(sign * row[0], sign * row[1]);
            double high = Math.max(sign * row[0], sign * row[1]);
            if (alongU) {
                faces.add("plate", low, high, -2, 2);
            } else {
                faces.add("plate", -2, 2, low, high);
            }
        }
        Vec2 at = alongU ? new Vec2(sign * 0.125, 0) : new Vec2(0, sign * 0.125);
        assertThat(faces.toEdge(at)).isEqualTo(0.875);
    }

    /** A second plate from v = -0.125 to 0.125 m: steel goes on in front of it and at its very edge, not beside it. */
    @ParameterizedTest
    @CsvSource({"0, 0.375", "0.125, 0.375", "-0.125, 0.375", "0.1875, 0.125", "-0.1875, 0.125"})
    void aNarrowerPlateHelpsOnlyWhatIsInFrontOfIt(double v, double expected) {
        SteelFaces faces = faces();
        faces.add("wide", -0.5, 0, -1, 1);
        faces.add("narrow", 0, 1, -0.125, 0.125);
        assertThat(faces.toEdge(new Vec2(-0.125, v))).isEqualTo(expected);
        assertThat(faces.names()).isEqualTo("wide, narrow");
    }

    /** A face counts up to less than 1 m beyond the foot's end, and to less than 3 mm beside it; what only a weld's gap reaches is none. */
    @Test
    void whatIsTooFarOffDoesNotCount() {
        SteelFaces far = faces();
        far.add("right", 1.5, 2, -1, 1);
        far.add("left", -2, -1.5, -1, 1);
        far.add("front", -1, 1, 0.25 + SteelFaces.GAP, 1);
        far.add("behind", -1, 1, -1, -0.25 - SteelFaces.GAP);
        assertThat(far.none()).isTrue();
        assertThat(far.names()).isEmpty();
        SteelFaces bridged = faces();
        bridged.add("front", -1, 1, 0.25, 1);
        bridged.add("behind", -1, 1, -1, -0.25);
        assertThat(bridged.none()).isTrue();
        assertThat(bridged.names()).isEqualTo("front, behind");
        SteelFaces near = faces();
        near.add("right", 1.4375, 2, -1, 1);
        near.add("left", -2, -1.4375, -1, 1);
        assertThat(near.none()).isFalse();
        assertThat(near.names()).isEqualTo("right, left");
    }

    /** Only the top of a bar lies in the plane of a foot on top of it; of one that may be on either side both faces count. */
    @Test
    void aFaceLooksToTheSideThatTheBracketIsOn() {
        List<Vec2> above = List.of(new Vec2(-1, 0), new Vec2(1, 0), new Vec2(1, 0.1), new Vec2(-1, 0.1));
        List<Vec2> below = List.of(new Vec2(-1, -0.1), new Vec2(1, -0.1), new Vec2(1, 0), new Vec2(-1, 0));
        boolean[][] expected = {{true, false}, {false, true}, {false, false}};
        int[] sides = {1, -1, 0};
        for (int i = 0; i < sides.length; i++) {
            SteelFaces over = new SteelFaces(foot(sides[i]));
            over.add("over", above, -1, 1);
            assertThat(over.none()).isEqualTo(expected[i][0]);
            SteelFaces under = new SteelFaces(foot(sides[i]));
            under.add("under", below, -1, 1);
            assertThat(under.none()).isEqualTo(expected[i][1]);
        }
    }

    /** Seams along u: on steel, past an end of it, between two plates, and over a gap that a weld bridges. */
    @ParameterizedTest
    @CsvSource({
        "-0.5, 0.5, 0",
        "-0.5, 0.75, 0.25",
        "-0.625, 0, 0.125",
        "-1, 1, 0.5",
        "0.625, 1, 0.5",
        "0.75, 0.625, 0.25",
    })
    void aSeamReachesPastThePlate(double from, double to, double past) {
        assertThat(one().past(new Vec2(from, 0), new Vec2(to, 0))).isEqualTo(past);
        SteelFaces turned = faces();
        turned.add("plate", -0.25, 0.25, -0.5, 0.5);
        assertThat(turned.past(new Vec2(0, from), new Vec2(0, to))).isEqualTo(past);
    }

    /** Between two plates 125 mm apart the farthest point is half of that off. */
    @Test
    void theMiddleOfAGapIsFarthest() {
        SteelFaces two = faces();
        two.add("right", 0.0625, 0.5, -0.25, 0.25);
        two.add("left", -0.5, -0.0625, -0.25, 0.25);
        assertThat(two.past(new Vec2(-0.5, 0), new Vec2(0.5, 0))).isCloseTo(0.0625, within(2e-7));
        assertThat(two.past(new Vec2(0.5, 0.1), new Vec2(-0.5, 0.1))).isCloseTo(0.0625, within(2e-7));
        // a third plate in the middle leaves two gaps of 31.25 mm
        two.add("middle", -0.03125, 0.03125, -0.25, 0.25);
        assertThat(two.past(new Vec2(-0.5, 0), new Vec2(0.5, 0))).isCloseTo(0.015625, within(2e-7));
        // beside all three
        assertThat(two.past(new Vec2(-0.5, 0.5), new Vec2(0.5, 0.5))).isEqualTo(0.25);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "5e-8, 0", "2e-7, 2e-7", "0.00300005, 0.003", "0.00299995, 0.003", "0.0030002, 0.0030002"})
    void roundingIsNotTold(double past, double told) {
        assertThat(SteelFaces.rounded(past)).isEqualTo(told);
    }

    /** A pin more than 3 mm off the plane tells the side. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "-0.5, -1", "0.003, 0", "-0.003, 0", "0.0031, 1", "-0.0031, -1", "NaN, 0"})
    void thePinTellsOnWhichSideTheBracketIs(double y, int side) {
        Vec2 pin = Double.isNaN(y) ? null : new Vec2(7, y);
        Foot foot = Foot.of(bolts(new Vec3(0, 1, 0)), pin);
        assertThat(foot)
                .isEqualTo(new Foot(
                        Vec3.ZERO,
                        PlaneAxes.of(new Vec3(0, 1, 0)),
                        side,
                        new Vec2(-0.5, -0.125),
                        new Vec2(0.25, 0.375)));
        assertThat(foot.half(true)).isEqualTo(0.5);
        assertThat(foot.half(false)).isEqualTo(0.375);
    }

    /** A plane may lean along the pivot by 2 in 100 and is still seen edge-on. */
    @ParameterizedTest
    @CsvSource({"0.0199, true", "-0.0199, true", "0.0201, false", "-0.0201, false", "1, false"})
    void aPlaneThatLeansIsNotSeenEdgeOn(double z, boolean seen) {
        double y = Math.sqrt(1 - z * z);
        assertThat(Foot.of(bolts(new Vec3(0, y, z)), null) != null).isEqualTo(seen);
    }

    private static Bolts bolts(Vec3 normal) {
        List<Vec2> positions = List.of(new Vec2(-0.5, 0.125), new Vec2(0.25, 0.375), new Vec2(0, -0.125));
        return new Bolts(Vec3.ZERO, normal, positions, 0.012, null, 800e6);
    }
}
