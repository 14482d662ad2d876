// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.check.rule.Finding;

/** What bounds where the mounts can go; each is a check, found by its id. */
public enum Limit {
    REACH("reach", "dead centre or locked"),
    STROKE_IN("stroke/drawn-in", "too long drawn in"),
    STROKE_OUT("stroke/drawn-out", "stroke too short"),
    PUSH("push", "push"),
    PULL("pull", "pull"),
    HOLD("hold", "holding force"),
    BUCKLING("buckling", "rod buckling"),
    TRANSMISSION("transmission", "angle to the arm"),
    OVER_CENTRE("over-centre", "over centre"),
    BEARING("bearing-static", "bearing"),
    HOUSING("bearing-housing", "bearing housing"),
    BUSH("bush", "plain bush"),
    SHAFT("shaft", "pivot shaft"),
    PIN("pin", "actuator pin"),
    TIME("time", "time wanted");

    /** How many there are. */
    static final int COUNT = values().length;

    private final String check;
    private final String words;

    Limit(String check, String words) {
        this.check = check;
        this.words = words;
    }

    /** Id of the check, as in the findings. */
    public String check() {
        return check;
    }

    /** Whether a finding is one of that check. */
    boolean tells(Finding finding) {
        return finding.id().equals(check)
                || (finding.id().length() > check.length()
                        && finding.id().charAt(check.length()) == '/'
                        && finding.id().startsWith(check));
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
