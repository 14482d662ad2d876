// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.geometry.Vec2;

/**
 * One search over the zones of any mechanism. Where the engine is the closed form, a grid comes first, most of which the lanes turn
 * down. Where there is none, or nothing of it fits: candidates spread evenly over all zones, first by the motion alone and then by the
 * checks at few tilts; the best of each actuator improved by evolution from several starts. Then, for all alike, refinement to 0.1 mm
 * at every tilt, and the full check of every answer.
 */
final class Search {
    private static final String BEST_SO_FAR = "stopped before the end: this is the best so far";
    private static final long GRID = 2_000_000;
    private static final long SPREAD = 20_000;
    private static final int PIECE = 64;
    private static final int BATCH = 16;
    private static final int FEW_TILTS = 12;
    private static final int SCAN_TILTS = 6;
    private static final int STARTS = 3;
    private static final int AIM_STARTS = 2;
    /** Generations of a start: some anyhow, and some that the actuators share. */
    private static final int GENERATIONS = 30;

    private static final int SHARED_GENERATIONS = 150;
    private static final double STEP = 0.06;
    /** Generations and first step of the refinement after an evolution; after a grid alone it does the evolution's part. */
    private static final int LAST_GENERATIONS = 25;

    private static final double LAST_STEP = 0.01;
    private static final int GRID_GENERATIONS = 100;
    /** Starts that are worked on between two looks at whether to stop; the same on any number of threads. */
    private static final int TOGETHER = 4;

    /** The spreading's part of the progress; the rest is evolution. */
    private static final double FIRST_PART = 0.5;

    private static final double SECOND_PART = 0.7;

    private final WorkerPool pool;
    private final Task task;
    private final CandidateEngine engine;
    private final long seed;
    private final @Nullable Long given;
    private final Consumer<Progress> watcher;
    private final EvenSpread spread;
    private final CandidateEvaluator every;
    private final CandidateEvaluator few;
    private final CandidateCost coarse;
    private final CandidateCost fine;
    private final Shortlist best;
    private final Starts starts;
    private long looked;
    private long whole;
    private double gridStep;

    /**
     * A search.
     *
     * @param given about how many places of the mounts are looked at; null: as many as the engine does in a short while
     * @throws CannotComputeException when no place is left in a zone
     */
    Search(
            WorkerPool pool,
            Task task,
            CandidateEngine engine,
            long seed,
            @Nullable Long given,
            Consumer<Progress> watcher)
            throws CannotComputeException {
        this.pool = pool;
        this.task = task;
        this.engine = engine;
        this.seed = seed;
        this.given = given;
        this.watcher = watcher;
        spread = new EvenSpread(task, seed);
        every = CandidateEvaluator.of(task, engine);
        few = every.at(FEW_TILTS);
        coarse = new CandidateCost(task, few, pool::stopped);
        fine = new CandidateCost(task, every, pool::stopped);
        best = new Shortlist(task.listed().size());
        starts = new Starts(task.listed().size());
    }

    /** What a piece of the spreading found. */
    private record Found(Shortlist best, Starts starts) {}

    Placement place() throws CannotComputeException {
        List<String> notes = new ArrayList<>();
        if (engine == CandidateEngine.CLOSED_FORM) {
            GridScan scan = new GridScan(task, every.at(SCAN_TILTS), every, fine, onGrid());
            gridStep = scan.step();
            whole = scan.whole();
            looked = scan.run(pool, best, watcher);
        }
        boolean spreads =
                best.of(Aim.UTILISATION) == null && (engine != CandidateEngine.CLOSED_FORM || !pool.stopped());
        if (spreads) {
            long most = engine == CandidateEngine.CLOSED_FORM || given == null ? SPREAD : given;
            spreadOut((int) Math.min(Integer.MAX_VALUE - PIECE, most));
            evolve();
        }
        if (best.of(Aim.UTILISATION) == null) {
            List<String> misses =
                    pool.stopped() ? List.of() : new NearMisses(task, few, coarse, starts, seed).say(pool);
            return new Placement(List.of(), List.of(), misses, notes, looked, 0, gridStep, whole, pool.stopped());
        }
        Rechecker rechecker = new Rechecker(task.design());
        Finish.Found found =
                new Finish(task.design(), every, refiner(spreads, spreads), rechecker).placement(best, List.of(), pool);
        if (found.answers().isEmpty() && !spreads && !pool.stopped()) {
            found = wider(found, rechecker);
        }
        notes.addAll(found.notes());
        if (pool.stopped()) {
            notes.add(0, BEST_SO_FAR);
        }
        return new Placement(
                found.answers(),
                found.nearly(),
                List.of(),
                notes,
                looked,
                best.fitting(),
                gridStep,
                whole,
                pool.stopped());
    }

    /** About how many places of the mounts the grid has. */
    private long onGrid() {
        return given == null ? GRID : given;
    }

