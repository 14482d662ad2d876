// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Triangulates the flat cap of a cut mesh: any number of loops, some inside others. Holes are joined to the loop around
 * them by bridges.
 */
final class Cap {
    private final double[] x;
    private final double[] y;

    private Cap(double[] xyz, Vec3 normal) {
        Vec3 u = Math.abs(normal.y()) < 0.9 ? new Vec3(0, 1, 0) : new Vec3(1, 0, 0);
        u = u.minus(normal.times(u.dot(normal))).unit();
        Vec3 v = normal.cross(u);
        int n = xyz.length / 3;
        x = new double[n];
        y = new double[n];
        for (int i = 0; i < n; i++) {
            Vec3 p = new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
            x[i] = u.dot(p);
            y[i] = v.dot(p);
        }
    }

    /**
     * Triangles of the cap, counter-clockwise seen from the normal's side.
     *
     * @param xyz coordinates, m, [3 * vertex + axis]
     * @param after the vertex that follows each vertex of a loop, -1 elsewhere; outer loops run counter-clockwise
     */
    static int[] triangles(double[] xyz, int[] after, Vec3 normal) {
        Cap cap = new Cap(xyz, normal);
        List<int[]> outer = new ArrayList<>();
        List<int[]> holes = new ArrayList<>();
        for (int[] loop : loops(after)) {
            (cap.area(loop) >= 0 ? outer : holes).add(loop);
        }
        // the hole that reaches furthest goes first, so that its bridge crosses no other hole
        holes.sort((a, b) -> Double.compare(cap.x[b[Bridge.furthest(cap.x, b)]], cap.x[a[Bridge.furthest(cap.x, a)]]));
        List<int[]> shapes = new ArrayList<>(outer);
        for (int[] hole : holes) {
            int home = cap.around(outer, hole);
            int[] joined = home < 0 ? null : Bridge.joined(cap.x, cap.y, shapes.get(home), hole);
            if (joined == null) {
                shapes.add(hole);
            } else {
                shapes.set(home, joined);
            }
        }
        int[] all = new int[0];
        for (int[] shape : shapes) {
            int[] part = EarClip.triangles(cap.x, cap.y, shape);
            int k = all.length;
            all = Arrays.copyOf(all, k + part.length);
            System.arraycopy(part, 0, all, k, part.length);
        }
        return all;
    }

    private static List<int[]> loops(int[] after) {
        List<int[]> loops = new ArrayList<>();
        boolean[] seen = new boolean[after.length];
        int[] loop = new int[after.length];
        for (int i = 0; i < after.length; i++) {
            int n = 0;
            for (int v = i; v >= 0 && !seen[v] && after[v] >= 0; v = after[v]) {
                seen[v] = true;
                loop[n++] = v;
            }
            if (n > 0) {
                loops.add(Arrays.copyOf(loop, n));
            }
        }
        return loops;
    }

    private double area(int[] loop) {
        double twice = 0;
        for (int i = 2; i < loop.length; i++) {
            twice += turn(loop[0], loop[i - 1], x[loop[i]], y[loop[i]]);
        }
        return 0.5 * twice;
    }

    private double turn(int a, int b, double px, double py) {
        return (x[b] - x[a]) * (py - y[a]) - (y[b] - y[a]) * (px - x[a]);
    }

    /** Number of the smallest loop around a hole, or -1. */
    private int around(List<int[]> outer, int[] hole) {
        int best = -1;
        for (int i = 0; i < outer.size(); i++) {
            boolean inside = inside(outer.get(i), hole[0]);
            if (inside && (best < 0 || area(outer.get(i)) < area(outer.get(best)))) {
                best = i;
            }
        }
        return best;
    }

    private boolean inside(int[] loop, int p) {
        boolean inside = false;
        for (int i = 0, j = loop.length - 1; i < loop.length; j = i++) {
            int a = loop[i];
            int b = loop[j];
            if ((y[a] > y[p]) != (y[b] > y[p]) && x[p] < x[a] + (x[b] - x[a]) * (y[p] - y[a]) / (y[b] - y[a])) {
                inside = !inside;
            }
        }
        return inside;
    }
}
