// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/**
 * Where something stands in a file.
 *
 * @param line from 1; 0: the file as a whole
 * @param column from 1
 * @param start offset of the first character in the text
 * @param end offset after the last character
 */
public record Place(String file, int line, int column, int start, int end) {
    /** The file as a whole. */
    public static Place whole(String file) {
        return new Place(file, 0, 0, 0, 0);
    }

    /** The character at an offset of a text. */
    static Place of(String file, String text, int offset) {
        int end = Math.min(offset, text.length());
        int start = text.lastIndexOf('\n', end - 1) + 1;
        int line =
                1 + (int) text.substring(0, end).chars().filter(c -> c == '\n').count();
        return new Place(file, line, 1 + text.codePointCount(start, end), offset, offset);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
