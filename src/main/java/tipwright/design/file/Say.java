// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Collection;
import java.util.List;
import tipwright.quantity.Spelling;

/** Small turns of phrase that the messages share. */
final class Say {
    private static final int LONGEST = 40;
    private static final int MOST = 12;

    private Say() {}

    /** The text in quotes, shortened, on one line. */
    static String quoted(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", " ");
        return "'" + (clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST - 3) + "...") + "'";
    }

    /** 'a, b or c', at most a dozen. */
    static String oneOf(Collection<String> words) {
        List<String> all = List.copyOf(words);
        if (all.size() > MOST) {
            return String.join(", ", all.subList(0, MOST)) + ", ...";
        }
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.get(all.size() - 1);
    }

    /** 'did you mean 'x'?' when one is near, else what is allowed. */
    static String meant(String word, Collection<String> allowed) {
        String near = Spelling.nearest(word, allowed);
        return near == null ? "allowed: " + oneOf(allowed) : "did you mean '" + near + "'?";
    }
}
