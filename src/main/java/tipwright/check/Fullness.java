// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Bisection;
import tipwright.geometry.NotConvergedException;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/**
 * Finds how full the tank may be: the largest fill at which every check that looks at the load passes. It goes down from full in
 * coarse steps to the first fill that passes, then bisects.
 */
final class Fullness {
    private static final double STEP = 0.1;
    private static final double CLOSE = 0.001;
    private static final double DENSITY_CLOSE = 5;
    private static final int TRIES = 8;
    private static final double ALMOST = 0.995;
    private static final double COARSEST = Math.toRadians(2);

    private static final List<Check> RULES = Checks.with(Trait.DEPENDS_ON_FILL);

    private Fullness() {}

    /** Which findings stop a fill. */
    private interface Rules {
        List<Finding> findings(Analysis analysis);

        /** How many times coarser than usual fill and density are looked for. */
        default int coarser() {
            return 1;
        }
    }

    private static final Rules AT_REST =
            analysis -> RULES.stream().flatMap(c -> c.run(analysis).stream()).toList();

    /**
     * With the dump in time, which is ten times as slow.
     *
     * @param leftOut ids of findings that do not count
     */
    private record InTime(Set<String> leftOut) implements Rules {
        @Override
        public List<Finding> findings(Analysis analysis) {
            Timing timing = CycleTimer.time(analysis);
            if (timing.lost()) {
                // what is not known is no pass
                throw new NotConvergedException("how full it may be: " + timing.missing());
            }
            return RULES.stream()
                    .flatMap(c -> c.run(analysis, timing).stream())
                    .filter(f -> !leftOut.contains(f.id()))
                    .toList();
        }

        @Override
        public int coarser() {
            return 5;
        }
    }

    /**
     * The answer for a design; null when not even the empty tank passes. It is looked for without the dump in time; what
     * comes of that is held against the dump in time, and looked for once more with it only when that fails.
     */
    static @Nullable HowFull of(Design design) throws CannotComputeException {
        HowFull quick = of(design, AT_REST);
        if (quick == null) {
            return null;
        }
        Rules inTime = new InTime(Set.of());
        Slurry full = design.slurry().withFill(1);
        double dense = quick.densityWhenFull();
        List<Finding> filled = findings(design, full.withFill(quick.fill()), inTime);
        if (failure(filled) == null) {
            List<Finding> densest = Double.isNaN(dense) ? List.of() : findings(design, full.withDensity(dense), inTime);
            if (failure(densest) == null) {
                return quick;
            }
            if (quick.fill() == 1) {
                double own = full.mixtureDensity();
                return answer(design, 1, denser(design, inTime, filled, own, densest, dense), null);
            }
        }
        // What fails with an empty tank too is not for the fill to mend.
        Set<String> always = findings(design, full.withFill(0), inTime).stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .collect(Collectors.toSet());
        return of(design, new InTime(always));
    }

    private static List<Finding> findings(Design design, Slurry slurry, Rules rules) throws CannotComputeException {
        return rules.findings(Analyser.analyse(design.withSlurry(slurry)));
    }

    /**
     * The densest slurry with which the full tank passes in time too, between one that does and one that does not, kg/m3: by
     * straight lines through the utilisation of the check that fails, which cost few tries.
     */
    private static double denser(
            Design design, Rules inTime, List<Finding> passing, double passes, List<Finding> failing, double fails)
            throws CannotComputeException {
        List<Finding> below = passing;
        List<Finding> above = failing;
        double good = passes;
        double bad = fails;
        Finding stops = failure(above);
        for (int i = 0; i < TRIES && stops != null && bad - good > DENSITY_CLOSE; i++) {
            double low = used(below, stops.id());
            double high = Math.min(used(above, stops.id()), 2);
            double share = high > low ? ALMOST * (1 - low) / (high - low) : 0.5;
            double next = good + (bad - good) * Math.max(0.1, Math.min(0.9, share));
            List<Finding> found = findings(design, design.slurry().withFill(1).withDensity(next), inTime);
            Finding failure = failure(found);
            if (failure == null) {
                good = next;
                below = found;
                if (used(found, stops.id()) > ALMOST * ALMOST) {
                    break;
                }
            } else {
                bad = next;
                above = found;
                stops = failure;
            }
        }
        return good;
    }

    private static double used(List<Finding> findings, String id) {
        return findings.stream()
                .filter(f -> f.id().equals(id) && !Double.isNaN(f.utilisation()))
                .mapToDouble(Finding::utilisation)
                .findFirst()
                .orElse(0.5);
    }

    private static @Nullable HowFull of(Design design, Rules rules) throws CannotComputeException {
        Design quick = coarse(design);
        String limit = firstFailure(quick, 1, rules);
        double density = densityWhenFull(quick, limit == null, rules);
        if (limit == null) {
            return answer(design, 1, density, null);
        }
        String[] stops = {limit};
        Bisection.Question<CannotComputeException> passes = fill -> {
            String failure = firstFailure(quick, fill, rules);
            stops[0] = failure == null ? stops[0] : failure;
            return failure == null;
        };
        double bad = 1;
        double good = Math.max(0, bad - STEP);
        while (!passes.good(good)) {
            bad = good;
            if (good <= 0) {
                return null;
            }
            good = Math.max(0, good - STEP);
        }
        double close = rules.coarser() * CLOSE;
        good = Bisection.between(good, bad, close, "the fullest the tank may be, as a share", passes)
                .good();
        while (good > 0 && firstFailure(design, good, rules) != null) {
            good = Math.max(0, good - close);
        }
        return answer(design, good, density, stops[0]);
    }

    private static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(
                new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()))));
    }

    private static @Nullable String firstFailure(Design design, double fill, Rules rules)
            throws CannotComputeException {
        Finding failure = failure(findings(design, design.slurry().withFill(fill), rules));
        return failure == null ? null : failure.title();
    }

    private static @Nullable Finding failure(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .findFirst()
                .orElse(null);
    }

    /** Between plain liquid and nothing but settled cake. */
    private static double densityWhenFull(Design design, boolean passesAsItIs, Rules rules)
            throws CannotComputeException {
        Slurry full = design.slurry().withFill(1);
        double good = passesAsItIs ? full.mixtureDensity() : full.liquidDensity();
        double bad = passesAsItIs ? full.cakeDensity() : full.mixtureDensity();
        if (!passesAsItIs && fails(design, full.withDensity(good), rules)) {
            return Double.NaN;
        }
        if (passesAsItIs && !fails(design, full.withDensity(bad), rules)) {
            return bad;
        }
        String what = "the densest slurry of a full tank, kg/m3";
        return Bisection.between(
                        good,
                        bad,
                        rules.coarser() * DENSITY_CLOSE,
                        what,
                        density -> !fails(design, full.withDensity(density), rules))
                .good();
    }

    private static boolean fails(Design design, Slurry slurry, Rules rules) throws CannotComputeException {
        return failure(findings(design, slurry, rules)) != null;
    }

    private static HowFull answer(Design design, double fill, double density, @Nullable String limit) {
        Design filled = design.withSlurry(design.slurry().withFill(fill));
        Contents contents = new Contents(filled);
        double volume = contents.slurryVolume();
        Vec3 up = contents.up(contents.start());
        Range extent = contents.solid().extent(up);
        double level =
                contents.liquid(contents.start(), volume, Double.NaN).plane().level() - extent.low();
        return new HowFull(fill, volume, volume * design.slurry().mixtureDensity(), level, density, limit);
    }
}
