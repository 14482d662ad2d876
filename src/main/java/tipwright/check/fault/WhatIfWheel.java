// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.around.Site;
import tipwright.design.around.WhatIf;
import tipwright.design.drive.TiltRange;
import tipwright.quantity.Kind;

/**
 * A wheel sinks: every check is made again on the slope that follows, to each side and to each end. What fails there as it fails
 * before is not for the wheel to answer for.
 */
final class WhatIfWheel {
    private static final String PART = "wheel sinks";
    private static final double COARSEST = Math.toRadians(5);
    private static final double STEEPEST = Math.toRadians(45);

    private WhatIfWheel() {}

    static Finding find(Findings make, Analysis analysis, List<Check> rules) {
        Design design = analysis.design();
        WhatIf whatIf = design.whatIf();
        double[] across = slopes(whatIf.wheelDrop(), whatIf.track());
        double[] along = slopes(whatIf.wheelDrop(), whatIf.wheelbase());
        if (across.length + along.length == 2) {
            return make.missing(PART, "what-if.track missing");
        }
        List<Finding> all = new ArrayList<>();
        for (double cross : across) {
            for (double grade : along) {
                Site site = design.site();
                Site sunk = site.leaning(bounded(site.grade() + grade), bounded(site.crossSlope() + cross));
                try {
                    Analysis leaning = leaning(design.withSite(sunk), analysis);
                    rules.stream()
                            .filter(c -> !c.traits().contains(Trait.SLOW))
                            .forEach(c -> all.addAll(c.run(leaning)));
                } catch (CannotComputeException stuck) {
                    String why = String.valueOf(stuck.getMessage());
                    return make.given(PART, 1, 0, 1, Kind.RATIO, 2, Extreme.NOWHERE, Verdict.FAIL, why);
                }
            }
        }
        List<Finding> worse = fromSinking(all, analysis, rules);
        return worse.isEmpty()
                ? make.given(PART, 0, 1, 1, Kind.RATIO, 0, Extreme.NOWHERE, Verdict.PASS, "nothing gets worse by it")
                : WorstOfAll.of(make, PART, worse);
    }

    /** Without what is no worse than on the ground as it was: it is told of the check itself. All, where nothing is left. */
    private static List<Finding> fromSinking(List<Finding> all, Analysis analysis, List<Check> rules) {
        List<Check> asked = rules.stream()
                .filter(c -> all.stream().anyMatch(f -> wrong(f) && c.owns(f)))
                .toList();
        if (asked.isEmpty()) {
            return all;
        }
        Analysis before;
        try {
            before = leaning(analysis.design(), analysis);
        } catch (CannotComputeException stuck) {
            return all;
        }
        List<Finding> known =
                asked.stream().flatMap(c -> c.run(before).stream()).toList();
        List<Finding> left = all.stream()
                .filter(f ->
                        !wrong(f) || known.stream().noneMatch(k -> k.id().equals(f.id()) && !f.clearlyWorseThan(k)))
                .toList();
        return left.isEmpty() ? all : left;
    }

    /** A design at some of its tilts, in the wind of an analysis. */
    static Analysis leaning(Design design, Analysis analysis) throws CannotComputeException {
        return Analyser.blownAs(Analyser.analyse(coarse(design), analysis.vessel()), analysis);
    }

    private static boolean wrong(Finding finding) {
        return finding.verdict() == Verdict.FAIL || finding.verdict() == Verdict.CLOSE;
    }

    /** The slope either way, rad; level where the distance is not known. */
    private static double[] slopes(double drop, @Nullable Double distance) {
        if (distance == null) {
            return new double[] {0};
        }
        double slope = Math.atan(drop / distance);
        return new double[] {slope, -slope};
    }

    private static double bounded(double slope) {
        return Math.max(-STEEPEST, Math.min(STEEPEST, slope));
    }

    static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(
                new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()))));
    }
}
