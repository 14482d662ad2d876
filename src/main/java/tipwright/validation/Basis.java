// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

/** What a reference rests on. */
public enum Basis {
    /** The source was seen. */
    READ("read"),
    /** Quoted from memory, recomputed. */
    MEMORY("memory"),
    /** An input set of our own, computed in two ways. */
    TWO_WAYS("two ways");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    static Basis of(String word) {
        for (Basis mark : values()) {
            if (mark.word.equals(word)) {
                return mark;
            }
        }
        throw new IllegalArgumentException("no mark '" + word + "'");
    }
}
