// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import tipwright.analysis.CannotComputeException;

/**
 * A second look at a grid, for when the best of the first all fail checks that judge no try, a gap most often: more places, farther
 * apart, of which only those stay that pass these checks too. So few are put to them that it ends soon.
 */
final class WiderLook {
    /** How many times fewer places the grid has than that of the first look. */
    private static final int FEWER = 20;

    private static final long FEWEST = 20_000;

    private static final int KEPT = 40;
    /** Places nearer than this to each other are one, m. */
    private static final double APART = 0.06;
    /** Places that are put to the checks between two looks at whether to stop; the same on any number of threads. */
    private static final int TOGETHER = 16;

    private static final double SCAN_PART = 0.3;

    private final Task task;
    private final GridScan scan;
    private final CandidateEvaluator every;

    /**
     * A look.
     *
     * @param few judges at some tilts, and every at all of them
     * @param before how many places the first look had
     */
    WiderLook(Task task, CandidateEvaluator few, CandidateEvaluator every, CandidateCost cost, long before) {
        this.task = task;
        this.every = every;
        scan = new GridScan(task, few, every, cost, Math.max(Math.min(before, FEWEST), before / FEWER));
    }

    /** Whether it could find what the first look did not: a place fails by what this one puts places to, and not wherever it is. */
    boolean helps(List<Candidate> missed, Rechecker rechecker) {
        return missed.stream().anyMatch(c -> !rechecker.failsWhereverItIs(c) && every.violation(c) > 0);
    }

    /**
     * The best of those that pass; none when none does.
     *
     * @throws CannotComputeException when the tank cannot be computed over the whole tilt
     */
    Shortlist run(WorkerPool pool, Consumer<Progress> watcher) throws CannotComputeException {
        Shortlist many = new Shortlist(task.listed().size(), KEPT, APART);
        scan.run(pool, many, now -> watcher.accept(new Progress(SCAN_PART * now.share(), null, true)));
        List<Callable<Boolean>> tries = new ArrayList<>();
        List<Candidate> tried = new ArrayList<>();
        for (int a = 0; a < many.actuators(); a++) {
            Set<Candidate> some = new LinkedHashSet<>();
            for (Aim aim : Aim.values()) {
                some.addAll(many.of(a, aim));
            }
            for (Candidate candidate : some) {
                tried.add(candidate);
                tries.add(() -> every.violation(candidate) == 0);
            }
        }
        Shortlist clear = new Shortlist(task.listed().size());
        for (int from = 0; from < tries.size() && !pool.stopped(); from += TOGETHER) {
            int to = Math.min(tries.size(), from + TOGETHER);
            List<Boolean> pass = pool.all(tries.subList(from, to));
            for (int i = 0; i < pass.size(); i++) {
                Candidate candidate = tried.get(from + i);
                if (pass.get(i)) {
                    clear.offer(task.listed().indexOf(candidate.actuator()), candidate);
                }
            }
            watcher.accept(
                    new Progress(SCAN_PART + (1 - SCAN_PART) * to / tries.size(), clear.of(Aim.UTILISATION), true));
        }
        return clear;
    }
}
