// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** Reads text STL: 'solid', then 'facet', 'outer loop', three times 'vertex x y z', 'endloop', 'endfacet', ... 'endsolid'. */
final class StlText {
    private static final int SHOWN = 40;
    private static final int MOST_WORDS = 5;

    private final byte[] bytes;
    private int at;
    private int line = 1;
    private double[] xyz = new double[9 * 64];
    private int count;

    private StlText(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Whether the file starts with 'solid' and has no zero byte early on, as a binary header would. */
    static boolean looksLike(byte[] bytes) {
        int i = 0;
        while (i < bytes.length && bytes[i] <= ' ' && bytes[i] > 0) {
            i++;
        }
        for (int k = i; k < Math.min(bytes.length, i + 512); k++) {
            if (bytes[k] == 0) {
                return false;
            }
        }
        String start = new String(bytes, i, Math.min(5, bytes.length - i), StandardCharsets.ISO_8859_1);
        return start.toLowerCase(Locale.ROOT).equals("solid");
    }

    static Mesh read(byte[] bytes) throws StlException {
        return new StlText(bytes).run();
    }

    private Mesh run() throws StlException {
        // corners read of the facet at hand, -1 outside a facet
        int corner = -1;
        boolean open = false;
        while (at < bytes.length) {
            String[] words = words();
            String first = words.length == 0 ? "" : words[0].toLowerCase(Locale.ROOT);
            switch (first) {
                case "", "outer", "endloop" -> {}
                case "solid" -> open = true;
                case "endsolid" -> {
                    complete(corner == -1, "'endsolid' inside a facet");
                    open = false;
                }
                case "facet" -> {
                    complete(corner == -1, "'facet' inside a facet");
                    corner = 0;
                }
                case "vertex" -> {
                    complete(corner >= 0 && corner < 3, "a facet has three vertices; here is another one");
                    vertex(words);
                    corner++;
                }
                case "endfacet" -> {
                    complete(corner == 3, "a facet has three vertices; this one has " + Math.max(0, corner));
                    corner = -1;
                }
                default -> throw fault("'" + shown(words[0]) + "' is not a word of text STL");
            }
            line++;
        }
        line--;
        complete(!open && corner == -1, "the file stops before 'endsolid': it is cut short");
        return Stl.loose(Arrays.copyOf(xyz, count));
    }

    private void complete(boolean fine, String otherwise) throws StlException {
        if (!fine) {
            throw fault(otherwise);
        }
    }

    private StlException fault(String what) {
        return new StlException("line " + line + ": " + what);
    }

    private static String shown(String word) {
        String clean = word.replaceAll("[^\\x20-\\x7e]", "?");
        return clean.length() > SHOWN ? clean.substring(0, SHOWN) + "..." : clean;
    }

    /** The words of the next line, those after the fifth left out. */
    private String[] words() {
        String[] words = new String[MOST_WORDS];
        int n = 0;
        int from = at;
        while (at < bytes.length && !ends(at)) {
            if (bytes[at] >= 0 && bytes[at] <= ' ') {
                n = word(words, n, from);
                from = at + 1;
            }
            at++;
        }
        n = word(words, n, from);
        at++;
        return Arrays.copyOf(words, n);
    }

    private int word(String[] words, int n, int from) {
        if (from == at || n == MOST_WORDS) {
            return n;
        }
        words[n] = new String(bytes, from, at - from, StandardCharsets.ISO_8859_1);
        return n + 1;
    }

    /** Whether a line ends here: at a line feed, or at a carriage return that no line feed follows. */
    private boolean ends(int i) {
        return bytes[i] == '\n' || (bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n'));
    }

    private void vertex(String[] words) throws StlException {
        complete(
                words.length == 4,
                "a vertex has three coordinates; this one has "
                        + (words.length == MOST_WORDS ? "more" : String.valueOf(words.length - 1)));
        if (count + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        for (int i = 1; i < 4; i++) {
            xyz[count++] = number(words[i]);
        }
    }

    private double number(String word) throws StlException {
        double value = Double.NaN;
        if (plain(word)) {
            try {
                value = Double.parseDouble(word);
            } catch (NumberFormatException e) {
                value = Double.NaN;
            }
        }
        complete(Double.isFinite(value), "'" + shown(word) + "' is not a number");
        return value;
    }

    /** Whether a word has only what a decimal number has; Java would also read '1f', '0x1p3' and 'NaN'. */
    private static boolean plain(String word) {
        for (int i = 0; i < word.length(); i++) {
            if ("+-.0123456789eE".indexOf(word.charAt(i)) < 0) {
                return false;
            }
        }
        return word.length() <= 60;
    }
}
