// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import java.util.stream.Stream;
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
 * The one order in which a design is checked, in stages for who waits: first every check that needs no time, over all fills; then all of
 * them; last how full the tank may be. Each stage goes on from what the ones before have worked out, with the help of a second thread. A
 * workspace: one thread at a time asks, for one stage after the other.
 */
public final class StagedCheck {
    private static final List<Check> AT_REST =
            Checks.all().stream().filter(c -> !uncertain(c)).toList();
    private static final List<Check> TIMED =
            Checks.all().stream().filter(StagedCheck::timed).toList();

    private final Analysis analysis;
    private final SharedRun still;
    private final SharedFills fills;
    private final FutureTask<FillSweep> sweep;
    private final FutureTask<Timing> timing;
    private final SharedRun moving;
    private final FutureTask<List<Finding>> moved;
    private final OpenRuns runs = new OpenRuns();
    private final FutureTask<Optional<HowFull>> full;
    private final boolean ahead;
    private final boolean densest;
    private final IdentityHashMap<Finding, Finding> told = new IdentityHashMap<>();
    private final List<Finding> behind = new ArrayList<>();
    private @Nullable FillSweep nearer;
    private @Nullable Result filled;
    private double failing = Double.NaN;

    private StagedCheck(Analysis analysis, Function<Analysis, Timing> timer, boolean ahead, boolean densest) {
        this.analysis = analysis;
        this.ahead = ahead;
        this.densest = densest;
        still = new SharedRun(AT_REST, analysis);
        fills = FillSweep.fills(analysis);
        sweep = new FutureTask<>(() -> {
            FillSweep known = FillSweep.of(analysis, fills);
            nearer = known.copy();
            return known;
        });
        timing = new FutureTask<>(() -> timer.apply(analysis));
        moving = new SharedRun(TIMED, analysis, () -> SharedTasks.found(timing));
        moved = new FutureTask<>(() -> Conditions.inTime(analysis, moving.findings()));
        full = new FutureTask<>(() -> Optional.ofNullable(
                Fullness.of(SharedTasks.answer(sweep), analysis.design(), this::underAll, densest, runs, Double.NaN)));
    }

    /** Of an analysed design, for who may not ask for all stages; nothing has been worked out yet. */
    public static StagedCheck of(Analysis analysis) {
        return new StagedCheck(analysis, CycleTimer::time, false, true);
    }

    /**
     * The same for who will ask for all stages: the second thread goes on to how full it may be at once.
     *
     * @param timer works out the dump in time
     * @param densest whether the densest slurry of a tank that is full to the brim is looked for too
     */
    static StagedCheck toTheEnd(Analysis analysis, Function<Analysis, Timing> timer, boolean densest) {
        return new StagedCheck(analysis, timer, true, densest);
    }

    /** What the checks find that look at the dump in time, under all conditions. */
    private List<Finding> underAll() throws CannotComputeException {
        moved.run();
        return SharedTasks.answer(moved);
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
     * What the second thread does. Where all is asked for, what no other can help with comes as early as possible: the dump in time, then
     * how full it may be. Else it does nothing that may not be asked for but the dump in time.
     */
    private void help() {
        if (ahead) {
            timing.run();
        }
        still.help();
        fills.help();
        if (ahead) {
            howFull();
            moving.help();
        } else {
            timing.run();
        }
    }

    private void howFull() {
        full.run();
        runs.end();
    }

    /**
     * What the checks find that need no time, each the worst over the fills from empty to the stated one.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Early atRest() throws CannotComputeException {
        SideThreads.start("check", this::help);
        sweep.run();
        return converged(() -> {
            SharedTasks.answer(sweep);
            List<Finding> found = still.findings();
            List<Finding> worst = nearer().worst(found, AT_REST);
            remember(found, worst);
            behind.removeIf(f -> TIMED.stream().anyMatch(c -> c.owns(f)));
            return new Early(analysis, worst);
        });
    }

    /** Keeps what is told in place of each finding, and what is told behind them. */
    private void remember(List<Finding> found, List<Finding> inPlace) {
        for (int i = 0; i < found.size(); i++) {
            told.put(found.get(i), inPlace.get(i));
        }
        behind.addAll(inPlace.subList(found.size(), inPlace.size()));
    }

    private FillSweep nearer() {
        return Objects.requireNonNull(nearer, "what needs no time comes first");
    }

    /**
     * What all checks find; after {@link #atRest}.
     *
     * @throws CannotComputeException when something does not converge
     */
    List<Finding> findings() throws CannotComputeException {
        FillSweep fillings = nearer();
        timing.run();
        if (!ahead) {
            SideThreads.start("check", moving::help);
        }
        return converged(() -> {
            List<Finding> found = moving.findings();
            LessFull.Worst less = fillings.lessFull(underAll());
            failing = less.failing();
            remember(found, fillings.worst(less.findings(), TIMED));
            return Checks.all().stream()
                    .flatMap(c -> Stream.concat(
                            (timed(c) ? moving : still)
                                    .findings(c).stream().map(f -> Objects.requireNonNull(told.get(f))),
                            behind.stream().filter(c::owns)))
                    .toList();
        });
    }

    /**
     * The verdict in its two halves, without how full it may be; after {@link #atRest}.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Result inTime() throws CannotComputeException {
        List<Finding> all = findings();
        Result result = converged(() -> new Result(analysis, all, null, SharedTasks.found(timing)));
        filled = result;
        return result;
    }

    /**
     * The same with how full it may be; after {@link #inTime}.
     *
     * @throws CannotComputeException when something does not converge
     */
    public Result whole() throws CannotComputeException {
        Result known = Objects.requireNonNull(filled, "the dump in time comes first");
        if (!ahead) {
            SideThreads.start("check", this::howFull);
        }
        runs.help();
        return converged(() -> known.with(howFull(SharedTasks.answer(full).orElse(null))));
    }

    /** With something that fails in a tank less full than that, which was not known when it was looked for, it is looked for anew. */
    private @Nullable HowFull howFull(@Nullable HowFull found) throws CannotComputeException {
        return found != null && failing < found.fill()
                ? Fullness.of(
                        SharedTasks.answer(sweep), analysis.design(), this::underAll, densest, new OpenRuns(), failing)
                : found;
    }
}
