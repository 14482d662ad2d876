// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds what a mistyped word was most likely meant to be. */
public final class Spelling {
    private static final int LONGEST = 60;
    private static final double OTHER_START = 0.25;

    private Spelling() {}

    /** The candidate that takes the fewest slips to reach, or null when none is near; the first of equals. */
    public static @Nullable String nearest(String word, Collection<String> candidates) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return null;
        }
        String low = word.toLowerCase(Locale.ROOT);
        String best = null;
        double fewest = Double.POSITIVE_INFINITY;
        for (String candidate : candidates) {
            double slips = distance(low, candidate.toLowerCase(Locale.ROOT));
            if (slips == 0 && !candidate.equals(word)) {
                slips = 0.5;
            }
            if (!candidate.isEmpty() && low.charAt(0) != Character.toLowerCase(candidate.charAt(0))) {
                slips += OTHER_START;
            }
            if (slips < fewest) {
                fewest = slips;
                best = candidate;
            }
        }
        if (best == null) {
            return null;
        }
        double allowed = Math.max(1, Math.max(word.length(), best.length()) * 0.4);
        return fewest <= allowed + OTHER_START && fewest < best.length() ? best : null;
    }

    /** Letters inserted, left out, changed or swapped with their neighbour. Source: Damerau 1964, optimal string alignment. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
