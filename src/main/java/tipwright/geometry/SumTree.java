// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Triangles of a closed mesh in a tree of boxes that carry the sums of what is in them, so that a cut visits only the
 * boxes that the plane meets. Nodes are stored parent before children, each with the number of the node after its branch.
 */
final class SumTree {
    private static final int LEAF = 4;
    private static final int SUMS = TriangleSums.SIZE;

    /** Corner coordinates about the origin, m, [9 * triangle + 3 * corner + axis], in tree order. */
    private final double[] corners;

    private final Vec3 origin;
    /** Middle and half size of each node's box, m, [6 * node]. */
    private final double[] boxes;

    private final double[] sums;
    private final int[] after;
    /** The first triangle of each node; those of a leaf end where the next leaf's start. */
    private final int[] start;

    private int nodes;

    SumTree(Mesh mesh, Vec3 origin) {
        this.origin = origin;
        int n = mesh.triangles();
        int most = count(n);
        corners = new double[9 * n];
        boxes = new double[6 * most];
        sums = new double[SUMS * most];
        after = new int[most];
        start = new int[most + 1];
        start[most] = n;
        build(mesh, new TreeOrder(mesh), 0, n);
    }

    private static int count(int triangles) {
        return triangles <= LEAF ? 1 : 1 + count(triangles / 2) + count(triangles - triangles / 2);
    }

    /** Builds the branch over a run of the order and returns its node. */
    private int build(Mesh mesh, TreeOrder order, int from, int to) {
        int node = nodes++;
        start[node] = from;
        if (to - from <= LEAF) {
            for (int i = from; i < to; i++) {
                copy(mesh, order.triangle(i), 9 * i);
                add(sums, SUMS * node, 9 * i);
            }
            box(node, from, to);
        } else {
            int middle = order.split(from, to);
            int left = build(mesh, order, from, middle);
            int right = build(mesh, order, middle, to);
            for (int k = 0; k < SUMS; k++) {
                sums[SUMS * node + k] = sums[SUMS * left + k] + sums[SUMS * right + k];
            }
            for (int k = 6 * node; k < 6 * node + 3; k++) {
                int l = k + 6 * (left - node);
                int r = k + 6 * (right - node);
                span(
                        k,
                        Math.min(boxes[l] - boxes[l + 3], boxes[r] - boxes[r + 3]),
                        Math.max(boxes[l] + boxes[l + 3], boxes[r] + boxes[r + 3]));
            }
        }
        after[node] = nodes;
        return node;
    }

    private void copy(Mesh mesh, int triangle, int to) {
        double[] xyz = mesh.xyz();
        for (int c = 0; c < 3; c++) {
            int v = 3 * mesh.corners()[3 * triangle + c];
            corners[to + 3 * c] = xyz[v] - origin.x();
            corners[to + 3 * c + 1] = xyz[v + 1] - origin.y();
            corners[to + 3 * c + 2] = xyz[v + 2] - origin.z();
        }
    }