    /** Where all of the best fail what judges no try: what a wider look finds, if it finds anything. */
    private Finish.Found wider(Finish.Found found, Rechecker rechecker) throws CannotComputeException {
        WiderLook look = new WiderLook(task, every.at(SCAN_TILTS), every, fine, onGrid());
        if (!look.helps(found.missed(), rechecker)) {
            return found;
        }
        Shortlist clear = look.run(pool, watcher);
        if (clear.of(Aim.UTILISATION) == null) {
            return found;
        }
        Finish.Found again = new Finish(task.design(), every, refiner(false, true), rechecker)
                .placement(clear, found.missed(), pool);
        return again.answers().isEmpty() ? found : again;
    }

    /**
     * What brings the best to the end.
     *
     * @param near whether they were improved by evolution before
     * @param others whether to keep clear of the checks that are no limit of the search on the way
     */
    private Refiner refiner(boolean near, boolean others) {
        return near
                ? new Refiner(task, coarse, fine, seed, LAST_STEP, LAST_GENERATIONS, others)
                : new Refiner(task, coarse, fine, seed, gridStep, GRID_GENERATIONS, others);
    }

    private void spreadOut(int candidates) {
        int done = 0;
        whole += (long) candidates * task.listed().size();
        while (done < candidates && !pool.stopped()) {
            List<Callable<Found>> work = new ArrayList<>();
            for (int k = 0; k < BATCH && done < candidates; k++) {
                int from = done;
                int to = Math.min(candidates, from + PIECE);
                work.add(() -> look(spread.candidates(from, to)));
                done = to;
            }
            for (Found found : pool.all(work)) {
                best.merge(found.best());
                starts.merge(found.starts());
            }
            tell(FIRST_PART * done / candidates);
        }
        looked += (long) done * task.listed().size();
    }

    private Found look(List<List<Vec2>> some) {
        Shortlist found = new Shortlist(task.listed().size());
        Starts good = new Starts(task.listed().size());
        for (List<Vec2> at : some) {
            Reach reach = few.reach(at);
            for (int a = 0; a < task.listed().size(); a++) {
                double cost = coarse.motion(reach, a);
                if (cost == 0) {
                    Judgement judged = few.judged(at, a);
                    cost = coarse.load(judged, Aim.UTILISATION, 1);
                    if (judged.utilisation() <= task.wants().utilisation()) {
                        found.count();
                        found.offer(a, coarse.candidate(at, a, judged));
                    }
                }
                good.offer(a, at, cost);
            }
        }
        return new Found(found, good);
    }

    /**
     * What came of one start.
     *
     * @param candidate null: it does not fit
     */
    private record Better(int actuator, List<Vec2> at, double cost, @Nullable Candidate candidate) {}

    /** Improves the best of each actuator: the utilisation first, which also leads to what fits, then force and time. */
    private void evolve() {
        List<Callable<Better>> first = new ArrayList<>();
        for (int a = 0; a < task.listed().size(); a++) {
            int actuator = a;
            for (int s = 0; s < Math.min(STARTS, starts.of(a).size()); s++) {
                Starts.Start start = starts.of(a).get(s);
                long mine = seed + s;
                first.add(() -> better(actuator, Aim.UTILISATION, 1, start.at(), mine));
            }
        }
        improve(first, FIRST_PART, SECOND_PART);
        List<Callable<Better>> then = new ArrayList<>();
        for (int a = 0; a < task.listed().size(); a++) {
            int actuator = a;
            for (Aim aim : List.of(Aim.FORCE, Aim.TIME)) {
                List<Candidate> candidates = best.of(a, aim);
                for (int s = 0; s < Math.min(AIM_STARTS, candidates.size()); s++) {
                    Candidate start = candidates.get(s);
                    long mine = seed + s;
                    if (Double.isFinite(start.cost(aim))) {
                        then.add(() -> better(actuator, aim, start.cost(aim), Task.places(start), mine));
                    }
                }
            }
        }
        improve(then, SECOND_PART, 1);
    }

    /** Every start is a piece of work; it is done from one share of the progress to another. */
    private void improve(List<Callable<Better>> work, double before, double after) {
        for (int from = 0; from < work.size() && !pool.stopped(); from += TOGETHER) {
            int to = Math.min(work.size(), from + TOGETHER);
            for (Better better : pool.all(work.subList(from, to))) {
                if (better.candidate() != null) {
                    best.offer(better.actuator(), better.candidate());
                }
                starts.offer(better.actuator(), better.at(), better.cost());
            }
            tell(before + (after - before) * to / work.size());
        }
    }

    private Better better(int actuator, Aim aim, double scale, List<Vec2> start, long mine) {
        ToDoubleFunction<double[]> cost = coarse.over(actuator, aim, scale, true);
        double[] found = coarse.least(
                cost,
                start,
                STEP,
                mine,
                GENERATIONS + SHARED_GENERATIONS / task.listed().size());
        double[] end = found == null ? CandidateCost.coordinates(start) : found;
        List<Vec2> at = coarse.places(end, false);
        double utilisation = coarse.over(actuator, Aim.UTILISATION, 1, true).applyAsDouble(end);
        return new Better(actuator, at, utilisation, fine.candidate(fine.places(end, true), actuator));
    }

    private void tell(double share) {
        watcher.accept(new Progress(share, best.of(Aim.UTILISATION)));
    }
}
