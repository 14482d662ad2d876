// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;

/** Analyses a design and runs every check on it. */
public final class Checker {
    private Checker() {}

    /**
     * Checks a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static Result check(Design design) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(design);
        List<Finding> findings = new ArrayList<>();
        for (Check check : Checks.all()) {
            findings.addAll(check.run(analysis));
        }
        return new Result(analysis, findings, null);
    }
}
