// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.analysis.StrokeTime;
import tipwright.check.rule.Verdict;

/**
 * What the checks that bound the mounts say of one analysis, as one figure for each limit.
 *
 * @param utilisations [limit]; not to be changed
 * @param force largest of one actuator, N
 * @param time to raise against the worst load at each tilt, s; infinite when not known or when it stalls
 */
@SuppressWarnings("ArrayRecordComponent")
record Judgement(double[] utilisations, double force, double time) {

    /** The judgement of an analysis. */
    static Judgement of(Analysis analysis) {
        double time = raising(analysis);
        double[] all = BoundingChecks.utilisations(analysis);
        all[Limit.TIME.index()] = timeWanted(analysis, time);
        return new Judgement(all, force(analysis), time);
    }

    /** Of what cannot be analysed at all. */
    static Judgement impossible() {
        double[] all = new double[Limit.COUNT];
        all[Limit.REACH.index()] = BoundingChecks.PASSED;
        return new Judgement(all, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The same, but a limit is passed. */
    Judgement passing(Limit limit) {
        double[] all = utilisations.clone();
        all[limit.index()] = Math.max(all[limit.index()], BoundingChecks.PASSED);
        return new Judgement(all, force, time);
    }

    private static double raising(Analysis analysis) {
        StrokeTime stroke = StrokeTime.of(analysis);
        return stroke == null || analysis.stop() != null ? Double.POSITIVE_INFINITY : stroke.raise();
    }

    /** Time to raise over the longest that is wanted; 0: kept, or any will do. It counts only where it is passed. */
    private static double timeWanted(Analysis analysis, double time) {
        Double wanted = analysis.design().mounts() == null
                ? null
                : analysis.design().mounts().wants().time();
        return wanted == null || time <= wanted ? 0 : time / wanted;
    }

    private static double force(Analysis analysis) {
        double most = 0;
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                    most = Math.max(most, Math.abs(b.force()));
                }
            }
        }
        return most / analysis.design().drive().actuators().size();
    }

    /** Largest utilisation. */
    double utilisation() {
        return utilisations[governingIndex()];
    }

    /** Which limit that is; the first of equals. */
    Limit governing() {
        return Limit.at(governingIndex());
    }

    private int governingIndex() {
        int most = 0;
        for (int i = 1; i < utilisations.length; i++) {
            if (utilisations[i] > utilisations[most]) {
                most = i;
            }
        }
        return most;
    }

    /** Utilisation of a limit. */
    double of(Limit limit) {
        return utilisations[limit.index()];
    }

    /** What follows for the mounts: passes or fails. */
    Verdict verdict() {
        return utilisation() > 1 ? Verdict.FAIL : Verdict.PASS;
    }
}
