// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text: line breaks, and names made safe for a terminal. */
final class Prose {
    static final int WIDTH = 96;

    private Prose() {}

    /** The text in lines of at most {@link #WIDTH} characters, the first after `first`, the others after as many blanks. */
    static List<String> wrap(String first, String text) {
        List<String> lines = new ArrayList<>();
        String indent = " ".repeat(first.length());
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String word : text.strip().split("\\s+")) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    /** A text from a file with nothing in it that a terminal obeys. */
    static String safe(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean obeyed = type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
            out.appendCodePoint(obeyed ? ' ' : c);
        });
        return out.toString();
    }

    /** 'a', 'a and b', 'a, b and c'. */
    static String and(List<String> items) {
        int n = items.size();
        return n < 2 ? String.join("", items) : String.join(", ", items.subList(0, n - 1)) + " and " + items.get(n - 1);
    }
}
