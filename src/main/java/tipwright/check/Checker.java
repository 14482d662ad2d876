// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.load.Contents;
import tipwright.load.LoadTable;
import tipwright.load.Vessel;

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
        long end = System.nanoTime() + listener.patience().toNanos();
        Vessel vessel = Vessel.of(design);
        StagedCheck check = StagedCheck.toTheEnd(analysed(design, vessel), listener.timer(), densest);
        Early early = check.atRest();
        FutureTask<Result> rest = new FutureTask<>(() -> {
            check.inTime();
            return check.whole();
        });
        SideThreads.start("rest", rest);
        try {
            return answer(rest, Math.max(0, end - System.nanoTime()), design);
        } catch (TimeoutException e) {
            listener.told().accept(early);
        }
        try {
            return answer(rest, Long.MAX_VALUE, design);
        } catch (TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** With a second thread that makes what the loads ask for, then some of them. */
    private static Analysis analysed(Design design, Vessel vessel) throws CannotComputeException {
        OpenRuns loads = new OpenRuns();
        SideThreads.start("vessel", () -> {
            vessel.prepare(design);
            loads.help();
        });
        try {
            // what goes wrong in a task is thrown where it is asked for
            return Analyser.analyse(
                    design, tilts -> LoadTable.of(design, tilts, vessel, w -> loads.offer(new FutureTask<>(w, true))));
        } finally {
            loads.end();
        }
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
        StagedCheck check = StagedCheck.of(analysis);
        check.atRest();
        return check.inTime();
    }

    /**
     * The findings of every check alone.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static List<Finding> findings(Design design) throws CannotComputeException {
        StagedCheck check = StagedCheck.of(Analyser.analyse(design));
        check.atRest();
        return check.findings();
    }

    /**
     * All conditions with fills up to the stated one, a tenth of the interior apart.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or something does not converge
     */
    public static List<Condition> conditions(Analysis stated) throws CannotComputeException {
        Conditions conditions = new Conditions(stated.design(), stated.emptying(), stated.vessel());
        double fill = new Contents(stated.design(), stated.vessel()).fill();
        List<Condition> all = new ArrayList<>();
        for (double share : FillSweep.shares(fill)) {
            if (share > 0 && share <= fill) {
                all.addAll(conditions.each(stated.design().slurry().withFill(share)));
            }
        }
        return all;
    }

    private static Result answer(FutureTask<Result> work, long patience, Design design)
            throws CannotComputeException, TimeoutException {
        try {
            return work.get(patience, TimeUnit.NANOSECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CannotComputeException cannot) {
                throw cannot;
            }
            throw SharedTasks.fault(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CannotComputeException(design.name() + ": the check was interrupted", e);
        }
    }
}
