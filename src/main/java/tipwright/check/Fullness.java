// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

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

    /** The answer for a design; null when not even the empty tank passes. */
    static @Nullable HowFull of(Design design) throws CannotComputeException {
        Design quick = coarse(design);
        String limit = firstFailure(quick, 1);
        double density = densityWhenFull(quick, limit == null);
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
            String next = firstFailure(quick, good);
            if (next == null) {
                break;
            }
            limit = next;
        }
        while (bad - good > CLOSE) {
            double middle = 0.5 * (good + bad);
            String failure = firstFailure(quick, middle);
            if (failure == null) {
                good = middle;
            } else {
                bad = middle;
                limit = failure;
            }
        }
        while (good > 0 && firstFailure(design, good) != null) {
            good = Math.max(0, good - CLOSE);
        }
        return answer(design, good, density, limit);
    }

    private static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(
                new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()))));
    }

    private static @Nullable String firstFailure(Design design, double fill) throws CannotComputeException {
        return firstFailure(design.withSlurry(design.slurry().withFill(fill)));
    }

    private static @Nullable String firstFailure(Design design) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(design);
        List<Finding> findings = Checks.run(analysis, OTHER);
        for (Finding f : findings) {
            if (f.verdict() == Verdict.FAIL) {
                return f.title();
            }
        }
        return null;
    }

    /** Between plain liquid and nothing but settled cake. */
    private static double densityWhenFull(Design design, boolean passesAsItIs) throws CannotComputeException {
        Slurry full = design.slurry().withFill(1);
        double good = passesAsItIs ? full.mixtureDensity() : full.liquidDensity();
        double bad = passesAsItIs ? full.cakeDensity() : full.mixtureDensity();
        if (!passesAsItIs && fails(design, full.withDensity(good))) {
            return Double.NaN;
        }
        if (passesAsItIs && !fails(design, full.withDensity(bad))) {
            return bad;
        }
        while (bad - good > DENSITY_CLOSE) {
            double middle = 0.5 * (good + bad);
            if (fails(design, full.withDensity(middle))) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return good;
    }

    private static boolean fails(Design design, Slurry slurry) throws CannotComputeException {
        return firstFailure(design.withSlurry(slurry)) != null;
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
