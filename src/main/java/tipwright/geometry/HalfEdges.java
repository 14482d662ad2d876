// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;

/** Which triangles of a mesh are neighbours. Half edge h runs from corner h of its triangle (h / 3) to the next corner. */
final class HalfEdges {
    /** In place of a twin: no triangle on the other side. */
    static final int NONE = -1;

    private final int[] corners;
    private final int[] twin;
    private final int repeated;

    HalfEdges(int[] corners) {
        this.corners = corners;
        int n = corners.length;
        int size = Integer.highestOneBit(Math.max(8, n)) * 4;
        int[] table = new int[size];
        Arrays.fill(table, NONE);
        int firstRepeated = NONE;
        for (int h = 0; h < n; h++) {
            int slot = slot(table, from(h), to(h));
            if (table[slot] == NONE) {
                table[slot] = h;
            } else if (firstRepeated == NONE) {
                firstRepeated = h;
            }
        }
        repeated = firstRepeated;
        twin = new int[n];
        for (int h = 0; h < n; h++) {
            twin[h] = table[slot(table, to(h), from(h))];
        }
    }

    private int slot(int[] table, int from, int to) {
        long key = from * 0x9E3779B97F4A7C15L + to * 0xC2B2AE3D27D4EB4FL;
        int mask = table.length - 1;
        int slot = (int) (key >>> 32) & mask;
        while (table[slot] != NONE && (from(table[slot]) != from || to(table[slot]) != to)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    /** Vertex at which a half edge starts. */
    int from(int h) {
        return corners[h];
    }

    /** Vertex at which a half edge ends. */
    int to(int h) {
        return corners[h % 3 == 2 ? h - 2 : h + 1];
    }

    /** The half edge the other way along the same edge, or NONE. */
    int twin(int h) {
        return twin[h];
    }

    /** A half edge that another triangle uses the same way round, or NONE. */
    int repeated() {
        return repeated;
    }

    /** The first half edge with no triangle on its other side, or NONE. */
    int firstOpen() {
        for (int h = 0; h < twin.length; h++) {
            if (twin[h] == NONE) {
                return h;
            }
        }
        return NONE;
    }

    /** Number of bodies that hang together by edges; the piece of each triangle goes into the array. */
    int pieces(int[] pieceOfTriangle) {
        Arrays.fill(pieceOfTriangle, NONE);
        int[] stack = new int[pieceOfTriangle.length];
        int pieces = 0;
        for (int seed = 0; seed < pieceOfTriangle.length; seed++) {
            if (pieceOfTriangle[seed] != NONE) {
                continue;
            }
            int top = 0;
            stack[top++] = seed;
            pieceOfTriangle[seed] = pieces;
            while (top > 0) {
                int t = stack[--top];
                for (int h = 3 * t; h < 3 * t + 3; h++) {
                    int other = twin[h] == NONE ? t : twin[h] / 3;
                    if (pieceOfTriangle[other] == NONE) {
                        pieceOfTriangle[other] = pieces;
                        stack[top++] = other;
                    }
                }
            }
            pieces++;
        }
        return pieces;
    }

    /** Whether every edge of a closed mesh bends outward or lies flat: for one closed body this means convex. */
    boolean convex(Mesh mesh) {
        // single-precision files bend flat faces by about 1e-7 of their size
        double flat = 1e-6 * mesh.size();
        double[] p = mesh.xyz();
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            double ux = p[b] - p[a];
            double uy = p[b + 1] - p[a + 1];
            double uz = p[b + 2] - p[a + 2];
            double vx = p[c] - p[a];
            double vy = p[c + 1] - p[a + 1];
            double vz = p[c + 2] - p[a + 2];
            double nx = uy * vz - uz * vy;
            double ny = uz * vx - ux * vz;
            double nz = ux * vy - uy * vx;
            double limit = flat * Math.sqrt(nx * nx + ny * ny + nz * nz);
            for (int h = t; h < t + 3; h++) {
                int o = twin[h];
                int q = 3 * corners[o - o % 3 + (o + 2) % 3];
                if (nx * (p[q] - p[a]) + ny * (p[q + 1] - p[a + 1]) + nz * (p[q + 2] - p[a + 2]) > limit) {
                    return false;
                }
            }
        }
        return true;
    }
}
