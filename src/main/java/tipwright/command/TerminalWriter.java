// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.report.Prose;

/**
 * What a person may look at on a terminal: whatever else a terminal would obey is written out, U+001B as the six characters \u005cu001b,
 * which also keeps JSON the same. Names of files and texts from files may hold anything.
 */
final class TerminalWriter extends FilterWriter {
    /** Colours and weights that the program itself uses. Source: ECMA-48, 5th edition, 8.3.117 (from memory). */
    private static final Pattern OURS = Pattern.compile("\u001b\\[(?:(?:[013]|2[1-3]|3[1-59])(?:;(?!m)|(?=m)))*m");

    private static final Pattern CUT = Pattern.compile("\r|\u001b(?:\\[[0-9;]{0,12})?|[\ud800-\udbff]");

    private final boolean colour;
    private final StringBuilder waiting = new StringBuilder();

    /**
     * In front of an output.
     *
     * @param colour whether the program's own colours go through
     */
    TerminalWriter(Writer to, boolean colour) {
        super(to);
        this.colour = colour;
    }

    @Override
    public void write(int c) throws IOException {
        write(String.valueOf((char) c), 0, 1);
    }

    @Override
    public void write(char[] chars, int from, int count) throws IOException {
        write(new String(chars, from, count), 0, count);
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        waiting.append(text, from, from + count);
        pass(false);
    }

    @Override
    public void flush() throws IOException {
        pass(true);
        super.flush();
    }

    @Override
    public void close() throws IOException {
        pass(true);
        super.close();
    }

    /** Lets through what waits; what may be the start of a longer sequence only at the end. */
    private void pass(boolean end) throws IOException {
        String text = waiting.toString();
        StringBuilder clean = new StringBuilder(text.length());
        Matcher ours = OURS.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (!end && CUT.matcher(text).region(at, text.length()).matches()) {
                break;
            }
            int c = text.codePointAt(at);
            boolean lineEnd = c == '\n' || c == '\t' || (c == '\r' && text.startsWith("\n", at + 1));
            if (c == '\u001b' && colour && ours.region(at, text.length()).lookingAt()) {
                clean.append(text, at, ours.end());
                at = ours.end();
                continue;
            }
            clean.append(lineEnd ? Character.toString(c) : Prose.visible(Character.toString(c)));
            at += Character.charCount(c);
        }
        waiting.delete(0, at);
        out.write(clean.toString());
    }
}
