// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import tipwright.quantity.Text;

/** Names of parts in the titles of checks. */
public final class Titles {
    private Titles() {}

    /** As one speaks of a place: 'the frame pin', 'bearing 1'. */
    public static String the(String part) {
        String words = part.replace('-', ' ');
        return words.startsWith("bearing ") ? words : "the " + words;
    }

    /** A link by its name: 'Link', 'Link crank'. */
    public static String link(String name) {
        String words = name.replace('-', ' ');
        return words.equals("link") ? "Link" : Text.capital(words);
    }
}
