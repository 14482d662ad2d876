// SPDX-License-Identifier: Apache-2.0
package tipwright;

/** Changes the text of a design for a test, and fails when there is nothing to change: the test would then try something else. */
public final class Swap {
    private Swap() {}

    /**
     * The text with each piece in place of the one before it, in order; every place where a piece stands is changed.
     *
     * @param pairs what stands there, and what comes in its place, by turns
     * @throws AssertionError when a piece does not stand there
     */
    public static String swap(String text, String... pairs) {
        if (pairs.length % 2 != 0) {
            throw new IllegalArgumentException("pieces come in pairs");
        }
        String changed = text;
        for (int i = 0; i < pairs.length; i += 2) {
            if (!changed.contains(pairs[i])) {
                throw new AssertionError("nothing to swap: '" + pairs[i] + "' does not stand in\n" + changed);
            }
            changed = changed.replace(pairs[i], pairs[i + 1]);
        }
        return changed;
    }
}
