// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts what 'place' says to put into a file into it, as a person does. */
final class Pasted {
    private static final Pattern FASTENING = Pattern.compile("(?m)^  - \\{joint: ([a-z0-9-]+), (.*)}$");
    private static final Pattern PLACE = Pattern.compile("(weld|bolts|seat): \\{at: (\\[[^]]*])}");

    private Pasted() {}

    /** The file with the places of brackets and of the cross member as told; others stay. */
    static String brackets(String yaml, String told) {
        String pasted = yaml;
        Matcher fastening = FASTENING.matcher(told);
        while (fastening.find()) {
            int from = pasted.indexOf("\n  - joint: " + fastening.group(1) + "\n");
            assertThat(from).as(fastening.group()).isNotNegative();
            int to = pasted.indexOf("\n  - ", from + 1);
            to = to < 0 ? pasted.indexOf("\n\n", from + 1) : to;
            String entry = to < 0 ? pasted.substring(from) : pasted.substring(from, to);
            String changed = entry;
            Matcher place = PLACE.matcher(fastening.group(2));
            while (place.find()) {
                changed = changed.replaceFirst(
                        place.group(1) + ": \\{at: \\[[^]]*]", place.group(1) + ": {at: " + place.group(2));
            }
            Matcher height = Pattern.compile("height: (.*)").matcher(fastening.group(2));
            if (height.find()) {
                changed = changed.replaceFirst("height: .*", "height: " + height.group(1));
            }
            pasted = pasted.substring(0, from) + changed + pasted.substring(from + entry.length());
        }
        Matcher member =
                Pattern.compile("\n  cross-member: \\{at: (\\[[^]]*])}").matcher(told);
        return member.find()
                ? pasted.replaceFirst("cross-member: \\{at: \\[[^]]*]", "cross-member: {at: " + member.group(1))
                : pasted;
    }
}
