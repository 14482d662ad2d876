// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

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
        CompletableFuture<Timing> inTime = CompletableFuture.supplyAsync(() -> CycleTimer.time(analysis));
        CompletableFuture<List<Finding>> findings = inTime.thenApply(timing -> Checks.run(analysis, timing));
        @Nullable HowFull howFull = Fullness.of(design);
        return new Result(analysis, findings.join(), howFull, inTime.join());
    }

    /**
     * Checks a design without asking how full it may be, which takes longest.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static Result asFilled(Design design) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(design);
        Timing timing = CycleTimer.time(analysis);
        return new Result(analysis, Checks.run(analysis, timing), null, timing);
    }

    /**
     * The findings of every check alone.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static List<Finding> findings(Design design) throws CannotComputeException {
        return asFilled(design).findings();
    }
}
