// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import org.jspecify.annotations.Nullable;

/**
 * Joins a hole to the loop around it by a bridge there and back, so that one loop is left.
 *
 * <p>Source: D. Eberly, Triangulation by Ear Clipping, 2002 (from memory).
 */
final class Bridge {
    private final double[] x;
    private final double[] y;
    private final int[] loop;
    /** The hole's end of the bridge. */
    private final int m;

    private Bridge(double[] x, double[] y, int[] loop, int m) {
        this.x = x;
        this.y = y;
        this.loop = loop;
        this.m = m;
    }

    /** Place in a hole of its vertex with the largest x. */
    static int furthest(double[] x, int[] hole) {
        int best = 0;
        for (int i = 1; i < hole.length; i++) {
            best = x[hole[i]] > x[hole[best]] ? i : best;
        }
        return best;
    }

    /**
     * One loop out of two, or null if the loop is nowhere to the right of the hole.
     *
     * @param loop vertex numbers, counter-clockwise
     * @param hole vertex numbers, clockwise
     */
    static int @Nullable [] joined(double[] x, double[] y, int[] loop, int[] hole) {
        int start = furthest(x, hole);
        int place = new Bridge(x, y, loop, hole[start]).visible();
        if (place < 0) {
            return null;
        }
        int[] out = new int[loop.length + hole.length + 2];
        System.arraycopy(loop, 0, out, 0, place + 1);
        for (int i = 0; i <= hole.length; i++) {
            out[place + 1 + i] = hole[(start + i) % hole.length];
        }
        System.arraycopy(loop, place, out, place + hole.length + 2, loop.length - place);
        return out;
    }

    /** Place in the loop of a vertex that sees m, or -1. */
    private int visible() {
        double nearest = Double.POSITIVE_INFINITY;
        int edge = -1;
        for (int i = 0; i < loop.length; i++) {
            int a = loop[i];
            int b = loop[next(i)];
            // the loop runs counter-clockwise: a side to the right of a point inside goes up
            if (y[a] <= y[m] && y[b] > y[m]) {
                double cross = x[a] + (x[b] - x[a]) * (y[m] - y[a]) / (y[b] - y[a]);
                if (cross >= x[m] && cross < nearest) {
                    nearest = cross;
                    edge = i;
                }
            }
        }
        if (edge < 0) {
            return -1;
        }
        int corner = x[loop[edge]] > x[loop[next(edge)]] ? edge : next(edge);
        return y[loop[corner]] == y[m] ? corner : leastOff(nearest, corner);
    }

    /** The corner, or the vertex in the triangle m, crossing, corner that lies least off the ray to the right. */
    private int leastOff(double cross, int corner) {
        int best = corner;
        double px = x[loop[corner]] - cross;
        double py = y[loop[corner]] - y[m];
        for (int i = 0; i < loop.length; i++) {
            int v = loop[i];
            double dx = x[v] - x[m];
            double dy = y[v] - y[m];
            boolean sameSide = dx > 0 && dy * py >= 0;
            // on m's side of the line from the crossing to the corner
            boolean within = sameSide && (px * dy - py * (x[v] - cross)) * py >= 0;
            if (within && closer(v, loop[best]) && faces(i)) {
                best = i;
            }
        }
        return best;
    }

    private boolean closer(int v, int than) {
        double cross = Math.abs(y[v] - y[m]) * (x[than] - x[m]) - Math.abs(y[than] - y[m]) * (x[v] - x[m]);
        return cross < 0 || (cross == 0 && x[v] < x[than]);
    }

    /** Whether m lies in the inner angle at a place: where a bridge lands, one place comes twice and only one faces m. */
    private boolean faces(int i) {
        int before = loop[(i + loop.length - 1) % loop.length];
        int here = loop[i];
        int after = loop[next(i)];
        boolean leftOfIn = turn(before, here, m) >= 0;
        boolean leftOfOut = turn(here, after, m) >= 0;
        return turn(before, here, after) >= 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
    }

    private double turn(int a, int b, int c) {
        return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }

    private int next(int i) {
        return (i + 1) % loop.length;
    }
}