    private void box(int node, int from, int to) {
        for (int axis = 0; axis < 3; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int c = 9 * from + axis; c < 9 * to; c += 3) {
                low = Math.min(low, corners[c]);
                high = Math.max(high, corners[c]);
            }
            span(6 * node + axis, low, high);
        }
    }

    private void span(int k, double low, double high) {
        boxes[k] = 0.5 * (low + high);
        boxes[k + 3] = 0.5 * (high - low);
    }

    private void add(double[] into, int at, int t) {
        double[] c = corners;
        TriangleSums.add(
                into, at, c[t], c[t + 1], c[t + 2], c[t + 3], c[t + 4], c[t + 5], c[t + 6], c[t + 7], c[t + 8]);
    }

    /** Volume properties of everything. */
    Moments whole() {
        Moments all = new CutSums(corners, Vec3.ZERO).moments(sums, Vec3.ZERO, origin);
        return new Moments(all.volume(), all.first(), 0);
    }

    /** Volume properties below a plane. */
    Moments below(Plane plane) {
        double[] wet = new double[SUMS];
        Vec3 n = plane.normal();
        double level = -plane.height(origin);
        CutSums cut = new CutSums(corners, n.times(level));
        int node = 0;
        while (node < nodes) {
            double height = height(node, n) - level;
            double reach = reach(node, n);
            if (height > reach) {
                node = after[node];
            } else if (height <= -reach) {
                whole(wet, node);
                node = after[node];
            } else {
                if (after[node] == node + 1) {
                    for (int i = start[node]; i < start[node + 1]; i++) {
                        cut.below(9 * i, n, level);
                    }
                }
                node++;
            }
        }
        return cut.moments(wet, n, origin);
    }

    /** Half of the diagonal of the box around everything, m. */
    double reach() {
        return new Vec3(boxes[3], boxes[4], boxes[5]).norm();
    }

    /** Middle of that box, m. */
    Vec3 middle() {
        return origin.plus(new Vec3(boxes[0], boxes[1], boxes[2]));
    }

    /** Volume properties of what lies below both of two planes that are not parallel; the section is that of the first. */
    Moments below(Plane one, Plane two) {
        Vec3 n = one.normal();
        Vec3 m = two.normal();
        double level = -one.height(origin);
        double other = -two.height(origin);
        // where one plane is the lower of the two all over the box, it alone cuts
        Vec3 apart = n.minus(m);
        double over = height(0, apart) - (level - other);
        if (Math.abs(over) >= reach(0, apart)) {
            Moments single = below(over >= 0 ? one : two);
            return over >= 0 ? single : new Moments(single.volume(), single.first(), 0);
        }
        double[] wet = new double[SUMS];
        CutSums cut = new CutSums(corners, onBoth(n, level, apart, level - other));
        int node = 0;
        while (node < nodes) {
            double a = height(node, n) - level;
            double b = height(node, m) - other;
            double ra = reach(node, n);
            double rb = reach(node, m);
            if (a > ra || b > rb) {
                node = after[node];
            } else if (a <= -ra && b <= -rb) {
                whole(wet, node);
                node = after[node];
            } else {
                if (after[node] == node + 1) {
                    for (int i = start[node]; i < start[node + 1]; i++) {
                        cut.below(9 * i, n, level, m, other);
                    }
                }
                node++;
            }
        }
        // the area vectors of all faces and of both sections sum to nothing
        double cosine = n.dot(m);
        Vec3 first = n.minus(m.times(cosine)).times(1 / (1 - cosine * cosine));
        Moments both = cut.moments(wet, first, origin);
        return new Moments(both.volume(), both.first(), Math.max(0, both.section()));
    }

    /** The point nearest to the origin on both planes n . p = level and apart . p = gap. */
    private static Vec3 onBoth(Vec3 n, double level, Vec3 apart, double gap) {
        Vec3 across = apart.minus(n.times(apart.dot(n)));
        double share = (gap - level * apart.dot(n)) / across.dot(across);
        return n.times(level).plus(across.times(share));
    }

    private void whole(double[] wet, int node) {
        for (int k = 0; k < SUMS; k++) {
            wet[k] += sums[SUMS * node + k];
        }
    }

    private double height(int node, Vec3 n) {
        int b = 6 * node;
        return n.x() * boxes[b] + n.y() * boxes[b + 1] + n.z() * boxes[b + 2];
    }

    private double reach(int node, Vec3 n) {
        int b = 6 * node + 3;
        return Math.abs(n.x()) * boxes[b] + Math.abs(n.y()) * boxes[b + 1] + Math.abs(n.z()) * boxes[b + 2];
    }

    /** Largest of direction . p over the corners, m. */
    double furthest(Vec3 direction) {
        double most = Double.NEGATIVE_INFINITY;
        int node = 0;
        while (node < nodes) {
            if (height(node, direction) + reach(node, direction) <= most) {
                node = after[node];
                continue;
            }
            if (after[node] == node + 1) {
                for (int c = 9 * start[node]; c < 9 * start[node + 1]; c += 3) {
                    most = Math.max(
                            most,
                            direction.x() * corners[c]
                                    + direction.y() * corners[c + 1]
                                    + direction.z() * corners[c + 2]);
                }
            }
            node++;
        }
        return most + direction.dot(origin);
    }
}
