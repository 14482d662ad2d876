// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

/** Which way the tank moves. */
public enum MotionDirection {
    RESTING("at rest"),
    RAISING("raising"),
    LOWERING("lowering");

    private final String word;

    MotionDirection(String word) {
        this.word = word;
    }

    /** As shown and as in the JSON. */
    public String word() {
        return word;
    }
}
