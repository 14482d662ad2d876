// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;

/** Which way the tank moves. */
public enum MotionDirection {
    RESTING("at rest"),
    RAISING("raising"),
    LOWERING("lowering");

    /** All of them; asked for so often that a copy each time is too many. */
    public static final List<MotionDirection> ALL = List.of(values());

    private final String word;

    MotionDirection(String word) {
        this.word = word;
    }

    /** As shown and as in the JSON. */
    public String word() {
        return word;
    }
}
