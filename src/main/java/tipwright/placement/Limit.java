// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import org.jspecify.annotations.Nullable;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;

/** What bounds where the mounts can go; each is told by a check, but for the time that is wanted. */
public enum Limit {
    REACH("dead centre or locked"),
    STROKE_IN("actuator too long when closed"),
    STROKE_OUT("stroke too short"),
    PUSH("push"),
    PULL("pull"),
    HOLD("holding force"),
    BUCKLING("rod buckling"),
    TRANSMISSION("angle to the arm"),
    OVER_CENTRE("over centre"),
    BEARING("bearing"),
    HOUSING("bearing housing"),
    BUSH("plain bush"),
    SHAFT("pivot shaft"),
    PIN("actuator pin"),
    TIME("time wanted");

    /** How many there are. */
    static final int COUNT = values().length;

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /** The limit that a check tells of; null when it is none that the search works out. */
    static @Nullable Limit of(Check check, String id) {
        String words = check.bound(id);
        for (Limit limit : values()) {
            if (limit.words.equals(words)) {
                return limit;
            }
        }
        return null;
    }

    /** The limit that a finding is about; null when it is none that the search works out. */
    static @Nullable Limit of(Finding finding) {
        return Checks.of(finding).map(c -> of(c, finding.id())).orElse(null);
    }

    /** Short, for a map. */
    public String words() {
        return words;
    }

    /** Place in arrays that hold one number for each. */
    @SuppressWarnings("EnumOrdinal") // such arrays live as long as one search; nothing is stored by it
    int index() {
        return ordinal();
    }

    /** The limit at a place of such an array. */
    static Limit at(int index) {
        return values()[index];
    }
}
