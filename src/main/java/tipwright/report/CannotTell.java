// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.List;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Why a check cannot tell: what stands over those of one kind, and which they are. */
public enum CannotTell {
    /** The design does not give a value. */
    MISSING("Cannot tell yet: give the sizes that are missing.", "what is missing"),
    /** All is given, but the rule does not reach so far, a load case is skipped, or there is nothing to look at. */
    OTHERWISE("Cannot tell, for another reason than a missing size.", "why");

    private final String heading;
    private final String column;

    CannotTell(String heading, String column) {
        this.heading = heading;
        this.column = column;
    }

    /** What stands over them. */
    public String heading() {
        return heading + " These checks do not count as passed.";
    }

    /** What their notes tell, as the head of a column. */
    public String column() {
        return column;
    }

    /** Those of this kind. */
    public List<Finding> of(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED && f.missing() == (this == MISSING))
                .toList();
    }

    /** What the whole report tells of them beyond the short answer. */
    static String toldInFull(List<Finding> findings) {
        return OTHERWISE.of(findings).isEmpty()
                ? "which sizes are missing"
                : MISSING.of(findings).isEmpty() ? "why" : "which sizes are missing, and why else";
    }
}
