// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Closes small gaps between faces of a mesh that were drawn or rounded one by one. */
final class Seams {
    /** Vertices on open edges that are nearer than this share of the mesh's size are one. */
    private static final double NEAR = 5e-4;

    /** Single precision, which mesh files hold, moves vertices by so much of the size; not worth a word. */
    private static final double ROUNDING = 1e-6;

    private Seams() {}

    /** The mesh with its small gaps closed; what was closed is added to the list. */
    static Mesh closed(Mesh mesh, List<String> told) {
        HalfEdges edges = new HalfEdges(mesh.corners());
        boolean[] open = new boolean[mesh.xyz().length / 3];
        boolean any = false;
        for (int h = 0; h < mesh.corners().length; h++) {
            if (edges.twin(h) == HalfEdges.NONE) {
                open[edges.from(h)] = true;
                open[edges.to(h)] = true;
                any = true;
            }
        }
        if (!any) {
            return mesh;
        }
        double near = NEAR * mesh.size();
        Integer[] along = IntStream.range(0, open.length)
                .filter(i -> open[i])
                .boxed()
                .sorted(Comparator.comparingDouble(i -> mesh.xyz()[3 * i]))
                .toArray(Integer[]::new);
        int[] same = IntStream.range(0, open.length).toArray();
        int joined = 0;
        double widest = 0;
        for (int i = 0; i < along.length; i++) {
            if (same[along[i]] != along[i]) {
                continue;
            }
            Vec3 p = mesh.vertex(along[i]);
            for (int j = i + 1; j < along.length && mesh.xyz()[3 * along[j]] - p.x() <= near; j++) {
                double gap = mesh.vertex(along[j]).minus(p).norm();
                if (gap <= near && same[along[j]] == along[j]) {
                    same[along[j]] = along[i];
                    joined++;
                    widest = Math.max(widest, gap);
                }
            }
        }
        if (joined == 0) {
            return mesh;
        }
        Mesh closed = new Mesh(mesh.xyz(), corners(mesh.corners(), same)).welded();
        if (widest > ROUNDING * mesh.size()) {
            told.add("gaps of up to " + (float) widest + " (in the file's unit) were closed at " + joined
                    + (joined == 1 ? " place" : " places"));
        }
        return closed;
    }

    private static int[] corners(int[] old, int[] same) {
        return Arrays.stream(old).map(v -> same[v]).toArray();
    }
}
