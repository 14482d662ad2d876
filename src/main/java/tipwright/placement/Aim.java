// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/** What makes an answer the best. */
public enum Aim {
    UTILISATION("most in reserve"),
    FORCE("smallest actuator force"),
    TIME("fastest up"),
    PRICE("cheapest");

    private final String words;

    Aim(String words) {
        this.words = words;
    }

    /** In plain words. */
    public String words() {
        return words;
    }

    /** Place in arrays that hold one number for each. */
    @SuppressWarnings("EnumOrdinal") // such arrays live as long as one search; nothing is stored by it
    int index() {
        return ordinal();
    }
}
