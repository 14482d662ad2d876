// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Set;
import tipwright.quantity.UnitSystem;

/** Which tape a design was measured with. Read letter by letter: a pattern took longer to set up than the whole text to look through. */
final class TapeUnit {
    private static final Set<String> METRIC = Set.of("mm", "cm", "m");
    private static final Set<String> US =
            Set.of("in", "inch", "inches", "\"", "ft", "foot", "feet", "'", "yd", "yard", "yards");

    /** What is as long as this is no length. */
    private static final int LONG = 40;

    private TapeUnit() {}

    /** The system in which more of the lengths in this text are written; metric when there are as many of both. */
    static UnitSystem system(String text, SourceMap places) {
        int us = 0;
        int metric = 0;
        for (Place place : places.all().values()) {
            String unit = unit(text, place.start(), place.end());
            us += US.contains(unit) ? 1 : 0;
            metric += METRIC.contains(unit) ? 1 : 0;
        }
        return us > metric ? UnitSystem.US : UnitSystem.METRIC;
    }

    /** The last word of a value that begins as a number, or the mark of feet or inches at its end; empty where there is none. */
    private static String unit(String text, int start, int end) {
        int from = start;
        int to = end;
        while (from < to && Character.isWhitespace(text.charAt(from))) {
            from++;
        }
        while (from < to && Character.isWhitespace(text.charAt(to - 1))) {
            to--;
        }
        if (to - from < 2 || to - from >= LONG) {
            return "";
        }
        char first = text.charAt(from);
        if (first == '\'' || first == '"') {
            from++;
            to -= text.charAt(to - 1) == first ? 1 : 0;
        }
        int number = from + (from < to && "+-".indexOf(text.charAt(from)) >= 0 ? 1 : 0);
        if (number >= to - 1 || "0123456789.".indexOf(text.charAt(number)) < 0) {
            return "";
        }
        for (int i = number; i < to; i++) {
            if (text.charAt(i) == ':') {
                return "";
            }
        }
        char last = text.charAt(to - 1);
        if (last == '\'' || last == '"') {
            return String.valueOf(last);
        }
        int word = to;
        while (word > number && isLetter(text.charAt(word - 1))) {
            word--;
        }
        return text.substring(word, to);
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }
}
