// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/**
 * What stays in pockets of an inside that is not convex. The second computation clips polygons of the side view at the level of the
 * pocket's edge. Law: what lies behind an edge stays up to the edge; solids stand at their angle of repose.
 */
class PocketTest {
    private static final double TILT = Math.toRadians(55);
    private static final double WIDTH = 0.8;

    private static Emptying emptying(String yaml) {
        Design design = Examples.read(yaml);
        return LoadTable.of(design, design.tilt().tilts()).emptying();
    }

    @Test
    void aSumpAtTheFarEndKeepsWhatLiesBehindItsEdge() {
        Emptying left = emptying(Examples.SUMP);
        double liquid = WIDTH * behindEdge(TILT);
        assertThat(left.liquid().volume()).isCloseTo(liquid, within(1e-9)).isCloseTo(0.0175, within(1e-5));
        double cake = WIDTH * behindEdge(TILT - Math.toRadians(25));
        assertThat(left.cake()).isNotNull();
        assertThat(left.cake().volume()).isCloseTo(cake, within(1e-9));
        Double needed = left.liquid().tiltNeeded();
        assertThat(needed).isNotNull();
        assertThat(WIDTH * behindEdge(needed)).isCloseTo(0.02 * 0.6 * 0.6 * WIDTH, within(2e-5));
    }

    /** Area of the sump below a surface through its edge that has turned by an angle from level, m2. */
    private static double behindEdge(double angle) {
        return behind(angle, -0.3, 0.55);
    }

    /** The same below a surface through another place. */
    private static double behind(double angle, double x, double y) {
        double ux = -Math.sin(angle);
        double uy = Math.cos(angle);
        double edge = x * ux + y * uy;
        double[][] sump = {{-0.5, 0.3}, {-0.3, 0.3}, {-0.3, 0.55}, {-0.5, 1.1}};
        List<double[]> cut = new ArrayList<>();
        for (int i = 0; i < sump.length; i++) {
            double[] p = sump[i];
            double[] q = sump[(i + 1) % sump.length];
            double hp = p[0] * ux + p[1] * uy - edge;
            double hq = q[0] * ux + q[1] * uy - edge;
            if (hp <= 0) {
                cut.add(p);
            }
            if (hp < 0 && hq > 0 || hp > 0 && hq < 0) {
                double s = hp / (hp - hq);
                cut.add(new double[] {p[0] + s * (q[0] - p[0]), p[1] + s * (q[1] - p[1])});
            }
        }
        double twice = 0;
        for (int i = 0; i < cut.size(); i++) {
            double[] p = cut.get(i);
            double[] q = cut.get((i + 1) % cut.size());
            twice += p[0] * q[1] - q[0] * p[1];
        }
        return twice / 2;
    }

    @Test
    void aStepThatNothingCameToKeepsNothing() {
        // a ledge high at the far end with a groove in it, over 20 % of slurry
        String ledge = swap(
                Examples.SUMP,
                "[[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 550 mm], [500 mm, 550 mm], [500 mm, 1100 mm], [-500 mm, 1100 mm]]",
                "[[-300 mm, 550 mm], [500 mm, 550 mm], [500 mm, 1100 mm], [-500 mm, 1100 mm], [-500 mm, 900 mm], [-400 mm, 900 mm],"
                        + " [-400 mm, 950 mm], [-300 mm, 950 mm]]",
                "fill: 60 %",
                "fill: 20 %");
        assertThat(emptying(ledge).liquid().volume()).isZero();
        double groove = WIDTH * 0.5 * 0.05 * 0.05 / Math.tan(TILT);
        assertThat(emptying(swap(ledge, "fill: 20 %", "fill: 98 %")).liquid().volume())
                .isCloseTo(groove, within(1e-9));
    }

    @Test
    void aRoofThatDipsKeepsNothingAndARidgeAlongTheFloorNoMoreThanTheLip() {
        String roof = swap(Examples.SUMP, "[500 mm, 1100 mm], [-500 mm", "[500 mm, 1100 mm], [0 mm, 900 mm], [-500 mm");
        String flat = swap(roof, "[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 550 mm]", "[-500 mm, 550 mm]");
        assertThat(emptying(flat).liquid().volume()).isZero();
        assertThat(emptying(flat).cake().volume()).isZero();
        assertThat(emptying(roof).liquid().volume())
                .isCloseTo(emptying(Examples.SUMP).liquid().volume(), within(1e-9));
    }

    @Test
    void aDrainAtTheFootOfTheSumpEmptiesIt() {
        String drain = swap(
                Examples.SUMP,
                "opens-at: 5 deg}",
                "opens-at: 5 deg}\n    - {name: drain, rim: circle, diameter: 20 mm, centre: [-310 mm, 300 mm, 0 mm], normal: [0, -1, 0], opens-at: 10 deg}");
        assertThat(emptying(drain).liquid().volume()).isLessThan(0.001);
        assertThat(emptying(swap(drain, "opens-at: 10 deg", "opens-at: 60 deg"))
                        .liquid()
                        .volume())
                .isCloseTo(emptying(Examples.SUMP).liquid().volume(), within(1e-9));
    }

    /** Across the slope edge and lip are equally high, so that what hollows keep is all that is below the lip. */
    @Test
    void acrossTheSlopeHollowsKeepWhatIsBelowTheLip() {
        for (double cross : new double[] {0, 4, -11}) {
            Contents contents = new Contents(
                    Examples.read(Examples.SUMP + "site: {cross-slope: " + cross + " deg}\n"),
                    Vessel.of(Examples.read(Examples.SUMP)));
            double tilt = 0;
            double opened = Math.toRadians(5);
            Vec3 up = contents.up(tilt);
            double lip = Math.min(up.dot(new Vec3(0.5, 0.55, 0.4)), up.dot(new Vec3(0.5, 0.55, -0.4)));
            assertThat(contents.hollows(opened, up, place -> true))
                    .isCloseTo(contents.solid().below(new Plane(up, lip)).volume(), within(1e-12));
            assertThat(contents.hollows(tilt, up, place -> true)).isZero();
        }
    }

    /**
     * While it tips, the sump is full to its edge at every tilt from which its lip lies higher than the outlet's; the loads count what lies
     * below the outlet's lip alone.
     */
    @Test
    void whatTheLoadsLeaveOutOnTheWayIsTold() {
        Emptying left = emptying(Examples.SUMP);
        double most = 0;
        double at = 0;
        for (int degrees = 5; degrees <= 55; degrees++) {
            double turned = Math.toRadians(degrees);
            double more = WIDTH * (behindEdge(turned) - behind(turned, 0.5, 0.55));
            at = more > most ? turned : at;
            most = Math.max(most, more);
        }
        assertThat(left.pocket().share()).isCloseTo(most / (0.6 * 0.6 * WIDTH), within(1e-9));
        assertThat(left.pocket().tilt()).isCloseTo(at, within(1e-9));
        String plain =
                swap(Examples.SUMP, "[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 550 mm]", "[-500 mm, 550 mm]");
        assertThat(emptying(plain).pocket().share()).isZero();
    }
}
