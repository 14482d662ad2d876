// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Connected regions of cells of one kind. */
final class Regions {
    private Regions() {}

    /** What kind a cell is of. */
    interface Kinds {
        int at(int row, int column);
    }

    /**
     * A region.
     *
     * @param size cells
     * @param row of the cell that is farthest from the region's edge
     * @param column of that cell
     */
    record Region(int kind, int size, int row, int column) {}

    /** All regions. */
    static List<Region> of(int rows, int columns, Kinds kinds) {
        int[][] depth = depths(rows, columns, kinds);
        boolean[][] seen = new boolean[rows][columns];
        List<Region> all = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                if (!seen[r][c]) {
                    all.add(grow(r, c, rows, columns, kinds, depth, seen));
                }
            }
        }
        return all;
    }

    private static Region grow(
            int row, int column, int rows, int columns, Kinds kinds, int[][] depth, boolean[][] seen) {
        int kind = kinds.at(row, column);
        Deque<int[]> open = new ArrayDeque<>();
        open.add(new int[] {row, column});
        seen[row][column] = true;
        int size = 0;
        int[] deepest = {row, column};
        while (!open.isEmpty()) {
            int[] at = open.remove();
            size++;
            if (depth[at[0]][at[1]] > depth[deepest[0]][deepest[1]]) {
                deepest = at;
            }
            for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                int r = at[0] + step[0];
                int c = at[1] + step[1];
                if (r >= 0 && c >= 0 && r < rows && c < columns && !seen[r][c] && kinds.at(r, c) == kind) {
                    seen[r][c] = true;
                    open.add(new int[] {r, c});
                }
            }
        }
        return new Region(kind, size, deepest[0], deepest[1]);
    }

    /** Steps to the nearest cell of another kind, by two passes. */
    private static int[][] depths(int rows, int columns, Kinds kinds) {
        int[][] depth = new int[rows][columns];
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < rows * columns; i++) {
                int k = pass == 0 ? i : rows * columns - 1 - i;
                int r = k / columns;
                int c = k % columns;
                int step = pass == 0 ? -1 : 1;
                int near = Math.min(
                        next(depth, r + step, c, kinds, kinds.at(r, c)),
                        next(depth, r, c + step, kinds, kinds.at(r, c)));
                depth[r][c] = pass == 0 ? near + 1 : Math.min(depth[r][c], near + 1);
            }
        }
        return depth;
    }

    private static int next(int[][] depth, int r, int c, Kinds kinds, int kind) {
        boolean inside = r >= 0 && c >= 0 && r < depth.length && c < depth[0].length;
        return inside && kinds.at(r, c) == kind ? depth[r][c] : 0;
    }
}
