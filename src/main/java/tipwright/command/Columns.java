// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;

/** Simple layout of what commands print. */
final class Columns {
    private static final int WIDTH = 96;

    private Columns() {}

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    /** Prints a text in lines; those after the first are indented as far as the label is wide. */
    static void wrapped(PrintWriter out, String label, String text) {
        StringBuilder line = new StringBuilder(label);
        boolean fresh = true;
        for (String word : text.split(" +")) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                out.println(line);
                line = new StringBuilder(" ".repeat(label.length()));
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        out.println(line);
    }
}
