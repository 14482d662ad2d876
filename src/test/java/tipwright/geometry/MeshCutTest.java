// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MeshCutTest {
    private static final Vec3 Y = new Vec3(0, 1, 0);

    static Stream<Solid> solids() {
        return Stream.concat(Shapes.solids(), Stream.of(Shapes.comb(), Polyhedron.of(grate(4))));
    }

    /** A block with square blind pockets from above, n by n: a cut near the top has n * n holes. */
    static Mesh grate(int n) {
        int cells = 2 * n + 1;
        MeshBuilder builder = new MeshBuilder();
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                boolean pocket = i % 2 == 1 && j % 2 == 1;
                double top = pocket ? 0.3 : 1;
                builder.rectangle(new Vec3(i, 0, j), new Vec3(1, 0, 0), new Vec3(0, 0, 1));
                builder.rectangle(new Vec3(i, top, j), new Vec3(0, 0, 1), new Vec3(1, 0, 0));
                if (pocket) {
                    Vec3 up = new Vec3(0, 0.7, 0);
                    builder.rectangle(new Vec3(i, top, j), new Vec3(1, 0, 0), up);
                    builder.rectangle(new Vec3(i, top, j + 1), up, new Vec3(1, 0, 0));
                    builder.rectangle(new Vec3(i, top, j), up, new Vec3(0, 0, 1));
                    builder.rectangle(new Vec3(i + 1, top, j), new Vec3(0, 0, 1), up);
                }
            }
        }
        for (int i = 0; i < cells; i++) {
            Vec3 up = new Vec3(0, 1, 0);
            builder.rectangle(new Vec3(i, 0, 0), up, new Vec3(1, 0, 0));
            builder.rectangle(new Vec3(i, 0, cells), new Vec3(1, 0, 0), up);
            builder.rectangle(new Vec3(0, 0, i), new Vec3(0, 0, 1), up);
            builder.rectangle(new Vec3(cells, 0, i), up, new Vec3(0, 0, 1));
        }
        return builder.mesh().welded();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theBodyBelowIsClosedAndHoldsTheSameVolume(Solid solid) {
        Random random = new Random(21);
        double sag = 5e-3;
        Mesh mesh = solid.mesh(sag).welded();
        Polyhedron faceted = Polyhedron.of(mesh);
        for (int i = 0; i < 60; i++) {
            Plane plane = i % 4 == 0 ? level(solid, random) : Shapes.cutting(solid, random);
            Mesh body = MeshCut.below(mesh, plane);
            Moments exact = faceted.below(plane);
            sound(body);
            assertThat(body.volume()).isCloseTo(exact.volume(), within(1e-11 + 1e-11 * exact.volume()));
            assertThat(body.volume())
                    .isCloseTo(
                            solid.below(plane).volume(),
                            within(1.5 * sag * solid.skin().area()));
            assertThat(area(body)).isCloseTo(wetted(mesh, plane) + exact.section(), within(1e-9));
        }
    }

    private static Plane level(Solid solid, Random random) {
        Range range = solid.extent(Y);
        return new Plane(Y, range.low() + random.nextDouble() * range.span());
    }

    /** Every edge is shared by two triangles, the opposite way round. */
    private static void sound(Mesh body) {
        HalfEdges edges = new HalfEdges(body.corners());
        assertThat(edges.repeated()).isEqualTo(HalfEdges.NONE);
        for (int h = 0; h < body.corners().length; h++) {
            assertThat(edges.twin(h)).isNotEqualTo(HalfEdges.NONE);
        }
    }

    private static double area(Mesh mesh) {
        double area = 0;
        for (int t = 0; t < mesh.corners().length; t += 3) {
            Vec3 a = mesh.vertex(mesh.corners()[t]);
            Vec3 b = mesh.vertex(mesh.corners()[t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[t + 2]);
            area += 0.5 * b.minus(a).cross(c.minus(a)).norm();
        }
        return area;
    }

    /** Area of the mesh below the plane, triangle by triangle from the heights of its corners. */
    private static double wetted(Mesh mesh, Plane plane) {
        double area = 0;
        for (int t = 0; t < mesh.corners().length; t += 3) {
            Vec3[] p = new Vec3[3];
            double[] h = new double[3];
            for (int i = 0; i < 3; i++) {
                p[i] = mesh.vertex(mesh.corners()[t + i]);
                h[i] = plane.height(p[i]);
            }
            double whole = 0.5 * p[1].minus(p[0]).cross(p[2].minus(p[0])).norm();
            Arrays.sort(h);
            double share = h[2] <= 0
                    ? 1
                    : h[0] > 0
                            ? 0
                            : h[1] > 0
                                    ? h[0] * h[0] / ((h[0] - h[1]) * (h[0] - h[2]))
                                    : 1 - h[2] * h[2] / ((h[2] - h[0]) * (h[2] - h[1]));
            area += share * whole;
        }
        return area;
    }

    @Test
    void aPlaneUnderOrOverLeavesNothingOrAll() {
        Mesh box = Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO).mesh(1);
        assertThat(MeshCut.below(box, new Plane(Y, -0.6)).triangles()).isZero();
        assertThat(MeshCut.below(box, new Plane(Y, 0.6)).volume()).isCloseTo(1, within(1e-15));
    }

    @ParameterizedTest
    @MethodSource("solids")
    void aPlaneThroughVerticesIsNoWorse(Solid solid) {
        Random random = new Random(22);
        Mesh mesh = solid.mesh(2e-2).welded();
        Polyhedron faceted = Polyhedron.of(mesh);
        // the cut may lower the plane by 1.6e-8 of the size; an overlap in the cap would show as parts in a hundred
        double hair = 1e-6 * Math.pow(mesh.size(), 2);
        for (int i = 0; i < 60; i++) {
            Vec3 a = mesh.vertex(random.nextInt(mesh.xyz().length / 3));
            Vec3 b = mesh.vertex(random.nextInt(mesh.xyz().length / 3));
            Vec3 c = mesh.vertex(random.nextInt(mesh.xyz().length / 3));
            Vec3 across = b.minus(a).cross(c.minus(a));
            Plane plane = Plane.through(a, i % 2 == 0 || across.norm() < 1e-9 ? Y : across.unit());
            Plane lower = new Plane(plane.normal(), plane.level() - 1e-8 * mesh.size());
            Mesh body = MeshCut.below(mesh, plane);
            sound(body);
            assertThat(body.volume()).isCloseTo(faceted.below(plane).volume(), within(hair * mesh.size()));
            assertThat(area(body))
                    .isCloseTo(wetted(mesh, lower) + faceted.below(lower).section(), within(hair));
        }
    }

    @Test
    void aTroughIsCutAtItsLedgeAndThroughItsHollowCorner() {
        Mesh trough = Shapes.trough().mesh(1);
        assertThat(MeshCut.below(trough, new Plane(Y, 0)).triangles()).isZero();
        assertThat(MeshCut.below(trough, new Plane(Y, 1)).volume()).isCloseTo(0.8 * 3, within(1e-7));
        assertThat(MeshCut.below(trough, new Plane(Y, 2)).volume()).isCloseTo(0.8 * 4, within(1e-7));
        Plane diagonal = Plane.through(new Vec3(1, 1, 0), new Vec3(1, 1, 0).unit());
        assertThat(MeshCut.below(trough, diagonal).volume()).isCloseTo(0.8 * 2, within(1e-7));
    }

    @Test
    void anOpenMeshIsRefused() {
        Mesh box = Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO).mesh(1);
        Mesh open = new Mesh(box.xyz(), Arrays.copyOf(box.corners(), 33));
        assertThatThrownBy(() -> MeshCut.below(open, new Plane(Y, 0))).isInstanceOf(ShapeException.class);
    }
}
