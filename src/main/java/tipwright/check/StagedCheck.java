// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.geometry.NotConvergedException;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/**
 * A check in stages, for a person who waits: first every check that needs no time, over all fills; then all of them; last how full the
 * tank may be. Each stage goes on from what the ones before have worked out, and the last comes to what {@link Checker#check} does. A
 * workspace: one thread at a time asks, for one stage after the other.
 */
public final class StagedCheck {
    private static final List<Check> AT_REST =
            Checks.all().stream().filter(c -> !uncertain(c)).toList();
    private static final List<Check> TIMED =
            Checks.all().stream().filter(StagedCheck::timed).toList();

    private final Analysis analysis;
    private final SharedRun still;
    private final FutureTask<Timing> timing;
    private final IdentityHashMap<Finding, Finding> told = new IdentityHashMap<>();
    private @Nullable FillSweep sweep;
    private @Nullable FillSweep nearer;
    private @Nullable Result filled;

    private StagedCheck(Analysis analysis) {
        this.analysis = analysis;
        still = new SharedRun(AT_REST, analysis);
        timing = new FutureTask<>(() -> CycleTimer.time(analysis));
    }

    /** Of an analysed design; nothing has been worked out yet. */
    public static StagedCheck of(Analysis analysis) {
        return new StagedCheck(analysis);
    }

    /** Whether what a check finds is not certain without the dump in time. */
    private static boolean uncertain(Check check) {
        return check.traits().contains(Trait.NEEDS_TIME) || check.traits().contains(Trait.BETTER_IN_TIME);
    }

    /** Whether a check looks at the dump in time. */
    private static boolean timed(Check check) {
        return uncertain(check) || check.traits().contains(Trait.MORE_IN_TIME);
    }

    private interface Work<T> {
        T done() throws CannotComputeException;
    }

    private <T> T converged(Work<T> work) throws CannotComputeException {
        try {
            return work.done();
        } catch (NotConvergedException e) {
            throw CannotComputeException.of(analysis.design(), e);
        }
    }

    /**
     * What the checks find that need no time, each the worst over the fills from empty to the stated one.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Early atRest() throws CannotComputeException {
        SharedFills shared = FillSweep.fills(analysis);
        SideThreads.start("check", () -> {
            still.help();
            shared.help();
            timing.run();
        });
        return converged(() -> {
            FillSweep fills = FillSweep.of(analysis, shared);
            FillSweep other = fills.copy();
            sweep = fills;
            nearer = other;
            List<Finding> found = still.findings();
            return new Early(analysis, remember(found, other.worst(found)));
        });
    }

    /** Keeps what is told in place of each finding. */
    private List<Finding> remember(List<Finding> found, List<Finding> inPlace) {
        for (int i = 0; i < found.size(); i++) {
            told.put(found.get(i), inPlace.get(i));
        }
        return inPlace;
    }

    /**
     * What all checks find, without how full it may be; after {@link #atRest}.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Result inTime() throws CannotComputeException {
        FillSweep fills = Objects.requireNonNull(nearer, "what needs no time comes first");
        timing.run();
        return converged(() -> {
            Timing dump = SharedTasks.found(timing);
            SharedRun moving = new SharedRun(TIMED, analysis, dump);
            SideThreads.start("check", moving::help);
            List<Finding> found = moving.findings();
            remember(found, fills.worst(Conditions.inTheWind(analysis, found)));
            List<Finding> all = Checks.all().stream()
                    .flatMap(c -> (timed(c) ? moving : still).findings(c).stream())
                    .map(f -> Objects.requireNonNull(told.get(f)))
                    .toList();
            Result result = new Result(analysis, all, null, dump);
            filled = result;
            return result;
        });
    }

    /**
     * The same with how full it may be; after {@link #inTime}.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Result whole() throws CannotComputeException {
        Result known = Objects.requireNonNull(filled, "the dump in time comes first");
        FillSweep fills = Objects.requireNonNull(sweep);
        OpenRuns runs = new OpenRuns();
        SideThreads.start("check", runs::help);
        try {
            return converged(() -> known.with(Fullness.of(fills, analysis.design(), true, runs)));
        } finally {
            runs.end();
        }
    }
}
