// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Takes away cells of a map in whose corners another check fails. The quick look at all other checks goes over blocks of cells, and
 * into a block where one of its corners fails or it is not whole; the whole check is made in every corner on the edge of what is left,
 * and in a few inside of it: what fails there takes its cells away, and the new edge is looked at in turn. Mutable: owned by one map.
 */
final class AllowedCells {
    private static final int BLOCK = 4;
    /** Whole checks inside of what is allowed, cells apart. */
    private static final int APART = 12;

    private final boolean[][] allowed;
    private final boolean[][] barred;
    private final int rows;
    private final int columns;

    /**
     * Of the cells [row][column] that keep every limit.
     *
     * @param allowed is changed here
     */
    AllowedCells(boolean[][] allowed) {
        this.allowed = allowed;
        rows = allowed.length;
        columns = allowed[0].length;
        barred = new boolean[rows][columns];
    }

    /** A corner of cells: the lower left one of the cell with the same numbers. */
    record Corner(int row, int column) {}

    /** The cells that were taken away [row][column]. */
    boolean[][] barred() {
        return barred;
    }

    /** Looks at blocks; corners that are looked at side by side are looked at once. */
    void quick(Predicate<Corner> passes) {
        Map<Corner, Boolean> known = new HashMap<>();
        for (int r = 0; r < rows; r += BLOCK) {
            for (int c = 0; c < columns; c += BLOCK) {
                block(r, c, BLOCK, known, passes);
            }
        }
    }

    private void block(int row, int column, int size, Map<Corner, Boolean> known, Predicate<Corner> passes) {
        int high = Math.min(rows, row + size);
        int right = Math.min(columns, column + size);
        boolean any = false;
        boolean whole = true;
        for (int r = row; r < high; r++) {
            for (int c = column; c < right; c++) {
                any |= allowed[r][c];
                whole &= allowed[r][c];
            }
        }
        if (row >= rows || column >= columns || !any) {
            return;
        }
        if (whole || size == 1) {
            boolean good = List.of(
                            new Corner(row, column),
                            new Corner(high, column),
                            new Corner(row, right),
                            new Corner(high, right))
                    .stream()
                    .allMatch(corner -> known.computeIfAbsent(corner, passes::test));
            if (good) {
                return;
            }
            if (size == 1) {
                bar(row, column);
                return;
            }
        }
        int half = size / 2;
        for (int r = row; r < row + size; r += half) {
            for (int c = column; c < column + size; c += half) {
                block(r, c, half, known, passes);
            }
        }
    }

    /** Looks at every corner on the edge of what is left, and goes on inward where one fails; several at a time. */
    void edge(Predicate<Corner> passes) {
        Set<Corner> looked = new LinkedHashSet<>();
        List<Corner> next = corners(looked);
        while (!next.isEmpty()) {
            looked.addAll(next);
            List<Corner> bad = next.parallelStream().filter(passes.negate()).toList();
            for (Corner corner : bad) {
                for (int r = corner.row() - 1; r <= corner.row(); r++) {
                    for (int c = corner.column() - 1; c <= corner.column(); c++) {
                        bar(r, c);
                    }
                }
            }
            next = corners(looked);
        }
    }

    /** Corners that an allowed cell has, on the edge or among the few inside, that were not looked at. */
    private List<Corner> corners(Set<Corner> looked) {
        List<Corner> all = new ArrayList<>();
        for (int r = 0; r <= rows; r++) {
            for (int c = 0; c <= columns; c++) {
                int here = allowed(r - 1, c - 1) + allowed(r - 1, c) + allowed(r, c - 1) + allowed(r, c);
                boolean chosen = here > 0 && (here < 4 || (r % APART == 0 && c % APART == 0));
                Corner corner = new Corner(r, c);
                if (chosen && !looked.contains(corner)) {
                    all.add(corner);
                }
            }
        }
        return all;
    }

    private int allowed(int r, int c) {
        return r >= 0 && c >= 0 && r < rows && c < columns && allowed[r][c] ? 1 : 0;
    }

    private void bar(int r, int c) {
        if (allowed(r, c) == 1) {
            allowed[r][c] = false;
            barred[r][c] = true;
        }
    }
}
