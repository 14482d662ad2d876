// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;

/**
 * Triangles of a closed mesh in a tree of boxes that carry the sums of what is in them, so that a cut visits only the
 * boxes that the plane meets. Nodes are stored parent before children, each with the number of the node after its branch.
 */
final class SumTree {
    private static final int LEAF = 8;

    /** Corner coordinates about the origin, m, [9 * triangle + 3 * corner + axis], in tree order. */
    private final double[] corners;

    private final Vec3 origin;
    private final double[] boxes;
    private final double[] sums;
    private final int[] after;
    private final int[] start;
    private final int[] end;
    private int nodes;

    SumTree(Mesh mesh, Vec3 origin) {
        this.origin = origin;
        int n = mesh.triangles();
        double[] loose = new double[9 * n];
        for (int i = 0; i < 3 * n; i++) {
            int v = 3 * mesh.corners()[i];
            loose[3 * i] = mesh.xyz()[v] - origin.x();
            loose[3 * i + 1] = mesh.xyz()[v + 1] - origin.y();
            loose[3 * i + 2] = mesh.xyz()[v + 2] - origin.z();
        }
        int most = Math.max(1, 4 * n / LEAF + 1);
        boxes = new double[6 * most];
        sums = new double[TriangleSums.SIZE * most];
        after = new int[most];
        start = new int[most];
        end = new int[most];
        int[] order = new int[n];
        Arrays.setAll(order, i -> i);
        corners = new double[9 * n];
        build(loose, order, 0, n);
    }

    /** Builds the branch over a run of the order and returns its node. */
    private int build(double[] loose, int[] order, int from, int to) {
        int node = nodes++;
        start[node] = from;
        end[node] = to;
        box(node, loose, order, from, to);
        if (to - from <= LEAF) {
            for (int i = from; i < to; i++) {
                System.arraycopy(loose, 9 * order[i], corners, 9 * i, 9);
                add(sums, TriangleSums.SIZE * node, 9 * i);
            }
        } else {
            sort(loose, order, from, to, widest(node));
            int middle = (from + to) >>> 1;
            int left = build(loose, order, from, middle);
            int right = build(loose, order, middle, to);
            int s = TriangleSums.SIZE;
            for (int k = 0; k < s; k++) {
                sums[s * node + k] = sums[s * left + k] + sums[s * right + k];
            }
        }
        after[node] = nodes;
        return node;
    }

