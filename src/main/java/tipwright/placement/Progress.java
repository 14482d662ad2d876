// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import org.jspecify.annotations.Nullable;

/**
 * How far a search is.
 *
 * @param share done, 0 to 1
 * @param best lowest utilisation so far; null: nothing fits yet
 * @param again whether it is a second look, since all of the best of the first fail a check
 */
public record Progress(double share, @Nullable Candidate best, boolean again) {
    /** In the first look. */
    Progress(double share, @Nullable Candidate best) {
        this(share, best, false);
    }

    /** How far it is, in words: '40 % searched'. */
    public String words() {
        return (again ? "the best fail another check; a second look: " : "") + Math.round(100 * share) + " % searched";
    }
}
