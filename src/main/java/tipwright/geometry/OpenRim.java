// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The one flat rim of an open shell.
 *
 * @param mesh the shell
 * @param loop its rim's vertices in the order in which a cap goes round them
 * @param normal of the cap, unit
 */
@SuppressWarnings("ArrayRecordComponent")
record OpenRim(Mesh mesh, int[] loop, Vec3 normal) {
    /** How far a rim may be out of its plane, as a share of the mesh's size. */
    private static final double FLAT = 1e-3;

    /** A hole with so few edges is a triangle that is missing, and no mouth. */
    private static final int TRIANGLE = 3;

    static boolean isOpen(HalfEdges edges) {
        return edges.firstOpen() != HalfEdges.NONE;
    }

    /** The rim; null where there is none, more than one, or one that is not flat. */
    static @Nullable OpenRim of(Mesh mesh) {
        HalfEdges edges = new HalfEdges(mesh.corners());
        int[] after = new int[mesh.xyz().length / 3];
        Arrays.fill(after, -1);
        int count = 0;
        int start = -1;
        for (int h = 0; h < mesh.corners().length; h++) {
            if (edges.twin(h) == HalfEdges.NONE) {
                if (after[edges.to(h)] >= 0) {
                    return null;
                }
                after[edges.to(h)] = edges.from(h);
                start = edges.from(h);
                count++;
            }
        }
        if (count <= TRIANGLE) {
            return null;
        }
        int[] loop = new int[count];
        int v = start;
        for (int i = 0; i < count; i++) {
            loop[i] = v;
            v = after[v];
            if (v < 0 || (v == start && i < count - 1)) {
                return null;
            }
        }
        return v == start ? flat(mesh, loop) : null;
    }

    private static @Nullable OpenRim flat(Mesh mesh, int[] loop) {
        Vec3 area = Vec3.ZERO;
        Vec3 first = mesh.vertex(loop[0]);
        for (int i = 1; i + 1 < loop.length; i++) {
            area = area.plus(mesh.vertex(loop[i])
                    .minus(first)
                    .cross(mesh.vertex(loop[i + 1]).minus(first)));
        }
        if (!(area.norm() > 0)) {
            return null;
        }
        Vec3 normal = area.unit();
        double most = FLAT * mesh.size();
        for (int v : loop) {
            if (Math.abs(mesh.vertex(v).minus(first).dot(normal)) > most) {
                return null;
            }
        }
        return new OpenRim(mesh, loop, normal);
    }

    /** The shell with a cap over its rim, its triangles facing out. */
    Mesh capped() {
        int[] after = new int[mesh.xyz().length / 3];
        Arrays.fill(after, -1);
        for (int i = 0; i < loop.length; i++) {
            after[loop[i]] = loop[(i + 1) % loop.length];
        }
        int[] cap = Cap.triangles(mesh.xyz(), after, normal);
        int[] all = Arrays.copyOf(mesh.corners(), mesh.corners().length + cap.length);
        System.arraycopy(cap, 0, all, mesh.corners().length, cap.length);
        Mesh closed = new Mesh(mesh.xyz(), all);
        return closed.volume() < 0 ? closed.turnedOut() : closed;
    }

    List<Vec3> places() {
        List<Vec3> all = new ArrayList<>();
        for (int v : loop) {
            all.add(mesh.vertex(v));
        }
        return all;
    }
}
