// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Lug;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.Beam;
import tipwright.strength.BoltGroup;
import tipwright.strength.LugStress;
import tipwright.strength.RectangularTube;

/** Lugs, bolts, tubes and beams against handbook figures. */
class LugAndTubeTest {
    private static final Percentage EXACT = Percentage.withPercentage(1e-9);

    /** Source: own input set: 30 kN, t 12, e 35, d 25, w 60 mm: tear-out 55.56, net section 71.43, bearing 100.0 MPa. */
    @Test
    void lug() {
        Lug lug = new Lug(0.06, 0.012, 0.025, 0.035, 1, 235e6);
        assertThat(LugStress.tearOut(lug, 30_000) / 1e6).isCloseTo(55.56, within(0.005));
        assertThat(LugStress.netSection(lug, 30_000) / 1e6).isCloseTo(71.43, within(0.005));
        assertThat(LugStress.bearing(lug, 30_000) / 1e6).isCloseTo(100.0, within(0.05));
    }

    /** Source: own input set: tube 100 x 50 x 4: I 1 441 259 mm4, S 28 825 mm3; 2 kN m gives 69.38 MPa. */
    @Test
    void tube() {
        RectangularTube tube = new RectangularTube(0.1, 0.05, 0.004);
        assertThat(tube.inertia() * 1e12).isCloseTo(1_441_259, within(0.5));
        assertThat(tube.modulus() * 1e9).isCloseTo(28_825, within(0.5));
        assertThat(2000 / tube.modulus() / 1e6).isCloseTo(69.38, within(0.005));
        assertThat(new RectangularTube(0.05, 0.1, 0.004).inertiaAcross()).isCloseTo(tube.inertia(), EXACT);
    }

    /** Source: beam tables (AISC Manual, Roark; from memory): P L/4 and P L^3/48EI; two loads a from the ends: P a. */
    @Test
    void beamTables() {
        Beam beam = new Beam(-0.4, 0.4);
        double[] middle = {0};
        double[] p = {9000};
        assertThat(beam.moment(0, middle, p)).isCloseTo(9000 * 0.8 / 4, EXACT);
        assertThat(beam.deflection(0, middle, p, 5e5)).isCloseTo(9000 * Math.pow(0.8, 3) / (48 * 5e5), EXACT);
        double[] two = {-0.15, 0.15};
        double[] pp = {4000, 4000};
        double a = 0.25;
        assertThat(beam.moment(0, two, pp)).isCloseTo(4000 * a, EXACT);
        assertThat(beam.deflection(0, two, pp, 5e5)).isCloseTo(4000 * a * (3 * 0.64 - 4 * a * a) / (24 * 5e5), EXACT);
        assertThat(beam.deflection(-0.15, two, pp, 5e5)).isCloseTo(beam.deflection(0.15, two, pp, 5e5), EXACT);
    }

    /** Source: beam tables (from memory): overhanging end a with P: moment at the rest P a, reactions P (1 + a/L) and -P a/L. */
    @Test
    void overhangingBeam() {
        Beam beam = new Beam(0, 1);
        double[] at = {1.3};
        double[] p = {1000};
        assertThat(beam.moment(1, at, p)).isCloseTo(-300, EXACT);
        assertThat(beam.second(at, p)).isCloseTo(1300, EXACT);
        assertThat(beam.first(at, p)).isCloseTo(-300, EXACT);
        assertThat(beam.shear(1.1, at, p)).isCloseTo(1000, EXACT);
    }

    /**
     * Source: Shigley, Mechanical Engineering Design, example 8-7 (from memory, recomputed): 16 kN at 425 mm from the middle of four
     * bolts at 75 mm and 60 mm: 21.0 kN on the two near, 14.8 (printed as 13.8 in some editions) on the two far.
     */
    @Test
    void boltedCantilever() {
        List<Vec2> four =
                List.of(new Vec2(-0.075, -0.06), new Vec2(0.075, -0.06), new Vec2(0.075, 0.06), new Vec2(-0.075, 0.06));
        BoltGroup group = new BoltGroup(new Bolts(Vec3.ZERO, new Vec3(0, 0, 1), four, 0.016, null, 800e6));
        List<BoltGroup.Load> loads = group.loads(new Vec3(0, -16_000, 0), new Vec3(0.425, 0, 0));
        double[] shear =
                loads.stream().mapToDouble(l -> l.shear() / 1000).sorted().toArray();
        assertThat(shear[3]).isCloseTo(21.0, within(0.05));
        assertThat(shear[2]).isCloseTo(21.0, within(0.05));
        assertThat(shear[0]).isCloseTo(14.8, within(0.05));
        assertThat(loads).allSatisfy(l -> assertThat(l.pull()).isZero());
    }

    /** Source: ISO 898-1 stress areas (from memory): M8 36.6, M10 58.0, M12 84.3, M16 157, M20 245, M24 353 mm2. */
    @Test
    void stressAreas() {
        double[][] table = {{8, 36.6}, {10, 58.0}, {12, 84.3}, {16, 157}, {20, 245}, {24, 353}};
        for (double[] row : table) {
            assertThat(BoltGroup.stressArea(row[0] / 1000) * 1e6).isCloseTo(row[1], within(row[1] < 100 ? 0.05 : 0.6));
        }
    }

    /** Pull from a moment: two rows 2 h apart, each bolt M / (n h); source: elementary statics. */
    @Test
    void boltsUnderAMoment() {
        List<Vec2> four =
                List.of(new Vec2(-0.1, -0.05), new Vec2(0.1, -0.05), new Vec2(0.1, 0.05), new Vec2(-0.1, 0.05));
        BoltGroup group = new BoltGroup(new Bolts(Vec3.ZERO, new Vec3(0, 1, 0), four, 0.012, null, 800e6));
        List<BoltGroup.Load> loads = group.loads(new Vec3(2000, 0, 0), new Vec3(0, 0.3, 0));
        double[] pulls =
                loads.stream().mapToDouble(BoltGroup.Load::pull).sorted().toArray();
        assertThat(pulls[3]).isCloseTo(600 / (4 * 0.1), EXACT);
        assertThat(pulls[2]).isCloseTo(pulls[3], EXACT);
        assertThat(pulls[1]).isZero();
        // Pushed towards +x above the plate, the bolts on the -x side are pulled.
        assertThat(loads.get(0).pull()).isPositive();
        assertThat(loads.get(1).pull()).isZero();
    }
}
