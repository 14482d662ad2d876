// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Collection;
import java.util.List;
import tipwright.quantity.Spelling;

/** Shared wording of error messages. */
final class ErrorText {
    private static final int LONGEST = 40;
    private static final int MOST = 12;

    private ErrorText() {}

    /** The text in quotes, shortened, on one line. */
    static String quoted(String text) {
        return "'" + shortened(text) + "'";
    }

    private static String shortened(String text) {
        String head = text.length() <= LONGEST ? text : text.substring(0, LONGEST - 3) + "...";
        return head.replaceAll("\\p{Cntrl}", " ");
    }

    /** 'a, b or c', at most a dozen. */
    static String oneOf(Collection<String> words) {
        return joined(words, " or ");
    }

    private static String joined(Collection<String> words, String last) {
        List<String> all = words.stream().map(ErrorText::shortened).toList();
        if (all.size() > MOST) {
            return String.join(", ", all.subList(0, MOST)) + ", ...";
        }
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + last + all.get(all.size() - 1);
    }

    /** 'a, b and c', at most a dozen. */
    static String and(Collection<String> words) {
        return joined(words, " and ");
    }

    /** 'did you mean 'x'?' when one is near, else what is allowed. */
    static String meant(String word, Collection<String> allowed) {
        String near = Spelling.nearest(word, allowed);
        if (allowed.isEmpty()) {
            return "there are none";
        }
        return near == null ? "allowed: " + oneOf(allowed) : "did you mean '" + near + "'?";
    }
}
