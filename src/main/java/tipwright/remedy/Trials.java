// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.Result;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.geometry.NotConvergedException;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** Tries changed designs: first only what failed, at coarse tilts, then everything. Mutable: it counts what that costs. */
final class Trials {
    private static final double COARSEST = Math.toRadians(2);
    private static final int TIMED = 4;
    private static final int FULL = 12;
    private static final String WHEEL = "what-if/wheel-sinks";
    private final Result before;
    private final FixRule rule;
    private final Analysis coarse;
    private int left;

    /**
     * Tries changes of one design.
     *
     * @param bad findings that are to be fixed
     * @param budget in analyses without time
     * @throws CannotComputeException when the design itself cannot be computed
     */
    Trials(Result before, List<Finding> bad, int budget) throws CannotComputeException {
        this.before = before;
        left = budget;
        rule = FixRule.of(before, bad.stream().map(Finding::id).collect(Collectors.toSet()));
        coarse = Analyser.analyse(coarse(before.analysis().design()));
    }

    /**
     * What a change looks like.
     *
     * @param fixes ids of what failed and passes
     * @param worst the largest utilisation of what was looked at
     */
    record Look(Set<String> fixes, double worst) {}

    /** What may still be tried, in analyses without time. */
    int left() {
        return left;
    }

    /** Of the design as it is. */
    Analysis analysis() {
        return before.analysis();
    }

    /**
     * Looks only at some of what failed: first at what needs no time, and at the rest only when that is better.
     *
     * @param wanted ids of findings
     */
    Look look(Design design, Set<String> wanted) {
        List<Check> atRest = checks(wanted, false);
        List<Check> inTime = checks(wanted, true);
        left -= 1;
        try {
            Analysis analysis = Analyser.again(coarse(design), coarse);
            List<Finding> findings = new ArrayList<>(Checks.run(atRest, analysis));
            boolean promising =
                    atRest.isEmpty() || findings.stream().anyMatch(f -> wanted.contains(f.id()) && FixRule.passes(f));
            if (!inTime.isEmpty() && promising) {
                left -= TIMED;
                Timing timing = CycleTimer.time(analysis);
                findings.addAll(Checks.run(inTime, analysis, timing));
            }
            Set<String> fixes = new HashSet<>();
            double worst = 0;
            for (Finding f : FixRule.worst(findings).values()) {
                if (FixRule.passes(f) && wanted.contains(f.id()) && rule.better(f)) {
                    fixes.add(f.id());
                }
                worst = Double.isNaN(f.utilisation()) ? worst : Math.max(worst, f.utilisation());
            }
            return new Look(fixes, worst);
        } catch (CannotComputeException | NotConvergedException e) {
            return new Look(Set.of(), Double.POSITIVE_INFINITY);
        }
    }

    /** The checks of findings, in time or not; those that are slow, and the wheel that sinks with all that follows, are seen to in full. */
    private List<Check> checks(Set<String> wanted, boolean timed) {
        Map<String, Check> checks = new LinkedHashMap<>();
        for (String id : wanted) {
            Finding f = rule.was().get(id);
            if (f != null && !id.equals(WHEEL)) {
                Checks.of(f)
                        .filter(c -> c.traits().contains(Trait.NEEDS_TIME) == timed)
                        .filter(c -> !c.traits().contains(Trait.SLOW))
                        .ifPresent(c -> checks.putIfAbsent(c.id(), c));
            }
        }
        return List.copyOf(checks.values());
    }

    /** The change as a fix when it stands up to every check, in time too; null when it does not; its kind goes with it. */
    @Nullable
    TriedFix full(String kind, Proposal proposal) {
        left -= FULL;
        Result after;
        try {
            after = Checker.asFilled(proposal.design());
        } catch (CannotComputeException e) {
            return null;
        }
        FixRule.Outcome outcome = rule.outcome(after.findings());
        if (outcome == null || outcome.fixes().isEmpty()) {
            return null;
        }
        return new TriedFix(
                kind,
                proposal.words(),
                proposal.detail(),
                proposal.change(),
                proposal.design(),
                outcome.fixes(),
                outcome.close(),
                after.verdict() != Verdict.FAIL);
    }

    /** The same at tilts that are further apart. */
    static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(
                new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()))));
    }
}
