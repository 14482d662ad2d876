// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The inner face of a tank whose steel is drawn as a solid: with a closed hollow in it, or open with a flat rim. */
final class SteelShell {
    /** Volume over half the surface, as a share of the size: above it, it is no sheet. */
    private static final double THIN = 0.05;

    private static final double ALIKE = 1 - 1e-7;
    private static final double EXTREME = 1e-6;

    private final Mesh mesh;
    private final HalfEdges edges;

    private SteelShell(Mesh mesh, HalfEdges edges) {
        this.mesh = mesh;
        this.edges = edges;
    }

    /** The inner face, turned to face out of the inside; open where the rim was. Null where the mesh is no sheet of steel. */
    static @Nullable Mesh inner(Mesh mesh, HalfEdges edges) {
        int[] piece = new int[mesh.triangles()];
        int count = edges.pieces(piece);
        if (count == 2) {
            Mesh a = MeshCheck.part(mesh, piece, 0);
            Mesh b = MeshCheck.part(mesh, piece, 1);
            boolean hollow = a.volume() * b.volume() < 0 && mesh.volume() > 0;
            return hollow ? (a.volume() < 0 ? a : b).turnedOut() : null;
        }
        return count == 1 && isThin(mesh) ? new SteelShell(mesh, edges).withoutRim() : null;
    }

    private static boolean isThin(Mesh mesh) {
        double area = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            area += 0.5 * cross(mesh, t).norm();
        }
        return mesh.volume() > 0 && 2 * mesh.volume() / area < THIN * mesh.size();
    }

    private static Vec3 cross(Mesh mesh, int triangle) {
        Vec3 a = mesh.vertex(mesh.corners()[3 * triangle]);
        Vec3 b = mesh.vertex(mesh.corners()[3 * triangle + 1]);
        return b.minus(a).cross(mesh.vertex(mesh.corners()[3 * triangle + 2]).minus(a));
    }

    /** Takes away the flat ring that parts the outer from the inner face; the smaller of both is the inner. */
    private @Nullable Mesh withoutRim() {
        int[] face = new int[mesh.triangles()];
        Arrays.fill(face, -1);
        for (int seed = 0; seed < face.length; seed++) {
            if (face[seed] < 0) {
                Vec3 normal = fill(face, seed);
                if (normal != null && isExtreme(seed, normal) && loops(face, seed) == 2) {
                    @Nullable Mesh inner = parted(face, seed);
                    if (inner != null) {
                        return inner;
                    }
                }
            }
        }
        return null;
    }

    /** Marks the flat face around a triangle with the triangle's number; gives its normal. */
    private @Nullable Vec3 fill(int[] face, int seed) {
        Vec3 cross = cross(mesh, seed);
        face[seed] = seed;
        if (!(cross.norm() > 0)) {
            return null;
        }
        Vec3 normal = cross.unit();
        Deque<Integer> open = new ArrayDeque<>();
        open.push(seed);
        while (!open.isEmpty()) {
            int t = open.pop();
            for (int h = 3 * t; h < 3 * t + 3; h++) {
                int other = edges.twin(h) / 3;
                if (face[other] < 0) {
                    Vec3 there = cross(mesh, other);
                    if (there.norm() > 0 && there.unit().dot(normal) > ALIKE) {
                        face[other] = seed;
                        open.push(other);
                    }
                }
            }
        }
        return normal;
    }

    private boolean isExtreme(int triangle, Vec3 normal) {
        double level = normal.dot(mesh.vertex(mesh.corners()[3 * triangle]));
        return mesh.extent(normal).high() <= level + EXTREME * mesh.size();
    }

    private int loops(int[] face, int wanted) {
        Map<Integer, Integer> after = new HashMap<>();
        for (int h = 0; h < mesh.corners().length; h++) {
            if (face[h / 3] == wanted && face[edges.twin(h) / 3] != wanted) {
                after.put(edges.from(h), edges.to(h));
            }
        }
        int loops = 0;
        while (!after.isEmpty()) {
            loops++;
            @Nullable Integer v = after.keySet().iterator().next();
            while (v != null) {
                v = after.remove(v);
            }
        }
        return loops;
    }

    private @Nullable Mesh parted(int[] face, int ring) {
        int[] rest = new int[mesh.corners().length];
        int k = 0;
        for (int t = 0; t < face.length; t++) {
            if (face[t] != ring) {
                System.arraycopy(mesh.corners(), 3 * t, rest, k, 3);
                k += 3;
            }
        }
        Mesh open = new Mesh(mesh.xyz(), Arrays.copyOf(rest, k));
        int[] piece = new int[open.triangles()];
        if (new HalfEdges(open.corners()).pieces(piece) != 2) {
            return null;
        }
        Mesh a = MeshCheck.part(open, piece, 0);
        Mesh b = MeshCheck.part(open, piece, 1);
        @Nullable OpenRim rimA = OpenRim.of(a);
        @Nullable OpenRim rimB = OpenRim.of(b);
        if (rimA == null || rimB == null) {
            return null;
        }
        return rimA.capped().volume() < rimB.capped().volume() ? a : b;
    }
}
