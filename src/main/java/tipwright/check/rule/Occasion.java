// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;

/** When what a finding tells of comes about: the two halves of every verdict. */
public enum Occasion {
    /** All goes as meant: the outlet opens when the file says, the load leaves as it can. */
    NORMAL("normal dump"),
    /** The outlet stays shut, one actuator carries all, a hose bursts, a wheel sinks. */
    FAULT("if something goes wrong");

    private final String word;

    Occasion(String word) {
        this.word = word;
    }

    /** As shown and as in the JSON. */
    public String word() {
        return word;
    }

    /** When a finding comes about, by the check that made it and by where it is worst. */
    public static Occasion of(Finding finding, Check check, Analysis analysis) {
        if (check.traits().contains(Trait.ABOUT_FAULT)) {
            return FAULT;
        }
        String load = finding.loadCase();
        for (CaseResult result : analysis.cases()) {
            boolean its = load != null && (load.equals(result.name()) || load.startsWith(result.name() + ", "));
            if (its && !result.load().normalAt(finding.tilt())) {
                return FAULT;
            }
        }
        return NORMAL;
    }

    /** An analysis with those loads and tilts alone that come about then. */
    public Analysis of(Analysis a) {
        return a.with(a.cases().stream()
                .map(c -> new CaseResult(
                        c.load(),
                        c.rows().stream()
                                .filter(r -> c.load().normalAt(r.tilt()) == (this == NORMAL))
                                .toList()))
                .filter(c -> !c.rows().isEmpty())
                .toList());
    }
}
