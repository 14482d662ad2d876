// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import tipwright.design.key.NameId;
import tipwright.quantity.Text;

/** Names of parts in the titles of checks. */
public final class Titles {
    private Titles() {}

    /** As one speaks of a place: 'the frame pin', 'bearing 1'. */
    public static String the(String part) {
        String words = NameId.words(part);
        return words.startsWith("bearing ") ? words : "the " + words;
    }

    /** The part that a title 'part: what can go wrong' is about, or what has gone wrong. */
    public static String part(String title) {
        int end = title.indexOf(':');
        return end < 0 ? title : title.substring(0, end);
    }

    /** What can go wrong with it; empty where the title does not tell. */
    public static String what(String title) {
        int end = title.indexOf(": ");
        return end < 0 ? "" : title.substring(end + 2);
    }

    /** A link by its name: 'Link', 'Link crank'. */
    public static String link(String name) {
        String words = NameId.words(name);
        return words.equals("link") ? "Link" : Text.capital(words);
    }
}
