// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Meshes as people have them, against the volumes of boxes and drums that they are drawn from. */
class MeshInsideTest {
    private static final double WALL = 0.01;

    private final List<Vec3[]> triangles = new ArrayList<>();

    private void quad(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
        triangles.add(new Vec3[] {a, b, c});
        triangles.add(new Vec3[] {a, c, d});
    }

    private static Vec3 at(double r, double y, int i, int n) {
        double t = -2 * Math.PI * i / n;
        return new Vec3(r * Math.cos(t), y, r * Math.sin(t));
    }

    /** Wall and floor of a drum that faces out, open on top; turned: it faces in. */
    private void shell(double r, double from, double to, int n, boolean turned) {
        for (int i = 0; i < n; i++) {
            Vec3 a = at(r, from, i, n);
            Vec3 b = at(r, from, i + 1, n);
            Vec3 c = at(r, to, i + 1, n);
            Vec3 d = at(r, to, i, n);
            Vec3 middle = new Vec3(0, from, 0);
            if (turned) {
                quad(d, c, b, a);
                triangles.add(new Vec3[] {a, b, middle});
            } else {
                quad(a, b, c, d);
                triangles.add(new Vec3[] {b, a, middle});
            }
        }
    }

    private Mesh mesh(double jitter) {
        Random random = new Random(7);
        MeshBuilder builder = new MeshBuilder();
        for (Vec3[] t : triangles) {
            builder = builder.triangle(
                    moved(t[0], jitter, random), moved(t[1], jitter, random), moved(t[2], jitter, random));
        }
        return builder.mesh().welded();
    }

    private static Vec3 moved(Vec3 p, double jitter, Random random) {
        Vec3 off = new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
        return jitter == 0 ? rounded(p) : p.plus(off.times(jitter));
    }

    /** Single precision, as mesh files hold it. */
    private static Vec3 rounded(Vec3 p) {
        return new Vec3((float) p.x(), (float) p.y(), (float) p.z());
    }

    private static double drum(double r, double height, int n) {
        return 0.5 * n * r * r * Math.sin(2 * Math.PI / n) * height;
    }

    private static MeshInside read(Mesh mesh) {
        return MeshInside.of(mesh, 1, Vec3.ZERO);
    }

    @Test
    void anOpenShellIsCappedAndItsRimIsTheMouth() {
        for (boolean turned : new boolean[] {false, true}) {
            triangles.clear();
            shell(0.3, 0, 0.9, 40, turned);
            MeshInside inside = MeshInside.of(mesh(0), 2, new Vec3(1, 0, 0));
            assertThat(inside.solid().whole().volume()).isCloseTo(8 * drum(0.3, 0.9, 40), within(1e-6));
            assertThat(inside.mouth()).hasSize(40).allSatisfy(p -> {
                assertThat(p.y()).isCloseTo(1.8, within(1e-6));
                assertThat(p.minus(new Vec3(1, 1.8, 0)).norm()).isCloseTo(0.6, within(1e-6));
            });
            assertThat(inside.told()).singleElement().asString().startsWith("it is open on one side");
        }
    }

    @Test
    void aTubOfSteelDrawnAsASolidGivesItsInside() {
        shell(0.3, 0, 0.9, 40, false);
        shell(0.3 - WALL, WALL, 0.9, 40, true);
        for (int i = 0; i < 40; i++) {
            quad(
                    at(0.3, 0.9, i, 40),
                    at(0.3, 0.9, i + 1, 40),
                    at(0.3 - WALL, 0.9, i + 1, 40),
                    at(0.3 - WALL, 0.9, i, 40));
        }
        MeshInside inside = read(mesh(0));
        assertThat(inside.solid().whole().volume()).isCloseTo(drum(0.3 - WALL, 0.9 - WALL, 40), within(1e-6));
        assertThat(inside.mouth()).hasSize(40);
        assertThat(inside.told()).hasSize(2);
    }

    /** A flange round the rim has a flat ring of its own underneath; it is not taken for the rim. */
    @Test
    void aFlangeIsNoRim() {
        shell(0.3, 0, 0.9 - WALL, 40, false);
        shell(0.3 - WALL, WALL, 0.9, 40, true);
        for (int i = 0; i < 40; i++) {
            Vec3 in = at(0.3 - WALL, 0.9, i, 40);
            Vec3 inNext = at(0.3 - WALL, 0.9, i + 1, 40);
            quad(at(0.35, 0.9, i, 40), at(0.35, 0.9, i + 1, 40), inNext, in);
            quad(
                    at(0.35, 0.9 - WALL, i, 40),
                    at(0.35, 0.9 - WALL, i + 1, 40),
                    at(0.35, 0.9, i + 1, 40),
                    at(0.35, 0.9, i, 40));
            quad(
                    at(0.3, 0.9 - WALL, i, 40),
                    at(0.3, 0.9 - WALL, i + 1, 40),
                    at(0.35, 0.9 - WALL, i + 1, 40),
                    at(0.35, 0.9 - WALL, i, 40));
        }
        assertThat(read(mesh(0)).solid().whole().volume()).isCloseTo(drum(0.3 - WALL, 0.9 - WALL, 40), within(1e-6));
    }

    @Test
    void aClosedHollowIsTheInside() {
        Mesh outer = Polyhedron.box(new Vec3(2, 1, 1), Vec3.ZERO).mesh(1);
        Mesh inner = Polyhedron.box(new Vec3(1.9, 0.9, 0.9), Vec3.ZERO).mesh(1).turnedOut();
        MeshInside inside = read(Forms.joined(List.of(outer, inner)).welded());
        assertThat(inside.solid().whole().volume()).isCloseTo(1.9 * 0.9 * 0.9, within(1e-9));
        assertThat(inside.mouth()).isEmpty();
    }

    @Test
    void smallGapsAreClosedAndTold() {
        shell(0.3, 0, 0.9, 40, false);
        MeshInside inside = read(mesh(2e-4));
        assertThat(inside.solid().whole().volume()).isCloseTo(drum(0.3, 0.9, 40), within(1e-3));
        assertThat(inside.mouth()).hasSize(40);
        assertThat(inside.told().get(0)).startsWith("gaps of up to ").contains("were closed at");
    }

    @Test
    void whatIsNoTankStaysAFault() {
        shell(0.3, 0, 0.9, 40, false);
        triangles.remove(triangles.size() - 1);
        assertThatThrownBy(() -> read(mesh(0))).hasMessageContaining("not watertight");
        triangles.clear();
        shell(0.3, 0, 0.9, 40, false);
        assertThatThrownBy(() -> read(mesh(5e-3))).isInstanceOf(ShapeException.class);
        Mesh box = Polyhedron.box(new Vec3(1, 1, 1), Vec3.ZERO).mesh(1);
        assertThat(read(box).told()).isEmpty();
        assertThat(read(box).solid().whole().volume()).isCloseTo(1, within(1e-12));
    }
}
