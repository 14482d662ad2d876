// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * Hollows of a closed mesh that keep what cannot get over their edge to an outlet. From each place of the wall what lies there climbs
 * along the wall to an outlet by the way on which it has to climb least; up to there the hollow stays full. Immutable.
 *
 * <p>Source: filling of depressions as on a map of heights (priority flood); of a function that is linear on each triangle what lies
 * below a level hangs together as the corners below it do.
 */
public final class Hollows {
    /** Shallower than this is flat, m. */
    private static final double FLAT = 1e-7;

    private final Mesh mesh;
    private final List<List<Seat>> outlets;
    private final int[] first;
    private final int[] next;

    /** A point of an outlet's rim, and the triangle of the wall that is nearest to it. */
    private record Seat(Vec3 point, int triangle) {}

    private Hollows(Mesh mesh, List<List<Seat>> outlets) {
        this.mesh = mesh;
        this.outlets = outlets;
        int[] corners = mesh.corners();
        int vertices = mesh.xyz().length / 3;
        first = new int[vertices + 1];
        for (int corner : corners) {
            first[corner + 1]++;
        }
        for (int v = 0; v < vertices; v++) {
            first[v + 1] += first[v];
        }
        next = new int[corners.length];
        int[] at = first.clone();
        for (int h = 0; h < corners.length; h++) {
            next[at[corners[h]]++] = h / 3;
        }
    }

    /**
     * Those of a mesh.
     *
     * @param mesh closed, outward, joined at equal vertices
     * @param rims points along the rim of each outlet, m
     */
    public static Hollows of(Mesh mesh, List<List<Vec3>> rims) {
        List<List<Seat>> outlets = new ArrayList<>();
        for (List<Vec3> rim : rims) {
            outlets.add(rim.stream().map(p -> new Seat(p, nearest(mesh, p))).toList());
        }
        return new Hollows(mesh, outlets);
    }

    /**
     * What all of them keep, m3, with what lies below the outlets.
     *
     * @param up unit vector square to the surface of what they keep, in the mesh's axes
     * @param open by the number of an outlet
     * @param wetted whether anything has come to a place; a hollow whose deepest place nothing has come to stays empty
     */
    public double kept(Vec3 up, IntPredicate open, Predicate<Vec3> wetted) {
        int vertices = first.length - 1;
        double[] height = new double[vertices];
        for (int v = 0; v < vertices; v++) {
            height[v] = up.dot(mesh.vertex(v));
        }
        double[] level = flood(up, open, height);
        int[] pool = pools(height, level);
        Map<Integer, Integer> deepest = new HashMap<>();
        for (int v = 0; v < vertices; v++) {
            if (pool[v] >= 0) {
                deepest.merge(pool[v], v, (a, b) -> height[b] < height[a] ? b : a);
            }
        }
        Map<Integer, Double> volumes = new HashMap<>();
        for (int t = 0; t < mesh.triangles(); t++) {
            for (int c = 0; c < 3; c++) {
                int v = mesh.corners()[3 * t + c];
                if (pool[v] >= 0) {
                    volumes.merge(pool[v], over(t, up, height, level[v]), Double::sum);
                    break;
                }
            }
        }
        double sum = 0;
        for (Map.Entry<Integer, Double> one : volumes.entrySet()) {
            if (one.getValue() > 0 && wetted.test(mesh.vertex(deepest.getOrDefault(one.getKey(), 0)))) {
                sum += one.getValue();
            }
        }
        return sum;
    }

    /** Up to where each vertex is filled: the least that what lies there has to climb to. */
    private double[] flood(Vec3 up, IntPredicate open, double[] height) {
        record Reached(int vertex, double level) {}
        double[] level = new double[height.length];
        Arrays.fill(level, Double.POSITIVE_INFINITY);
        PriorityQueue<Reached> front = new PriorityQueue<>((a, b) -> Double.compare(a.level, b.level));
        for (int o = 0; o < outlets.size(); o++) {
            if (open.test(o)) {
                for (Seat seat : outlets.get(o)) {
                    for (int c = 0; c < 3; c++) {
                        int v = mesh.corners()[3 * seat.triangle + c];
                        front.add(new Reached(v, Math.max(height[v], up.dot(seat.point))));
                    }
                }
            }
        }
        while (!front.isEmpty()) {
            Reached here = front.poll();
            if (here.level < level[here.vertex]) {
                level[here.vertex] = here.level;
                for (int i = first[here.vertex]; i < first[here.vertex + 1]; i++) {
                    for (int c = 0; c < 3; c++) {
                        int v = mesh.corners()[3 * next[i] + c];
                        double there = Math.max(height[v], here.level);
                        if (there < level[v]) {
                            front.add(new Reached(v, there));
                        }
                    }
                }
            }
        }
        return level;
    }

