// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.design.Design;

/**
 * An analysed design with what can be told of it at once: the slow checks, part fills and the dump in time are worked out beside the
 * window.
 *
 * @param analysis forces over the tilts
 * @param findings of the quick checks, after an edit only of those that the numbers are held against
 */
public record Solved(Analysis analysis, List<Finding> findings) {
    /** Copies the list. */
    public Solved {
        findings = List.copyOf(findings);
    }

    /**
     * Solves a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static Solved of(Design design) throws CannotComputeException {
        return of(Analyser.analyse(design));
    }

    /**
     * Solves a changed design; what the change leaves alone is taken over. All checks are made beside the window at once, so that here
     * only those are made that the numbers are held against.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    Solved edited(Design design) throws CannotComputeException {
        Analysis changed = Analyser.again(design, analysis);
        return new Solved(changed, Checks.ratings(changed));
    }

    /**
     * The same while something is being moved, so that the other checks wait.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    Solved moved(Design design) throws CannotComputeException {
        return of(Analyser.again(design, analysis));
    }

    private static Solved of(Analysis analysis) {
        return new Solved(analysis, Checks.quick(analysis));
    }

    /** The design. */
    public Design design() {
        return analysis.design();
    }
}
