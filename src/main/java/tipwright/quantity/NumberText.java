// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A number without sign at a place in a text: '12', '0.5', '.5', '1e3', '3/8', '12 3/8', '12-3/8'.
 *
 * @param value not finite for a fraction over 0
 * @param end offset after it
 */
record NumberText(double value, int end) {
    private static final int LONGEST = 40;

    /** The number that starts there; null when none does, or when its digits, points and slashes make no sense. */
    static @Nullable NumberText at(String text, int start) {
        int whole = digits(text, start);
        NumberText number = whole > start ? fraction(text, start, whole) : null;
        if (number == null) {
            number = decimal(text, start, whole);
        }
        boolean sound = number != null && number.end - start <= LONGEST && !isOneOf(text, number.end, "0123456789.,/");
        return sound ? number : null;
    }

    /** '3/8' or '12 3/8'; null when it is neither. */
    private static @Nullable NumberText fraction(String text, int start, int whole) {
        if (isOneOf(text, whole, "/")) {
            return over(text, start, whole, 0);
        }
        if (!isOneOf(text, whole, " -")) {
            return null;
        }
        int top = digits(text, whole + 1);
        return top > whole + 1 && isOneOf(text, top, "/")
                ? over(text, whole + 1, top, Double.parseDouble(text.substring(start, whole)))
                : null;
    }

    private static @Nullable NumberText over(String text, int top, int slash, double whole) {
        int end = digits(text, slash + 1);
        if (end == slash + 1) {
            return null;
        }
        double under = Double.parseDouble(text.substring(slash + 1, end));
        return new NumberText(whole + Double.parseDouble(text.substring(top, slash)) / under, end);
    }

    private static @Nullable NumberText decimal(String text, int start, int whole) {
        int end = whole;
        if (isOneOf(text, whole, ".")) {
            end = digits(text, whole + 1);
        }
        if (end == start || (whole == start && end == start + 1)) {
            return null;
        }
        if (isOneOf(text, end, "eE")) {
            int sign = isOneOf(text, end + 1, "+-") ? end + 2 : end + 1;
            int power = digits(text, sign);
            end = power > sign ? power : end;
        }
        return new NumberText(Double.parseDouble(text.substring(start, end)), end);
    }

    private static int digits(String text, int start) {
        int end = start;
        while (isOneOf(text, end, "0123456789")) {
            end++;
        }
        return end;
    }

    private static boolean isOneOf(String text, int at, String some) {
        return at < text.length() && some.indexOf(text.charAt(at)) >= 0;
    }
}
