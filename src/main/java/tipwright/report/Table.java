// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, each as wide as its widest cell; a text of its own may follow below a row. */
final class Table {
    private static final String GAP = "  ";

    private final boolean[] rightAligned;
    private final List<String[]> rows = new ArrayList<>();
    private final List<List<String>> below = new ArrayList<>();

    /** One letter a column: 'l' left aligned, 'r' right aligned. */
    Table(String alignment) {
        rightAligned = new boolean[alignment.length()];
        for (int i = 0; i < rightAligned.length; i++) {
            rightAligned[i] = alignment.charAt(i) == 'r';
        }
    }

    /** Adds a row; cells left out at the end are empty. */
    Table row(String... cells) {
        String[] row = new String[rightAligned.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = i < cells.length ? cells[i] : "";
        }
        rows.add(row);
        below.add(List.of());
        return this;
    }

    /** Lines of their own below the last row. */
    Table under(List<String> lines) {
        below.set(below.size() - 1, List.copyOf(lines));
        return this;
    }

    List<String> lines(String indent) {
        int[] widths = new int[rightAligned.length];
        for (String[] row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], visible(row[i]));
            }
        }
        List<String> lines = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            lines.add(line(indent, rows.get(r), widths));
            lines.addAll(below.get(r));
        }
        return lines;
    }

    private String line(String indent, String[] row, int[] widths) {
        StringBuilder line = new StringBuilder(indent);
        for (int i = 0; i < row.length; i++) {
            String pad = " ".repeat(widths[i] - visible(row[i]));
            line.append(i == 0 ? "" : GAP)
                    .append(rightAligned[i] ? pad : "")
                    .append(row[i])
                    .append(rightAligned[i] ? "" : pad);
        }
        return line.toString().stripTrailing();
    }

    /** Length without colour sequences. */
    private static int visible(String cell) {
        int length = 0;
        boolean escape = false;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (escape) {
                escape = c != 'm';
            } else if (c == '\u001b') {
                escape = true;
            } else {
                length++;
            }
        }
        return length;
    }
}
