// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.geometry.NotConvergedException;
import tipwright.load.Vessel;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** Analyses a design and runs every check on it. */
public final class Checker {
    private Checker() {}

    /**
     * Checks a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static Result check(Design design) throws CannotComputeException {
        return check(design, Early.Listener.of(early -> {}), true);
    }

    /**
     * Checks a design, and tells what is known at once if the rest takes long.
     *
     * @param densest whether the densest slurry of a tank that is full to the brim is looked for too
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static Result check(Design design, Early.Listener listener, boolean densest) throws CannotComputeException {
        Vessel vessel = Vessel.of(design);
        SideThreads.start("vessel", () -> vessel.prepare(design));
        Analysis analysis = Analyser.analyse(design, vessel);
        Job job = new Job(analysis);
        OpenRuns runs = new OpenRuns();
        FutureTask<Result> filled = started(() -> result(analysis, job.inTime(listener.timer())), runs::help);
        FutureTask<Optional<HowFull>> fills = started(
                () -> {
                    job.sweep();
                    return Optional.ofNullable(Fullness.of(job.sweeps().first(), design, densest, runs));
                },
                runs::end);
        long end = System.nanoTime() + listener.patience().toNanos();
        if (!done(filled, end) || !done(fills, end)) {
            listener.told().accept(new Early(analysis, Checks.run(analysis)));
        }
        return result(filled, design).with(result(fills, design).orElse(null));
    }

    /** Both halves of the verdict, without how full the tank may be. */
    private static Result result(Analysis analysis, InTime found) {
        return new Result(analysis, found.findings(), null, found.timing());
    }

    /**
     * Checks a design without asking how full it may be, which takes longest.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static Result asFilled(Design design) throws CannotComputeException {
        return asFilled(Analyser.analyse(design));
    }

    /**
     * The same of a design that has been analysed.
     *
     * @throws CannotComputeException when something does not converge
     */
    public static Result asFilled(Analysis analysis) throws CannotComputeException {
        return result(analysis, inTime(analysis));
    }

    private static InTime inTime(Analysis analysis) throws CannotComputeException {
        Job job = new Job(analysis);
        FutureTask<Boolean> sweep = started(
                () -> {
                    job.sweep();
                    return true;
                },
                () -> {});
        try {
            return job.inTime(CycleTimer::time);
        } catch (NotConvergedException e) {
            throw CannotComputeException.of(analysis.design(), e);
        } finally {
            sweep.cancel(true);
        }
    }

    /**
     * The findings of every check alone.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static List<Finding> findings(Design design) throws CannotComputeException {
        return inTime(Analyser.analyse(design)).findings();
    }

    private record InTime(Timing timing, List<Finding> findings) {}

    /** What two threads do side by side: the sweep over the fills, and the dump in time with all checks. */
    private static final class Job {
        private final Analysis analysis;
        private final SharedFills fills;
        private final FutureTask<Sweeps> sweeps;
        private final AtomicReference<SharedRun> checks = new AtomicReference<>();

        Job(Analysis analysis) {
            this.analysis = analysis;
            fills = FillSweep.fills(analysis);
            sweeps = new FutureTask<>(() -> Sweeps.of(analysis, fills));
        }

        /** Sweeps over the fills, then helps with the checks if they have begun. */
        void sweep() {
            sweeps.run();
            SharedRun begun = checks.get();
            if (begun != null) {
                begun.help();
            }
        }

        Sweeps sweeps() throws CannotComputeException {
            return result(sweeps, analysis.design());
        }

        /** The dump in time, and of every check the worst over all fills. */
        InTime inTime(Function<Analysis, Timing> timer) throws CannotComputeException {
            Timing timing = timer.apply(analysis);
            SharedRun run = new SharedRun(Checks.all(), analysis, timing);
            checks.set(run);
            List<Finding> found = Conditions.inTheWind(analysis, run.findings());
            fills.help();
            return new InTime(timing, sweeps().second().worst(found));
        }
    }

    /** The same sweep for two threads. */
    private record Sweeps(FillSweep first, FillSweep second) {
        static Sweeps of(Analysis analysis, SharedFills fills) throws CannotComputeException {
            FillSweep first = FillSweep.of(analysis, fills);
            return new Sweeps(first, first.copy());
        }
    }

    /** Begins work on a thread of its own, which does not keep the program alive; what comes after it, however it ends. */
    private static <T> FutureTask<T> started(Callable<T> work, Runnable after) {
        FutureTask<T> task = new FutureTask<>(work);
        SideThreads.start("check", () -> {
            task.run();
            after.run();
        });
        return task;
    }

    /** Waits for work until a time of the clock, ns; however it ended, it is done. */
    private static boolean done(FutureTask<?> work, long end) {
        try {
            work.get(Math.max(0, end - System.nanoTime()), TimeUnit.NANOSECONDS);
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (ExecutionException e) {
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private static <T> T result(FutureTask<T> work, Design design) throws CannotComputeException {
        try {
            return work.get();
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            if (cause instanceof NotConvergedException lost) {
                throw CannotComputeException.of(design, lost);
            }
            if (cause instanceof CannotComputeException cannot) {
                throw cannot;
            }
            if (cause instanceof Error error) {
                throw error;
            }
            if (cause instanceof RuntimeException fault) {
                throw fault;
            }
            throw new IllegalStateException(cause);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CannotComputeException(design.name() + ": the check was interrupted", e);
        }
    }
}
