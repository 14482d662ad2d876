// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Tells in plain words why a mesh cannot be the inside of a tank. Self-crossing of distant parts is not looked for. */
public final class MeshCheck {
    private MeshCheck() {}

    /**
     * What is wrong with a mesh, or null. Places are given in the mesh's own unit, so check before scaling.
     *
     * @param mesh joined at equal vertices first, see {@link Mesh#welded}
     */
    public static @Nullable String fault(Mesh mesh) {
        return fault(mesh, new HalfEdges(mesh.corners()));
    }

    static @Nullable String fault(Mesh mesh, HalfEdges edges) {
        if (mesh.triangles() == 0) {
            return "the mesh has no triangles";
        }
        for (double x : mesh.xyz()) {
            if (!Double.isFinite(x)) {
                return "the mesh has a coordinate that is not a number";
            }
        }
        String hole = holes(mesh, edges);
        if (hole != null) {
            return hole;
        }
        double size = mesh.size();
        double volume = mesh.volume();
        if (Math.abs(volume) < 1e-9 * size * size * size) {
            return "the mesh encloses no volume";
        }
        if (volume < 0) {
            return "the mesh is inside out: its triangles face inward; reverse their order in the drawing program";
        }
        return pieces(mesh, edges);
    }

    private static @Nullable String holes(Mesh mesh, HalfEdges edges) {
        int r = edges.repeated();
        if (r != HalfEdges.NONE) {
            return "two triangles of the mesh use the edge " + place(mesh, edges, r)
                    + " the same way round: one is turned over, doubled, or a wall has no thickness there";
        }
        int open = 0;
        int first = HalfEdges.NONE;
        for (int h = 0; h < mesh.corners().length; h++) {
            if (edges.twin(h) == HalfEdges.NONE) {
                first = open++ == 0 ? h : first;
            }
        }
        if (open > 0) {
            return "the mesh is not watertight: " + open + (open == 1 ? " edge has" : " edges have")
                    + " a triangle on one side only, the first " + place(mesh, edges, first);
        }
        return null;
    }

    private static @Nullable String pieces(Mesh mesh, HalfEdges edges) {
        int[] piece = new int[mesh.triangles()];
        int count = edges.pieces(piece);
        if (count == 1) {
            return null;
        }
        double[] volumes = new double[count];
        for (int p = 0; p < count; p++) {
            volumes[p] = part(mesh, piece, p).volume();
        }
        if (Arrays.stream(volumes).anyMatch(v -> v < 0)) {
            return "the mesh has a closed cavity in it (" + count
                    + " separate surfaces): give the wetted inside of the "
                    + "tank alone, not its wall with an inner and an outer face";
        }
        return "the mesh is in " + count + " separate pieces; a tank's inside is one";
    }

    /** The triangles of one piece alone. */
    static Mesh part(Mesh mesh, int[] piece, int wanted) {
        int[] corners = new int[mesh.corners().length];
        int k = 0;
        for (int t = 0; t < piece.length; t++) {
            if (piece[t] == wanted) {
                System.arraycopy(mesh.corners(), 3 * t, corners, k, 3);
                k += 3;
            }
        }
        return new Mesh(mesh.xyz(), Arrays.copyOf(corners, k));
    }

    private static String place(Mesh mesh, HalfEdges edges, int h) {
        return "from " + said(mesh.vertex(edges.from(h))) + " to " + said(mesh.vertex(edges.to(h)));
    }

    private static String said(Vec3 p) {
        // single precision is what mesh files hold, and it prints short
        return "(" + (float) p.x() + ", " + (float) p.y() + ", " + (float) p.z() + ")";
    }
}
