// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.check.standing.Footprint;
import tipwright.check.standing.SupportLoads;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Tipping over and support reactions against statics texts. */
class StabilityTextbookTest {
    private static final double G = 9.81;

    private static Footprint square(double half) {
        return Footprint.around(
                List.of(new Vec2(-half, -half), new Vec2(half, -half), new Vec2(half, half), new Vec2(-half, half)), 0);
    }

    private static Footprint.Edge edgeTowards(Footprint footprint, double x, double z) {
        return footprint.edges().stream()
                .filter(e -> e.outward().minus(new Vec2(x, z)).norm() < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    /** Source: statics, own input set: half track 0.9 m, centre of mass 1.2 m up: tips at 36.870 degrees. */
    @Test
    void tipsWhenTheCentreOfMassIsOverTheEdge() {
        Footprint feet = square(0.9);
        List<Footprint.Mass> mass = List.of(new Footprint.Mass(500, new Vec3(0, 1.2, 0)));
        for (Footprint.Edge edge : feet.edges()) {
            assertThat(Math.toDegrees(feet.steepest(edge, mass, G, 0, 1))).isCloseTo(36.870, within(0.0005));
        }
    }

    /**
     * Source: statics, own input set: 12 kN at 0.2, 0.7 m and 9 kN at 0.6, 1.6 m, edge at 0.9 m: tips at 25.9588 degrees; on 5
     * degrees restoring 11 057.8, overturning 1987.15 N m, ratio 5.5646.
     */
    @Test
    void twoMasses() {
        Footprint feet = square(0.9);
        Footprint.Edge edge = edgeTowards(feet, 1, 0);
        List<Footprint.Mass> masses = List.of(
                new Footprint.Mass(12_000 / G, new Vec3(0.2, 0.7, 0)),
                new Footprint.Mass(9_000 / G, new Vec3(0.6, 1.6, 0)));
        double a = Math.toRadians(5);
        Footprint.Moments m = feet.about(edge, masses, G, new Vec3(-Math.sin(a), Math.cos(a), 0), 0);
        assertThat(m.restoring()).isCloseTo(11_057.8, within(0.05));
        assertThat(m.overturning()).isCloseTo(1987.15, within(0.005));
        assertThat(1 / m.share()).isCloseTo(5.5646, within(0.00005));
        assertThat(Math.toDegrees(feet.steepest(edge, masses, G, 0, 1))).isCloseTo(25.9588, within(0.00005));
    }

    /**
     * Source: statics course, case 05.2 (read): crane truck 2000 kg midway between wheels at +-1.4 m, 400 kg on an 8 m boom at 30
     * degrees: 2063 and 21 480 N on the two axles (2062.6 and 21 481.4).
     */
    @Test
    void craneTruck() {
        List<Vec2> wheels = List.of(new Vec2(-1.4, -0.9), new Vec2(-1.4, 0.9), new Vec2(1.4, 0.9), new Vec2(1.4, -0.9));
        double boom = 8 * Math.cos(Math.toRadians(30));
        double[] loads = SupportLoads.of(wheels, 2400 * G, new Vec2(400 * boom / 2400, 0));
        assertThat(loads[0] + loads[1]).isCloseTo(2062.6, within(0.05));
        assertThat(loads[2] + loads[3]).isCloseTo(21_481.4, within(0.05));
        assertThat(loads[0]).isCloseTo(loads[1], within(1e-9));
    }

    /** Three legs are plain statics: a force over one leg goes into it alone, one in the middle is shared; source: statics. */
    @Test
    void threeLegs() {
        List<Vec2> legs = List.of(new Vec2(0, 0), new Vec2(2, 0), new Vec2(0, 3));
        assertThat(SupportLoads.of(legs, 900, new Vec2(2, 0))).containsExactly(new double[] {0, 900, 0}, within(1e-9));
        assertThat(SupportLoads.of(legs, 900, new Vec2(2.0 / 3, 1)))
                .containsExactly(new double[] {300, 300, 300}, within(1e-9));
        assertThat(SupportLoads.of(legs, 900, new Vec2(-0.1, 0))).containsOnly(Double.NaN);
    }

    /** Four feet with the force near one corner: the opposite foot lifts, the rest is plain statics of three. */
    @Test
    void fourthFootLifts() {
        List<Vec2> feet = List.of(new Vec2(-1, -1), new Vec2(1, -1), new Vec2(1, 1), new Vec2(-1, 1));
        double[] loads = SupportLoads.of(feet, 1000, new Vec2(0.8, 0.8));
        assertThat(loads[0]).isZero();
        assertThat(loads[1] + loads[2] + loads[3]).isCloseTo(1000, within(1e-9));
        assertThat(loads[1] + loads[2] - loads[3]).isCloseTo(800, within(1e-9));
        assertThat(loads[2] + loads[3] - loads[1]).isCloseTo(800, within(1e-9));
    }
}
