// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.Slurry;
import tipwright.design.TiltRange;
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
    private static final double COARSEST = Math.toRadians(2);

    /** Checks whose verdict no fill changes, or where more fill is no reason. */
    private static final Set<String> OTHER =
            Set.of("reach", "stroke", "transmission", "over-centre", "empties", "clearance", "landing", "hang");

    private Fullness() {}

    /** Which findings stop a fill. */
    private interface Rules {
        List<Finding> findings(Analysis analysis);

        /** How many times coarser than usual fill and density are looked for. */
        default int coarser() {
            return 1;
        }
    }

    private static final Rules AT_REST = analysis -> Checks.run(analysis, OTHER);

    /**
     * With the dump in time, which is ten times as slow.
     *
     * @param leftOut ids of findings that do not count
     */
    private record InTime(Set<String> leftOut) implements Rules {
        @Override
        public List<Finding> findings(Analysis analysis) {
            Timing timing = CycleTimer.time(analysis);
            return Checks.all().stream()
                    .filter(c -> !OTHER.contains(c.id()))
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
        Set<String> always = new HashSet<>();
        Rules inTime = new InTime(always);
        Slurry full = design.slurry().withFill(1);
        boolean holds = firstFailure(design, quick.fill(), inTime) == null
                && (Double.isNaN(quick.densityWhenFull())
                        || !fails(design, full.withDensity(quick.densityWhenFull()), inTime));
        if (holds) {
            return quick;
        }
        // What fails with an empty tank too is not for the fill to mend.
        Analysis empty = Analyser.analyse(design.withSlurry(design.slurry().withFill(0)));
        inTime.findings(empty).stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .forEach(always::add);
        return of(design, inTime);
    }

    private static @Nullable HowFull of(Design design, Rules rules) throws CannotComputeException {
        Design quick = coarse(design);
        String limit = firstFailure(quick, 1, rules);
        double density = densityWhenFull(quick, limit == null, rules);
        if (limit == null) {
            return answer(design, 1, density, null);
        }
        double bad = 1;
        double good = bad;
        while (limit != null) {
            bad = good;
            if (good <= 0) {
                return null;
            }
            good = Math.max(0, good - STEP);
            String next = firstFailure(quick, good, rules);
            if (next == null) {
                break;
            }
            limit = next;
        }
        while (bad - good > rules.coarser() * CLOSE) {
            double middle = 0.5 * (good + bad);
            String failure = firstFailure(quick, middle, rules);
            if (failure == null) {
                good = middle;
            } else {
                bad = middle;
                limit = failure;
            }
        }
        while (good > 0 && firstFailure(design, good, rules) != null) {
            good = Math.max(0, good - rules.coarser() * CLOSE);
        }
        return answer(design, good, density, limit);
    }

    private static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(
                new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()))));
    }

    private static @Nullable String firstFailure(Design design, double fill, Rules rules)
            throws CannotComputeException {
        return firstFailure(design.withSlurry(design.slurry().withFill(fill)), rules);
    }

    private static @Nullable String firstFailure(Design design, Rules rules) throws CannotComputeException {
        for (Finding f : rules.findings(Analyser.analyse(design))) {
            if (f.verdict() == Verdict.FAIL) {
                return f.title();
            }
        }
        return null;
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
        while (bad - good > rules.coarser() * DENSITY_CLOSE) {
            double middle = 0.5 * (good + bad);
            if (fails(design, full.withDensity(middle), rules)) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return good;
    }

    private static boolean fails(Design design, Slurry slurry, Rules rules) throws CannotComputeException {
        return firstFailure(design.withSlurry(slurry), rules) != null;
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
