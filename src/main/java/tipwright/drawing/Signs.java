// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.function.IntPredicate;

/** What becomes of signs that cannot be shown as they are. */
public final class Signs {
    /** Stands for a sign that the typeface lacks. */
    private static final int LACKING = '#';

    /** The last two places of each plane are no characters. Source: Unicode Standard, 23.7 Noncharacters (from memory). */
    private static final int NONE = 0xfffe;

    private Signs() {}

    /** Whether a terminal, a viewer or a printer might obey a character or choke on it; line breaks too. */
    public static boolean isObeyed(int character) {
        boolean none = (character & NONE) == NONE;
        return none
                || switch (Character.getType(character)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.SURROGATE,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR -> true;
                    default -> false;
                };
    }

    /** A text with a blank for everything that might be obeyed. */
    public static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.appendCodePoint(isObeyed(c) ? ' ' : c));
        return out.toString();
    }

    /**
     * A text as a typeface can show it: '#' for each sign that it lacks. Line breaks and the like stay.
     *
     * @param has whether the typeface has the sign
     */
    public static String shown(String text, IntPredicate has) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.appendCodePoint(c < ' ' || has.test(c) ? c : LACKING));
        return out.toString();
    }
}
