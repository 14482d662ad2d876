// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.design.Design;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Posture;
import tipwright.load.LoadTable;

/** How motion and forces of a candidate are worked out. Both ways give the same analysis; what it is judged by are the checks. */
enum CandidateEngine {
    /** Any mechanism. */
    GENERAL {
        @Override
        double[] lengths(Design candidate, double[] tilts) {
            try {
                return Linkage.of(candidate.drive().skeleton(candidate.pivot().at())).sweep(tilts).postures().stream()
                        .mapToDouble(Posture::length)
                        .toArray();
            } catch (LinkageException none) {
                return new double[0];
            }
        }

        @Override
        Analysis analyse(Design candidate, LoadTable loads) throws CannotComputeException {
            return Analyser.analyse(candidate, loads);
        }
    },
    /** The actuator straight between frame and tank. */
    CLOSED_FORM {
        @Override
        double[] lengths(Design candidate, double[] tilts) {
            return ClosedFormAnalyser.lengths(candidate, tilts);
        }

        @Override
        Analysis analyse(Design candidate, LoadTable loads) throws CannotComputeException {
            return ClosedFormAnalyser.analyse(candidate, loads);
        }
    };

    /** Lengths of the actuator at the tilts that it gets to, m; fewer than the tilts where it does not get to the last. */
    abstract double[] lengths(Design candidate, double[] tilts);

    /**
     * The analysis.
     *
     * @param loads at the candidate's tilts
     * @throws CannotComputeException when it cannot be assembled, or has no arm at the first tilt
     */
    abstract Analysis analyse(Design candidate, LoadTable loads) throws CannotComputeException;

    /** The quickest that suits a design. */
    static CandidateEngine of(Design design) {
        return ClosedFormAnalyser.suits(design) ? CLOSED_FORM : GENERAL;
    }
}
