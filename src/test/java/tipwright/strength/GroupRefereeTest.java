// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Groups of bolts and welds in any plane under any force, against a stiff plate on equal springs in space: each place gives f = a + w x
 * r, and a and w follow from six equations of balance, solved by Hipparchus. The elastic method is the same for a flat group.
 */
class GroupRefereeTest {
    private final Random random;

    GroupRefereeTest() {
        random = new Random(8);
    }

    static IntStream rounds() {
        return IntStream.range(0, 100);
    }

    private double some(double size) {
        return size * (2 * random.nextDouble() - 1);
    }

    private Vec3 any(double size) {
        return new Vec3(some(size), some(size), some(size));
    }

    /** v lies as near to z as the plane lets it, u across it to the side of +x. */
    private static Vec3 inPlane(Vec3 normal, Vec2 p) {
        Vec3 n = normal.unit();
        Vec3 v = new Vec3(-n.z() * n.x(), -n.z() * n.y(), 1 - n.z() * n.z()).unit();
        Vec3 u = new Vec3(-n.y(), n.x(), 0).unit();
        return u.times(u.x() < 0 ? -p.x() : p.x()).plus(v.times(p.y()));
    }

    /** Forces at other places when weighted springs at these bear a force and a moment about the datum. */
    private static List<Vec3> borne(List<Vec3> places, double[] weights, Vec3 force, Vec3 moment, List<Vec3> wanted) {
        RealMatrix balance = new Array2DRowRealMatrix(6, 6);
        for (int k = 0; k < 6; k++) {
            Vec3 e = new Vec3(k % 3 == 0 ? 1 : 0, k % 3 == 1 ? 1 : 0, k % 3 == 2 ? 1 : 0);
            Vec3 sum = Vec3.ZERO;
            Vec3 turn = Vec3.ZERO;
            for (int i = 0; i < weights.length; i++) {
                Vec3 f = (k < 3 ? e : e.cross(places.get(i))).times(weights[i]);
                sum = sum.plus(f);
                turn = turn.plus(places.get(i).cross(f));
            }
            balance.setColumn(k, new double[] {sum.x(), sum.y(), sum.z(), turn.x(), turn.y(), turn.z()});
        }
        double[] s = new LUDecomposition(balance)
                .getSolver()
                .solve(new ArrayRealVector(
                        new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()}))
                .toArray();
        Vec3 a = new Vec3(s[0], s[1], s[2]);
        Vec3 w = new Vec3(s[3], s[4], s[5]);
        return wanted.stream().map(r -> a.plus(w.cross(r))).toList();
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void boltsOfAnyPattern(int round) {
        random.setSeed(round);
        Vec3 normal = any(2);
        Vec3 datum = any(0.5);
        List<Vec2> positions = new ArrayList<>();
        for (int i = 0; i < 3 + round % 4; i++) {
            positions.add(new Vec2(some(0.2), some(0.1)));
        }
        Vec3 force = any(20_000);
        Vec3 at = any(0.8);
        BoltGroup group = new BoltGroup(new Bolts(datum, normal, positions, 0.02, 250e-6, 800e6));
        List<Vec3> places = positions.stream().map(p -> inPlane(normal, p)).toList();
        double[] ones = places.stream().mapToDouble(p -> 1).toArray();
        List<Vec3> forces = borne(places, ones, force, at.minus(datum).cross(force), places);
        List<BoltGroup.Load> loads = group.loads(force, at);
        Vec3 n = normal.unit();
        double worst = 0;
        for (int i = 0; i < places.size(); i++) {
            double pull = forces.get(i).dot(n);
            double shear = forces.get(i).minus(n.times(pull)).norm();
            assertThat(loads.get(i).pull()).isCloseTo(Math.max(0, pull), within(1e-6 * force.norm()));
            assertThat(loads.get(i).shear()).isCloseTo(shear, within(1e-6 * force.norm()));
            // EN 1993-1-8, table 3.4, from memory: 0.6 * 800 * 250 / 1.25 = 96 kN and 0.9 * 800 * 250 / 1.25 = 144 kN
            double tension = Math.max(0, pull) / 144_000;
            worst = Math.max(worst, Math.max(tension, shear / 96_000 + tension / 1.4));
        }
        assertThat(group.share(force, at)).isCloseTo(worst, within(1e-6 * worst));
    }