    private void box(int node, double[] loose, int[] order, int from, int to) {
        for (int axis = 0; axis < 3; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                for (int c = axis; c < 9; c += 3) {
                    double x = loose[9 * order[i] + c];
                    low = Math.min(low, x);
                    high = Math.max(high, x);
                }
            }
            boxes[6 * node + axis] = 0.5 * (low + high);
            boxes[6 * node + 3 + axis] = 0.5 * (high - low);
        }
    }

    private int widest(int node) {
        int b = 6 * node + 3;
        if (boxes[b] >= boxes[b + 1] && boxes[b] >= boxes[b + 2]) {
            return 0;
        }
        return boxes[b + 1] >= boxes[b + 2] ? 1 : 2;
    }

    private static void sort(double[] loose, int[] order, int from, int to, int axis) {
        long[] keys = new long[to - from];
        for (int i = from; i < to; i++) {
            int t = 9 * order[i] + axis;
            int bits = Float.floatToIntBits((float) (loose[t] + loose[t + 3] + loose[t + 6]));
            // flip negative floats, so that the bits sort as the numbers do
            int rank = bits ^ ((bits >> 31) & 0x7fffffff);
            keys[i - from] = ((long) rank << 32) | order[i];
        }
        Arrays.sort(keys);
        for (int i = from; i < to; i++) {
            order[i] = (int) keys[i - from];
        }
    }

    private void add(double[] into, int at, int t) {
        double[] c = corners;
        TriangleSums.add(
                into, at, c[t], c[t + 1], c[t + 2], c[t + 3], c[t + 4], c[t + 5], c[t + 6], c[t + 7], c[t + 8]);
    }

    /** Volume properties of everything. */
    Moments whole() {
        Moments all = TriangleSums.moments(Arrays.copyOf(sums, TriangleSums.SIZE), Vec3.ZERO, 0, origin);
        return new Moments(all.volume(), all.first(), 0);
    }

    /** Volume properties below a plane. */
    Moments below(Plane plane) {
        double[] wet = new double[TriangleSums.SIZE];
        Vec3 n = plane.normal();
        double level = -plane.height(origin);
        double nx = Math.abs(n.x());
        double ny = Math.abs(n.y());
        double nz = Math.abs(n.z());
        int node = 0;
        while (node < nodes) {
            int b = 6 * node;
            double height = n.x() * boxes[b] + n.y() * boxes[b + 1] + n.z() * boxes[b + 2] - level;
            double reach = nx * boxes[b + 3] + ny * boxes[b + 4] + nz * boxes[b + 5];
            if (height > reach) {
                node = after[node];
            } else if (height <= -reach) {
                for (int k = 0; k < TriangleSums.SIZE; k++) {
                    wet[k] += sums[TriangleSums.SIZE * node + k];
                }
                node = after[node];
            } else {
                if (after[node] == node + 1) {
                    for (int i = start[node]; i < end[node]; i++) {
                        clip(wet, 9 * i, n, level);
                    }
                }
                node++;
            }
        }
        return TriangleSums.moments(wet, n, level, origin);
    }

    /** Half of the diagonal of the box around everything, m. */
    double reach() {
        return new Vec3(boxes[3], boxes[4], boxes[5]).norm();
    }

    /** Middle of that box, m. */
    Vec3 middle() {
        return origin.plus(new Vec3(boxes[0], boxes[1], boxes[2]));
    }

    /**
     * Sums of the surface that is below both planes, m.
     *
     * @param a first plane, its level from the origin of the sums
     * @param b second plane, likewise
     */
    double[] belowBoth(Plane a, Plane b) {
        double[] wet = new double[TriangleSums.SIZE];
        TriangleClip clip = new TriangleClip(corners);
        int node = 0;
        while (node < nodes) {
            int inA = side(node, a);
            int inB = inA > 0 ? 1 : side(node, b);
            if (inA > 0 || inB > 0) {
                node = after[node];
            } else if (inA < 0 && inB < 0) {
                for (int k = 0; k < TriangleSums.SIZE; k++) {
                    wet[k] += sums[TriangleSums.SIZE * node + k];
                }
                node = after[node];
            } else {
                if (after[node] == node + 1) {
                    for (int i = start[node]; i < end[node]; i++) {
                        clip.add(wet, 9 * i, a, b);
                    }
                }
                node++;
            }
        }
        return wet;
    }

    Vec3 origin() {
        return origin;
    }

    /** -1: the node is below the plane, 1: above, 0: the plane meets its box. */
    private int side(int node, Plane plane) {
        int b = 6 * node;
        Vec3 n = plane.normal();
        double height = n.x() * boxes[b] + n.y() * boxes[b + 1] + n.z() * boxes[b + 2] - plane.level();
        double reach = Math.abs(n.x()) * boxes[b + 3] + Math.abs(n.y()) * boxes[b + 4] + Math.abs(n.z()) * boxes[b + 5];
        return height > reach ? 1 : height <= -reach ? -1 : 0;
    }

    private void clip(double[] wet, int t, Vec3 n, double level) {
        double a = height(t, n, level);
        double b = height(t + 3, n, level);
        double c = height(t + 6, n, level);
        int under = (a <= 0 ? 1 : 0) + (b <= 0 ? 1 : 0) + (c <= 0 ? 1 : 0);
        if (under == 3) {
            add(wet, 0, t);
        } else if (under == 1) {
            // turn the triangle so that its odd corner comes first
            if (a <= 0) {
                corner(wet, t, t + 3, t + 6, a, b, c);
            } else if (b <= 0) {
                corner(wet, t + 3, t + 6, t, b, c, a);
            } else {
                corner(wet, t + 6, t, t + 3, c, a, b);
            }
        } else if (under == 2) {
            if (a > 0) {
                rest(wet, t, t + 3, t + 6, a, b, c);
            } else if (b > 0) {
                rest(wet, t + 3, t + 6, t, b, c, a);
            } else {
                rest(wet, t + 6, t, t + 3, c, a, b);
            }
        }
    }

    private double height(int t, Vec3 n, double level) {
        return n.x() * corners[t] + n.y() * corners[t + 1] + n.z() * corners[t + 2] - level;
    }

    /** Adds the corner at a, which alone is under the plane. */
    private void corner(double[] wet, int a, int b, int c, double ha, double hb, double hc) {
        double[] p = corners;
        double s = ha / (ha - hb);
        double t = ha / (ha - hc);
        TriangleSums.add(
                wet,
                0,
                p[a],
                p[a + 1],
                p[a + 2],
                p[a] + s * (p[b] - p[a]),
                p[a + 1] + s * (p[b + 1] - p[a + 1]),
                p[a + 2] + s * (p[b + 2] - p[a + 2]),
                p[a] + t * (p[c] - p[a]),
                p[a + 1] + t * (p[c + 1] - p[a + 1]),
                p[a + 2] + t * (p[c + 2] - p[a + 2]));
    }

    /** Adds what is left when the corner at a, which alone is over the plane, is cut off. */
    private void rest(double[] wet, int a, int b, int c, double ha, double hb, double hc) {
        double[] p = corners;
        double s = ha / (ha - hb);
        double t = ha / (ha - hc);
        double bx = p[a] + s * (p[b] - p[a]);
        double by = p[a + 1] + s * (p[b + 1] - p[a + 1]);
        double bz = p[a + 2] + s * (p[b + 2] - p[a + 2]);
        double cx = p[a] + t * (p[c] - p[a]);
        double cy = p[a + 1] + t * (p[c + 1] - p[a + 1]);
        double cz = p[a + 2] + t * (p[c + 2] - p[a + 2]);
        TriangleSums.add(wet, 0, bx, by, bz, p[b], p[b + 1], p[b + 2], p[c], p[c + 1], p[c + 2]);
        TriangleSums.add(wet, 0, bx, by, bz, p[c], p[c + 1], p[c + 2], cx, cy, cz);
    }
}
