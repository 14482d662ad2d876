// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

/** How a finding's demand stands to its capacity when it passes. */
public enum Sense {
    /** The demand is what the job asks for, the capacity what is there: it may be at most that over the factor. */
    AT_MOST("at most"),
    /** The demand is what is there, the capacity what the job asks for: it must be at least that times the factor. */
    AT_LEAST("at least");

    private final String word;

    Sense(String word) {
        this.word = word;
    }

    /** As in the JSON. */
    public String word() {
        return word;
    }
}