    /** A seam is two springs at its Gauss points, which have the second moments of the line. */
    @ParameterizedTest
    @MethodSource("rounds")
    void seamsOfAnyPattern(int round) {
        random.setSeed(1000 + round);
        Vec3 normal = any(2);
        Vec3 datum = any(0.5);
        List<FilletWeld.Seam> seams = new ArrayList<>();
        List<Vec3> places = new ArrayList<>();
        List<Vec3> ends = new ArrayList<>();
        double[] weights = new double[2 * (2 + round % 3)];
        for (int i = 0; i < weights.length; i += 2) {
            Vec2 from = new Vec2(some(0.1), some(0.1));
            Vec2 to = new Vec2(some(0.1), some(0.1));
            seams.add(new FilletWeld.Seam(from, to));
            Vec3 a = inPlane(normal, from);
            Vec3 b = inPlane(normal, to);
            Vec3 off = b.minus(a).times(0.5 / Math.sqrt(3));
            places.add(a.plus(b).times(0.5).plus(off));
            places.add(a.plus(b).times(0.5).minus(off));
            weights[i] = b.minus(a).norm() / 2;
            weights[i + 1] = weights[i];
            ends.addAll(List.of(a, b));
        }
        Vec3 force = any(20_000);
        Vec3 at = any(0.8);
        WeldGroup group = new WeldGroup(new FilletWeld(datum, normal, 0.006, 480e6, null, null, null, seams));
        double most = borne(places, weights, force, at.minus(datum).cross(force), ends).stream()
                .mapToDouble(Vec3::norm)
                .max()
                .orElseThrow();
        assertThat(group.most(force, at)).isCloseTo(most, within(1e-6 * most));
        assertThat(group.length())
                .isCloseTo(
                        IntStream.range(0, weights.length)
                                .mapToDouble(i -> weights[i])
                                .sum(),
                        within(1e-12));
    }

    /** In one line along a direction t bolts bear a moment square to t; about t itself they cannot. */
    @ParameterizedTest
    @MethodSource("rounds")
    void boltsInOneLine(int round) {
        random.setSeed(2000 + round);
        double angle = Math.PI * round / 100;
        Vec2 t = new Vec2(0, 1).tilted(angle);
        List<Vec2> positions = List.of(t.times(-0.1), t.times(0.02), t.times(0.14));
        BoltGroup group = new BoltGroup(new Bolts(Vec3.ZERO, new Vec3(0, 1, 0), positions, 0.02, 250e-6, 800e6));
        // Pulled square to the plane at 60 mm from their middle at 20 mm, along the line: 1/3 and r s / sum r^2.
        Vec3 along = new Vec3(t.x(), 0, t.y());
        List<BoltGroup.Load> pulled = group.loads(new Vec3(0, 9000, 0), along.times(0.08));
        double squares = 0.12 * 0.12 + 0 + 0.12 * 0.12;
        assertThat(pulled.get(0).pull()).isCloseTo(Math.max(0, 3000 - 9000 * 0.06 * 0.12 / squares), within(1e-6));
        assertThat(pulled.get(1).pull()).isCloseTo(3000, within(1e-6));
        assertThat(pulled.get(2).pull()).isCloseTo(3000 + 9000 * 0.06 * 0.12 / squares, within(1e-6));
        assertThat(pulled).allMatch(l -> l.shear() < 1e-6);
        Vec3 beside = along.times(0.02).plus(new Vec3(-t.y(), 0, t.x()).times(0.01));
        assertThat(group.loads(new Vec3(0, 9000, 0), beside))
                .allMatch(l -> l.pull() == Double.POSITIVE_INFINITY && l.shear() == Double.POSITIVE_INFINITY);
        assertThat(group.share(new Vec3(0, 9000, 0), beside)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void oneBoltBearsForcesButNoMoment() {
        BoltGroup one = new BoltGroup(
                new Bolts(Vec3.ZERO, new Vec3(0, 1, 0), List.of(new Vec2(0.1, 0.2)), 0.02, 250e-6, 800e6));
        Vec3 there = new Vec3(0.1, 0, 0.2);
        BoltGroup.Load load = one.loads(new Vec3(3000, 5000, 4000), there).get(0);
        assertThat(load.shear()).isCloseTo(5000, within(1e-9));
        assertThat(load.pull()).isCloseTo(5000, within(1e-9));
        // about the normal, about the plane
        assertThat(one.share(new Vec3(3000, 0, 0), new Vec3(0.1, 0, 0.3))).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(one.share(new Vec3(3000, 0, 0), new Vec3(0.1, 0.1, 0.2))).isEqualTo(Double.POSITIVE_INFINITY);
    }

    /** What the design file says of u and v. */
    @Test
    void axesOfUsualPlanes() {
        assertThat(PlaneAxes.of(new Vec3(0, 3, 0)).u().x()).isEqualTo(1);
        assertThat(PlaneAxes.of(new Vec3(0, 3, 0)).n()).isEqualTo(new Vec3(0, 1, 0));
        assertThat(PlaneAxes.of(new Vec3(0, -1, 0)).u().x()).isEqualTo(1);
        assertThat(PlaneAxes.of(new Vec3(0, -1, 0)).v().z()).isEqualTo(1);
        for (int side : new int[] {-2, 2}) {
            PlaneAxes upright = PlaneAxes.of(new Vec3(side, 0, 0));
            assertThat(upright.u().y()).isEqualTo(1);
            assertThat(upright.v().z()).isEqualTo(1);
            assertThat(upright.n().x()).isEqualTo(side / 2.0);
            PlaneAxes flat = PlaneAxes.of(new Vec3(0, 0, side));
            assertThat(flat.u()).isEqualTo(new Vec3(1, 0, 0));
            assertThat(flat.v()).isEqualTo(new Vec3(0, 1, 0));
            assertThat(flat.n().z()).isEqualTo(side / 2.0);
        }
        assertThat(PlaneAxes.of(new Vec3(1, 1, 0)).at(new Vec2(Math.sqrt(2), 0.5)))
                .satisfies(p -> assertThat(p.minus(new Vec3(1, -1, 0.5)).norm()).isLessThan(1e-12));
    }
}
