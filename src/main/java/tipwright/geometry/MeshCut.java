// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;

/** Cuts a closed mesh by a plane and closes what is left below: the body of the liquid, for pictures. */
public final class MeshCut {
    /** How close a vertex may lie to the plane, over the size of the mesh. */
    private static final double HAIR = 1e-9;

    private static final int NUDGES = 16;

    private final Mesh mesh;
    private final HalfEdges edges;
    private final double[] heights;
    /** New number of each old vertex that stays, or -1. */
    private final int[] stays;
    /** New number of the vertex cut on each half edge, or -1. */
    private final int[] cuts;

    private final double[] xyz;
    private int vertices;

    private MeshCut(Mesh mesh, Plane plane) {
        this.mesh = mesh;
        this.edges = new HalfEdges(mesh.corners());
        int n = mesh.xyz().length / 3;
        heights = new double[n];
        for (int i = 0; i < n; i++) {
            heights[i] = plane.height(mesh.vertex(i));
        }
        nudge(HAIR * mesh.size());
        stays = new int[n];
        cuts = new int[mesh.corners().length];
        Arrays.fill(stays, -1);
        Arrays.fill(cuts, -1);
        xyz = new double[mesh.xyz().length + 3 * crossed()];
    }

    /**
     * The closed mesh, outward, of the part of a solid below a plane; without triangles if nothing is below.
     * A plane that passes through a vertex is lowered by some billionths of the mesh's size until it passes through none,
     * so that the cap has no pinched corners.
     *
     * @param closed a watertight outward mesh, vertices shared between triangles (see {@link Mesh#welded}); not changed
     * @throws ShapeException if the mesh is not watertight
     */
    public static Mesh below(Mesh closed, Plane plane) {
        return new MeshCut(closed, plane).run(plane.normal());
    }

    private void nudge(double hair) {
        for (int k = 0; k < NUDGES && !clear(0.5 * hair); k++) {
            for (int i = 0; i < heights.length; i++) {
                heights[i] += hair;
            }
        }
    }

    private boolean clear(double gap) {
        for (double height : heights) {
            if (Math.abs(height) < gap) {
                return false;
            }
        }
        return true;
    }

    private boolean under(int vertex) {
        return heights[vertex] <= 0;
    }

    private int crossed() {
        int count = 0;
        for (int h = 0; h < cuts.length; h++) {
            if (edges.twin(h) == HalfEdges.NONE) {
                throw new ShapeException("a mesh must be watertight to be cut");
            }
            if (under(edges.from(h)) && !under(edges.to(h))) {
                count++;
            }
        }
        return count;
    }

    private Mesh run(Vec3 normal) {
        int[] walls = new int[2 * mesh.corners().length];
        int k = 0;
        int[] after = new int[xyz.length / 3];
        Arrays.fill(after, -1);
        int[] corners = new int[4];
        for (int t = 0; t < mesh.corners().length; t += 3) {
            int count = 0;
            int enter = -1;
            int exit = -1;
            for (int h = t; h < t + 3; h++) {
                boolean from = under(edges.from(h));
                if (from) {
                    corners[count++] = stay(edges.from(h));
                }
                if (from != under(edges.to(h))) {
                    int cut = cut(h);
                    corners[count++] = cut;
                    enter = from ? enter : cut;
                    exit = from ? cut : exit;
                }
            }
            for (int i = 2; i < count; i++) {
                walls[k++] = corners[0];
                walls[k++] = corners[i - 1];
                walls[k++] = corners[i];
            }
            if (enter >= 0) {
                after[enter] = exit;
            }
        }
        int[] cap = Cap.triangles(xyz, after, normal);
        int[] all = Arrays.copyOf(walls, k + cap.length);
        System.arraycopy(cap, 0, all, k, cap.length);
        return new Mesh(Arrays.copyOf(xyz, 3 * vertices), all);
    }

    private int stay(int vertex) {
        if (stays[vertex] < 0) {
            System.arraycopy(mesh.xyz(), 3 * vertex, xyz, 3 * vertices, 3);
            stays[vertex] = vertices++;
        }
        return stays[vertex];
    }

    private int cut(int h) {
        if (cuts[h] < 0) {
            // always from the lower end, so that both triangles see the same point
            int low = under(edges.from(h)) ? edges.from(h) : edges.to(h);
            int high = low == edges.from(h) ? edges.to(h) : edges.from(h);
            double share = heights[low] / (heights[low] - heights[high]);
            for (int axis = 0; axis < 3; axis++) {
                double a = mesh.xyz()[3 * low + axis];
                xyz[3 * vertices + axis] = a + share * (mesh.xyz()[3 * high + axis] - a);
            }
            cuts[h] = vertices;
            cuts[edges.twin(h)] = vertices;
            vertices++;
        }
        return cuts[h];
    }
}
