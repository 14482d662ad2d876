// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * Triangulates a polygon by cutting off one ear after another; every vertex is used and none is added.
 *
 * <p>Source: G. H. Meisters, Polygons have ears, American Mathematical Monthly 82, 1975 (from memory).
 */
final class EarClip {
    private final double[] x;
    private final double[] y;
    private final int[] loop;
    private final int[] next;
    private final int[] back;

    private EarClip(double[] x, double[] y, int[] loop) {
        this.x = x;
        this.y = y;
        this.loop = loop;
        int n = loop.length;
        next = new int[n];
        back = new int[n];
        for (int i = 0; i < n; i++) {
            next[i] = (i + 1) % n;
            back[i] = (i + n - 1) % n;
        }
    }

    /**
     * Triangles of a polygon, as vertex numbers, counter-clockwise, [3 * (vertices - 2)].
     *
     * @param x coordinates by vertex number
     * @param y coordinates by vertex number
     * @param loop vertex numbers, counter-clockwise; a number may come twice where a bridge leads to a hole
     */
    static int[] triangles(double[] x, double[] y, int[] loop) {
        return new EarClip(x, y, loop).run();
    }

    private int[] run() {
        int left = loop.length;
        int[] out = new int[3 * Math.max(0, left - 2)];
        int k = 0;
        int i = 0;
        int tried = 0;
        while (left > 2) {
            boolean ear = left == 3 || (turn(back[i], i, next[i]) > 0 && empty(i));
            if (!ear && ++tried <= left) {
                i = next[i];
                continue;
            }
            if (!ear) {
                i = leastHarm(i);
            }
            out[k++] = loop[back[i]];
            out[k++] = loop[i];
            out[k++] = loop[next[i]];
            next[back[i]] = next[i];
            back[next[i]] = back[i];
            // step on by two, so that the cuts go round and do not fan from one vertex
            i = next[next[i]];
            left--;
            tried = 0;
        }
        return out;
    }

    /** Twice the signed area of the triangle of three places in the loop. */
    private double turn(int a, int b, int c) {
        return turn(loop[a], loop[b], x[loop[c]], y[loop[c]]);
    }

    private double turn(int a, int b, double px, double py) {
        return (x[b] - x[a]) * (py - y[a]) - (y[b] - y[a]) * (px - x[a]);
    }

    /** Whether no other vertex lies in or on the triangle at a place. */
    private boolean empty(int i) {
        int a = loop[back[i]];
        int b = loop[i];
        int c = loop[next[i]];
        for (int j = next[next[i]]; j != back[i]; j = next[j]) {
            double px = x[loop[j]];
            double py = y[loop[j]];
            boolean corner = same(px, py, a) || same(px, py, b) || same(px, py, c);
            if (!corner && turn(a, b, px, py) >= 0 && turn(b, c, px, py) >= 0 && turn(c, a, px, py) >= 0) {
                return false;
            }
        }
        return true;
    }

    private boolean same(double px, double py, int v) {
        return px == x[v] && py == y[v];
    }

    /** The place with the flattest triangle: rounding left no true ear, so the loop is all but flat there. */
    private int leastHarm(int from) {
        int best = from;
        int i = from;
        do {
            if (Math.abs(turn(back[i], i, next[i])) < Math.abs(turn(back[best], best, next[best]))) {
                best = i;
            }
            i = next[i];
        } while (i != from);
        return best;
    }
}
