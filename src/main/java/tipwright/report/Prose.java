// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import tipwright.drawing.Signs;

/** Plain text: line breaks, and names made safe for a terminal. */
public final class Prose {
    private static final int WIDTH = 96;

    /** Blanks where a line may end: not between a number and its unit. */
    private static final Pattern BREAK = Pattern.compile("(?<![0-9]) +| +(?![a-zA-Z%])");
    /** A blank where no line may end. */
    private static final char TIE = '\u00a0';

    private Prose() {}

    /**
     * A text in lines of at most 96 characters.
     *
     * @param first what the first line starts with; the others start with as many blanks
     */
    public static List<String> wrap(String first, String text) {
        return wrap(first, text, WIDTH);
    }

    static List<String> wrap(String first, String text, int width) {
        List<String> lines = new ArrayList<>();
        String indent = " ".repeat(first.length());
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String part : BREAK.split(text.strip())) {
            String word = part.replace(TIE, ' ');
            if (!fresh && line.length() + 1 + word.length() > width) {
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

    /** A text that stays on one line when it is wrapped. */
    static String tied(String text) {
        return text.replace(' ', TIE);
    }

    /** A text from a file with nothing in it that a terminal obeys. */
    public static String safe(String text) {
        return Signs.plain(text);
    }

    /** A text with everything in it that a terminal obeys written out: '\\u001b'. */
    public static String visible(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (Signs.isObeyed(c)) {
                for (char half : Character.toChars(c)) {
                    out.append("\\u").append(HexFormat.of().toHexDigits(half));
                }
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** 'a', 'a and b', 'a, b and c'. */
    public static String and(List<String> items) {
        int n = items.size();
        return n < 2 ? String.join("", items) : String.join(", ", items.subList(0, n - 1)) + " and " + items.get(n - 1);
    }

    /** Whether a word stands in a text, as a whole word. */
    public static boolean has(String text, String word) {
        return Arrays.asList(text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+")).contains(word);
    }
}