    /** The number of the pool that each vertex lies in, -1: in none. Two neighbours under a surface share it. */
    private int[] pools(double[] height, double[] level) {
        int[] pool = new int[height.length];
        Arrays.fill(pool, -1);
        int[] stack = new int[height.length];
        for (int start = 0; start < pool.length; start++) {
            int size = 0;
            if (pool[start] < 0 && level[start] > height[start] + FLAT) {
                pool[start] = start;
                stack[size++] = start;
            }
            while (size > 0) {
                int here = stack[--size];
                for (int i = first[here]; i < first[here + 1]; i++) {
                    for (int c = 0; c < 3; c++) {
                        int v = mesh.corners()[3 * next[i] + c];
                        if (pool[v] < 0 && level[v] > height[v] + FLAT) {
                            pool[v] = start;
                            stack[size++] = v;
                        }
                    }
                }
            }
        }
        return pool;
    }

    /** Volume between a triangle and a surface above it, m3; negative: the triangle is a ceiling. */
    private double over(int t, Vec3 up, double[] height, double level) {
        int[] corners = mesh.corners();
        Vec3 a = mesh.vertex(corners[3 * t]);
        Vec3 b = mesh.vertex(corners[3 * t + 1]);
        Vec3 c = mesh.vertex(corners[3 * t + 2]);
        double area = -0.5 * up.dot(b.minus(a).cross(c.minus(a)));
        double[] depth = new double[3];
        for (int i = 0; i < 3; i++) {
            depth[i] = level - height[corners[3 * t + i]];
        }
        Arrays.sort(depth);
        double low = depth[0];
        double middle = depth[1];
        double high = depth[2];
        if (low >= 0) {
            return area * (low + middle + high) / 3;
        }
        if (high <= 0) {
            return 0;
        }
        // the part at the deepest corner, or all but the part at the shallowest
        return middle <= 0
                ? area * high * high * high / ((high - middle) * (high - low)) / 3
                : area * ((low + middle + high) / 3 - low * low * low / ((low - middle) * (low - high)) / 3);
    }

    private static int nearest(Mesh mesh, Vec3 p) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        double[] place = {p.x(), p.y(), p.z()};
        for (int t = 0; t < mesh.triangles(); t++) {
            double far = away(mesh, t, place) < least ? distance(mesh, t, p) : least;
            if (far < least) {
                least = far;
                best = t;
            }
        }
        return best;
    }

    /** No more than the distance of a triangle: that along the axis on which it is furthest off, m. */
    private static double away(Mesh mesh, int t, double[] place) {
        double most = 0;
        for (int axis = 0; axis < 3; axis++) {
            double a = mesh.xyz()[3 * mesh.corners()[3 * t] + axis] - place[axis];
            double b = mesh.xyz()[3 * mesh.corners()[3 * t + 1] + axis] - place[axis];
            double c = mesh.xyz()[3 * mesh.corners()[3 * t + 2] + axis] - place[axis];
            most = Math.max(most, Math.max(Math.min(a, Math.min(b, c)), -Math.max(a, Math.max(b, c))));
        }
        return most;
    }

    private static double distance(Mesh mesh, int t, Vec3 p) {
        Vec3[] corner = new Vec3[3];
        for (int i = 0; i < 3; i++) {
            corner[i] = mesh.vertex(mesh.corners()[3 * t + i]);
        }
        Vec3 normal = corner[1].minus(corner[0]).cross(corner[2].minus(corner[0]));
        boolean beside = !(normal.norm() > 0);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            Vec3 side = corner[(i + 1) % 3].minus(corner[i]);
            Vec3 from = p.minus(corner[i]);
            beside |= normal.dot(side.cross(from)) < 0;
            double square = side.dot(side);
            double along = square > 0 ? Math.max(0, Math.min(1, from.dot(side) / square)) : 0;
            least = Math.min(least, from.minus(side.times(along)).norm());
        }
        return beside ? least : Math.abs(normal.unit().dot(p.minus(corner[0])));
    }
}
