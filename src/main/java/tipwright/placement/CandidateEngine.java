// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.function.Function;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.design.Design;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.load.LoadTable;

/** How motion and forces of a candidate are worked out. Both ways give the same analysis; what it is judged by are the checks. */
enum CandidateEngine {
    /** Any mechanism. */
    GENERAL {
        @Override
        double[] lengths(Design candidate, double[] tilts) {
            try {
                return Linkage.of(candidate.drive().skeleton(candidate.pivot().at()))
                        .sweep(tilts)
                        .configurations()
                        .stream()
                        .mapToDouble(Configuration::length)
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

    /**
     * What the checks say of a candidate, at the tilts of the loads and, where something about the mechanism changes at once between
     * them, on both sides of that too, as the check does. Where it does not get to the last tilt, what is left in the tank on the way
     * back is what is left where it stops.
     */
    Judgement judged(Design candidate, LoadTable loads) {
        return judged(candidate, loads, true, tilts -> LoadTable.of(candidate, tilts));
    }

    /**
     * The same with loads that are not the design's own.
     *
     * @param loads at the design's tilts
     * @param anew the same at other tilts
     */
    Judgement judged(Design candidate, LoadTable loads, Function<double[], LoadTable> anew) {
        return judged(candidate, loads, true, anew);
    }

    /**
     * The same, but with the loads as they are where the stroke or the tilt is not kept: that fails anyhow, and other tilts cost the
     * loads anew.
     */
    Judgement judgedWithinStroke(Design candidate, LoadTable loads) {
        return judged(candidate, loads, false, tilts -> LoadTable.of(candidate, tilts));
    }

    private Judgement judged(
            Design candidate, LoadTable loads, boolean beyondStroke, Function<double[], LoadTable> anew) {
        try {
            Analysis analysis = analyse(candidate, loads);
            Judgement judged = Judgement.of(analysis);
            boolean wanted = beyondStroke
                    || (judged.of(Limit.REACH) <= 1
                            && judged.of(Limit.STROKE_IN) <= 1
                            && judged.of(Limit.STROKE_OUT) <= 1);
            boolean otherwise = Analyser.changes(analysis) || analysis.stop() != null;
            return wanted && otherwise ? Judgement.of(Analyser.analyse(candidate, anew)) : judged;
        } catch (CannotComputeException impossible) {
            return Judgement.impossible();
        }
    }

    /** The quickest that suits a design. */
    static CandidateEngine of(Design design) {
        return ClosedFormAnalyser.suits(design) ? CLOSED_FORM : GENERAL;
    }
}
