// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;
import java.util.SplittableRandom;

/** The order of a mesh's triangles in a tree of boxes: runs are split in the middle, along the axis they spread most on. */
final class TreeOrder {
    private static final int SEED = 17;

    private final int[] order;
    /** Sum of a triangle's corners, m, [3 * triangle + axis]; which of two near ones comes first does not matter. */
    private final float[] middles;

    private final SplittableRandom random = new SplittableRandom(SEED);

    TreeOrder(Mesh mesh) {
        int n = mesh.triangles();
        order = new int[n];
        Arrays.setAll(order, i -> i);
        middles = new float[3 * n];
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        for (int t = 0; t < n; t++) {
            for (int axis = 0; axis < 3; axis++) {
                middles[3 * t + axis] = (float) (xyz[3 * corners[3 * t] + axis]
                        + xyz[3 * corners[3 * t + 1] + axis]
                        + xyz[3 * corners[3 * t + 2] + axis]);
            }
        }
    }

    /** The triangle at a place of the order. */
    int triangle(int i) {
        return order[i];
    }

    /** Sorts a run as far as needed for its halves to lie side by side, and returns where the second one starts. */
    int split(int from, int to) {
        int middle = (from + to) >>> 1;
        select(widest(from, to), from, to - 1, middle);
        return middle;
    }

    private int widest(int from, int to) {
        int best = 0;
        float most = -1;
        for (int axis = 0; axis < 3; axis++) {
            float low = Float.POSITIVE_INFINITY;
            float high = Float.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                float x = middles[3 * order[i] + axis];
                low = Math.min(low, x);
                high = Math.max(high, x);
            }
            if (high - low > most) {
                most = high - low;
                best = axis;
            }
        }
        return best;
    }

    /**
     * Moves the triangle of a rank to its place, smaller ones before it and larger ones after it. A pivot drawn at random
     * takes some of the run away at each turn, so this ends.
     *
     * <p>Source: C. A. R. Hoare, Algorithm 65: Find, Communications of the ACM 4, 1961 (from memory).
     */
    private void select(int axis, int first, int last, int rank) {
        int low = first;
        int high = last;
        while (low < high) {
            float pivot = middles[3 * order[low + random.nextInt(high - low + 1)] + axis];
            int i = low;
            int j = high;
            while (i <= j) {
                while (middles[3 * order[i] + axis] < pivot) {
                    i++;
                }
                while (middles[3 * order[j] + axis] > pivot) {
                    j--;
                }
                if (i <= j) {
                    int held = order[i];
                    order[i++] = order[j];
                    order[j--] = held;
                }
            }
            if (rank <= j) {
                high = j;
            } else if (rank >= i) {
                low = i;
            } else {
                return;
            }
        }
    }
}
