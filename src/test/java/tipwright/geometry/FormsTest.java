// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FormsTest {
    private static final Vec3 A = new Vec3(0.2, -0.1, 0.4);
    private static final Vec3 B = new Vec3(0.9, 0.5, -0.2);

    static Stream<Mesh> parts() {
        return Stream.of(
                Forms.rod(A, B, 0.03, 12),
                Forms.rod(B, A, 0.03, 12),
                Forms.rod(A, A.plus(new Vec3(0, 1, 0)), 0.05, 8),
                Forms.arrow(A, B, 0.02, 10),
                Forms.ball(B, 0.1, 16),
                Forms.beam(A, B, 0.05, 0.02, new Vec3(0, 0, 1)),
                Forms.plate(square(), new Vec3(1, 0, 0), 0.01));
    }

    private static List<Vec3> square() {
        return List.of(new Vec3(0, 0, 1), new Vec3(0, -1, 1), new Vec3(0, -1, 0), new Vec3(0, 0, 0));
    }

    /** A mesh that faced inwards would not be seen at all. */
    @ParameterizedTest
    @MethodSource("parts")
    void everyPartIsWatertightAndFacesOutwards(Mesh mesh) {
        assertThat(MeshCheck.fault(mesh)).isNull();
        assertThat(mesh.volume()).isPositive();
    }

    @Test
    void volumesAreThoseOfTheSolids() {
        double length = B.minus(A).norm();
        assertThat(Forms.beam(A, B, 0.05, 0.02, new Vec3(0, 0, 1)).volume()).isCloseTo(0.001 * length, within(1e-12));
        // a polygon of 400 sides falls short of its circle by 4e-5
        assertThat(Forms.rod(A, B, 0.03, 400).volume())
                .isCloseTo(Math.PI * 0.0009 * length, within(1e-4 * 0.003 * length));
        assertThat(Forms.ball(B, 0.1, 200).volume()).isCloseTo(4.0 / 3 * Math.PI * 0.001, within(2e-6));
    }

    @Test
    void normalsAreSmoothRoundARodAndSharpAtItsEnds() {
        Mesh rod = Forms.rod(Vec3.ZERO, new Vec3(1, 0, 0), 0.1, 24);
        float[] normals = Shading.normals(rod, Math.toRadians(30));
        for (int c = 0; c < rod.corners().length; c++) {
            Vec3 n = new Vec3(normals[3 * c], normals[3 * c + 1], normals[3 * c + 2]);
            Vec3 p = rod.vertex(rod.corners()[c]);
            assertThat(n.norm()).isCloseTo(1, within(1e-6));
            boolean end = Math.abs(n.x()) > 0.5;
            Vec3 out = end ? new Vec3(p.x() > 0.5 ? 1 : -1, 0, 0) : new Vec3(0, p.y(), p.z()).unit();
            assertThat(n.dot(out)).isGreaterThan(0.995);
        }
    }

    @Test
    void hullOfAGridIsItsFourCorners() {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 4; j++) {
                points.add(new Vec2(i, j));
            }
        }
        assertThat(Hull.around(points)).containsExactly(new Vec2(0, 0), new Vec2(4, 0), new Vec2(4, 3), new Vec2(0, 3));
    }

    @Test
    void apertureTakesTheHoleOutOfOneWallOnly() {
        Mesh box = Polyhedron.box(new Vec3(2, 1, 1), Vec3.ZERO).mesh(0.01);
        List<Vec3> rim = List.of(
                new Vec3(1, -0.25, 0.25), new Vec3(1, -0.25, -0.25), new Vec3(1, 0.25, -0.25), new Vec3(1, 0.25, 0.25));
        Mesh cut = Aperture.cut(box, rim, new Vec3(1, 0, 0), 0.1, 0.02);
        assertThat(area(box) - area(cut)).isCloseTo(0.25, within(0.01));
        assertThat(cut.extent(new Vec3(1, 0, 0)).span()).isCloseTo(2, within(1e-12));
    }

    private static double area(Mesh mesh) {
        double area = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            Vec3 a = mesh.vertex(mesh.corners()[3 * t]);
            Vec3 b = mesh.vertex(mesh.corners()[3 * t + 1]);
            area += 0.5
                    * b.minus(a)
                            .cross(mesh.vertex(mesh.corners()[3 * t + 2]).minus(a))
                            .norm();
        }
        return area;
    }
}
