// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PolyhedronTest {
    private static final Vec3 Y = new Vec3(0, 1, 0);

    private static List<Vec2> points(double... xy) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Vec2(xy[i], xy[i + 1]));
        }
        return points;
    }

    @Test
    void aBoxFillsLevelByLevel() {
        Polyhedron box = Polyhedron.box(new Vec3(2, 3, 4), new Vec3(1, 1.5, 7));
        assertThat(box.whole().volume()).isCloseTo(24, within(1e-13));
        assertThat(box.whole().centroid().minus(new Vec3(1, 1.5, 7)).norm()).isLessThan(1e-14);
        assertThat(box.skin().area()).isCloseTo(52, within(1e-13));
        assertThat(box.skin().centroid().minus(new Vec3(1, 1.5, 7)).norm()).isLessThan(1e-14);
        Moments wet = box.below(new Plane(Y, 1.2));
        assertThat(wet.volume()).isCloseTo(8 * 1.2, within(1e-14));
        assertThat(wet.centroid().minus(new Vec3(1, 0.6, 7)).norm()).isLessThan(1e-14);
        assertThat(wet.section()).isCloseTo(8, within(1e-14));
        assertThat(box.below(new Plane(Y, -0.1))).isEqualTo(Moments.NOTHING);
    }

    /** A plane a x + b y + c z = d off a corner of the positive octant cuts d^3 / (6 a b c), centroid d / 4a, ... */
    @Test
    void aPlaneOffACornerCutsATetrahedron() {
        Polyhedron box = Polyhedron.box(new Vec3(2, 2, 2), new Vec3(1, 1, 1));
        Random random = new Random(41);
        for (int i = 0; i < 100; i++) {
            Vec3 n = new Vec3(0.1 + random.nextDouble(), 0.1 + random.nextDouble(), 0.1 + random.nextDouble()).unit();
            double d = 2 * Math.min(n.x(), Math.min(n.y(), n.z())) * random.nextDouble();
            Moments wet = box.below(new Plane(n, d));
            double volume = d * d * d / (6 * n.x() * n.y() * n.z());
            assertThat(wet.volume()).isCloseTo(volume, within(1e-14));
            assertThat(wet.section()).isCloseTo(3 * volume / d, within(1e-13));
            Vec3 centroid = new Vec3(d / (4 * n.x()), d / (4 * n.y()), d / (4 * n.z()));
            assertThat(wet.first().minus(centroid.times(volume)).norm()).isLessThan(1e-14);
        }
    }

    @Test
    void aHollowOutlineIsNotConvexAndEitherWayRoundIsTheSame() {
        Polyhedron trough = Shapes.trough();
        assertThat(trough.convex()).isFalse();
        assertThat(trough.whole().volume()).isCloseTo(0.8 * 4, within(1e-14));
        List<Vec2> outline = points(0, 0, 0, 2, 1, 2, 1, 1, 3, 1, 3, 0);
        Collections.reverse(outline);
        Polyhedron turned = Polyhedron.prism(outline, 0.8, 0.1);
        Moments a = trough.below(new Plane(new Vec3(0.6, 0.8, 0), 1));
        Moments b = turned.below(new Plane(new Vec3(0.6, 0.8, 0), 1));
        assertThat(a.volume()).isCloseTo(b.volume(), within(1e-14));
        assertThat(a.first().minus(b.first()).norm()).isLessThan(1e-14);
        assertThat(Polyhedron.prism(points(0, 0, 1, 0, 2, 0, 2, 1, 0, 1), 1, 0).convex())
                .isTrue();
    }

    /** Star-shaped outlines with random teeth: area by the shoelace formula, and a sound mesh. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7, 20, 101, 400})
    void anyHonestOutlineMakesASoundPrism(int corners) {
        for (long seed = 0; seed < 10; seed++) {
            Random random = new Random(seed);
            List<Vec2> outline = new ArrayList<>();
            double twice = 0;
            for (int i = 0; i < corners; i++) {
                double t = 2 * Math.PI * i / corners;
                double r = 0.2 + random.nextDouble();
                outline.add(new Vec2(r * Math.cos(t), r * Math.sin(t)));
            }
            for (int i = 0; i < corners; i++) {
                twice += outline.get(i).cross(outline.get((i + 1) % corners));
            }
            Polyhedron prism = Polyhedron.prism(outline, 2, 0);
            assertThat(MeshCheck.fault(prism.mesh(1))).isNull();
            assertThat(prism.whole().volume()).isCloseTo(twice, within(1e-12));
            assertThat(faceArea(prism.mesh(1), 1)).isCloseTo(0.5 * twice, within(1e-12));
        }
    }

    /** Area of the triangles in a plane z: greater than the outline's if they overlap. */
    private static double faceArea(Mesh mesh, double z) {
        double area = 0;
        for (int t = 0; t < mesh.corners().length; t += 3) {
            Vec3 a = mesh.vertex(mesh.corners()[t]);
            Vec3 b = mesh.vertex(mesh.corners()[t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[t + 2]);
            if (a.z() == z && b.z() == z && c.z() == z) {
                area += 0.5 * b.minus(a).cross(c.minus(a)).norm();
            }
        }
        return area;
    }

    @Test
    void outlinesThatEncloseNoSingleAreaAreRefused() {
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 1, 1, 1, 0, 0, 1), 1, 0))
                .isInstanceOf(ShapeException.class)
                .hasMessage("the outline crosses or touches itself: the side (0.0, 0.0) m to (1.0, 1.0) m meets "
                        + "the side (1.0, 0.0) m to (0.0, 1.0) m");
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 1, 0), 1, 0))
                .hasMessage("an outline needs at least three different points; this one has 2");
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 1, 0, 2, 0), 1, 0))
                .hasMessageStartingWith("the outline turns back on itself");
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 2, 0, 2, 2, 1, 0, 0, 2), 1, 0))
                .hasMessageStartingWith("the outline crosses or touches itself");
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 2, 0, Double.NaN, 2), 1, 0))
                .hasMessageStartingWith("a point of the outline is not a number");
        assertThatThrownBy(() -> Polyhedron.prism(points(0, 0, 1, 0, 0, 1), 0, 0))
                .hasMessage("a prism's width must be above 0, not 0.0 m");
        assertThatThrownBy(() -> Polyhedron.box(new Vec3(1, -1, 1), Vec3.ZERO)).isInstanceOf(ShapeException.class);
    }

    /** The tree of sums agrees with adding up the tetrahedra of a small far-off mesh one by one. */
    @Test
    void theTreeAgreesWithTheSumOfAllTetrahedra() {
        Mesh mesh = Shapes.tank(6).mesh(1e-3).placed(1, new Vec3(30, -20, 10));
        Polyhedron solid = Polyhedron.of(mesh);
        double volume = 0;
        Vec3 first = Vec3.ZERO;
        Vec3 apex = mesh.vertex(0);
        for (int t = 0; t < mesh.corners().length; t += 3) {
            Vec3 a = mesh.vertex(mesh.corners()[t]).minus(apex);
            Vec3 b = mesh.vertex(mesh.corners()[t + 1]).minus(apex);
            Vec3 c = mesh.vertex(mesh.corners()[t + 2]).minus(apex);
            double part = a.dot(b.cross(c)) / 6;
            volume += part;
            first = first.plus(a.plus(b).plus(c).times(part / 4).plus(apex.times(part)));
        }
        assertThat(solid.whole().volume()).isCloseTo(volume, within(1e-12 * volume));
        assertThat(solid.whole().first().minus(first).norm()).isLessThan(1e-11 * first.norm());
    }
}
