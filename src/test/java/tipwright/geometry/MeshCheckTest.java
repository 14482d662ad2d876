// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MeshCheckTest {
    private static final Mesh BOX =
            Polyhedron.box(new Vec3(2, 1, 1), new Vec3(1, 0, 0)).mesh(1);

    private static Mesh insideOut(Mesh mesh) {
        int[] corners = mesh.corners().clone();
        for (int t = 0; t < corners.length; t += 3) {
            corners[t] = mesh.corners()[t + 1];
            corners[t + 1] = mesh.corners()[t];
        }
        return new Mesh(mesh.xyz(), corners);
    }

    private static Mesh both(Mesh a, Mesh b) {
        double[] xyz = Arrays.copyOf(a.xyz(), a.xyz().length + b.xyz().length);
        System.arraycopy(b.xyz(), 0, xyz, a.xyz().length, b.xyz().length);
        int[] corners = Arrays.copyOf(a.corners(), a.corners().length + b.corners().length);
        for (int i = 0; i < b.corners().length; i++) {
            corners[a.corners().length + i] = b.corners()[i] + a.xyz().length / 3;
        }
        return new Mesh(xyz, corners);
    }

    @Test
    void aSoundMeshHasNoFault() {
        assertThat(MeshCheck.fault(BOX)).isNull();
        assertThat(MeshCheck.fault(MeshCutTest.grate(2))).isNull();
    }

    @Test
    void looseTrianglesAreWeldedFirst() {
        Mesh loose = new MeshBuilder()
                .triangle(new Vec3(0, 0, 0), new Vec3(0, 1, 0), new Vec3(1, 0, 0))
                .triangle(new Vec3(-0.0, 0, 0), new Vec3(1, 0, 0), new Vec3(0, 0, 1))
                .triangle(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(0, 1, 0))
                .triangle(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1))
                .mesh();
        assertThat(MeshCheck.fault(loose)).startsWith("the mesh is not watertight: 12 edges");
        assertThat(loose.welded().xyz()).hasSize(12);
        assertThat(MeshCheck.fault(loose.welded())).isNull();
    }

    @Test
    void aHoleIsCountedAndPlaced() {
        Mesh open = new Mesh(BOX.xyz(), Arrays.copyOf(BOX.corners(), 33));
        assertThat(MeshCheck.fault(open))
                .isEqualTo("the mesh is not watertight: 3 edges have a triangle on one side only, the first from "
                        + "(0.0, 0.5, 0.5) to (0.0, -0.5, 0.5)");
        assertThatThrownBy(() -> Polyhedron.of(open))
                .isInstanceOf(ShapeException.class)
                .hasMessage(MeshCheck.fault(open));
    }

    @Test
    void aTriangleTurnedOverIsFound() {
        int[] corners = BOX.corners().clone();
        corners[0] = BOX.corners()[1];
        corners[1] = BOX.corners()[0];
        assertThat(MeshCheck.fault(new Mesh(BOX.xyz(), corners))).startsWith("two triangles of the mesh use the edge");
    }

    @Test
    void anInsideOutMeshIsNotTurnedSilently() {
        assertThat(MeshCheck.fault(insideOut(BOX))).startsWith("the mesh is inside out");
    }

    @Test
    void aWallWithTwoFacesIsNotAnInside() {
        Mesh inner = Polyhedron.box(new Vec3(1.9, 0.9, 0.9), new Vec3(1, 0, 0)).mesh(1);
        assertThat(MeshCheck.fault(both(BOX, insideOut(inner)))).startsWith("the mesh has a closed cavity in it");
        Mesh far = Polyhedron.box(new Vec3(1, 1, 1), new Vec3(5, 0, 0)).mesh(1);
        assertThat(MeshCheck.fault(both(BOX, far))).startsWith("the mesh is in 2 separate pieces");
    }

    @Test
    void nothingAndFlatAreRefused() {
        assertThat(MeshCheck.fault(new Mesh(new double[0], new int[0]))).isEqualTo("the mesh has no triangles");
        double[] flat = {0, 0, 0, 1, 0, 0, 0, 1, 0};
        assertThat(MeshCheck.fault(new Mesh(flat, new int[] {0, 1, 2, 0, 2, 1})))
                .isEqualTo("the mesh encloses no volume");
        double[] broken = {0, 0, 0, 1, 0, 0, 0, Double.NaN, 0};
        assertThat(MeshCheck.fault(new Mesh(broken, new int[] {0, 1, 2})))
                .isEqualTo("the mesh has a coordinate that is not a number");
    }
}
