// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/**
 * Searches the zones of any mechanism: candidates spread evenly over all of them, first by the motion alone and then by the general
 * analysis at few tilts; the best of each actuator improved by evolution from several starts; then refinement to 0.1 mm at every
 * tilt, and the full check of every answer. The result depends on design, seed and number of candidates alone.
 */
final class AnyPlacer {
    static final long CANDIDATES = 20_000;

    private static final int PIECE = 64;
    private static final int BATCH = 16;
    private static final int FEW_TILTS = 12;
    private static final int EVERY_TILT = 100_000;
    private static final int STARTS = 3;
    private static final int AIM_STARTS = 2;
    /** Generations of a start: some anyhow, and some that the actuators share. */
    private static final int GENERATIONS = 30;

    private static final int SHARED_GENERATIONS = 150;
    private static final double STEP = 0.06;
    /** Starts that are worked on between two looks at whether to stop; the same on any number of threads. */
    private static final int TOGETHER = 4;

    /** The spreading's part of the progress; the rest is evolution. */
    private static final double FIRST_PART = 0.5;

    private static final double SECOND_PART = 0.7;

    private final Crew crew;
    private final AnyTask task;
    private final long seed;
    private final int candidates;
    private final Consumer<Progress> watcher;
    private final Spread spread;
    private final AnyCost coarse;
    private final AnyCost fine;
    private final Gauge few;
    private final Best best;
    private final Starts starts;

    /**
     * A search.
     *
     * @throws CannotComputeException when the design gives no zones
     */
    AnyPlacer(Crew crew, Design design, long seed, long candidates, Consumer<Progress> watcher)
            throws CannotComputeException {
        this.crew = crew;
        this.seed = seed;
        this.candidates = (int) Math.min(Integer.MAX_VALUE - PIECE, candidates);
        this.watcher = watcher;
        task = AnyTask.of(design);
        spread = new Spread(task, seed);
        few = new Gauge(task, FEW_TILTS);
        coarse = new AnyCost(task, few, crew::stopped);
        fine = new AnyCost(task, new Gauge(task, EVERY_TILT), crew::stopped);
        best = new Best(task.listed().size());
        starts = new Starts(task.listed().size());
    }

    /** What a piece of the spreading found. */
    private record Found(Best best, Starts starts) {}

    Placement place() {
        List<String> notes = new ArrayList<>();
        int looked = spreadOut();
        evolve();
        long whole = (long) candidates * task.listed().size();
        long all = (long) looked * task.listed().size();
        if (best.of(Aim.UTILISATION) == null) {
            List<String> misses = crew.stopped() ? List.of() : new AnyMisses(task, few, coarse, starts, seed).say(crew);
            return new Placement(List.of(), misses, notes, all, 0, 0, whole, crew.stopped());
        }
        Finish finish = new Finish(task.design(), () -> new AnyRefiner(task, coarse, fine, seed));
        List<Answer> answers = finish.answers(best, crew, notes);
        boolean stopped = crew.stopped();
        if (stopped && !answers.isEmpty()) {
            notes.add(0, Placer.BEST_SO_FAR);
        }
        return new Placement(answers, List.of(), notes, all, best.fitting(), 0, whole, stopped);
    }

    private int spreadOut() {
        int done = 0;
        while (done < candidates && !crew.stopped()) {
            List<Callable<Found>> work = new ArrayList<>();
            for (int k = 0; k < BATCH && done < candidates; k++) {
                int from = done;
                int to = Math.min(candidates, from + PIECE);
                work.add(() -> look(spread.candidates(from, to)));
                done = to;
            }
            for (Found found : crew.all(work)) {
                best.merge(found.best());
                starts.merge(found.starts());
            }
            tell(FIRST_PART * done / candidates);
        }
        return done;
    }

    private Found look(List<List<Vec2>> some) {
        Best found = new Best(task.listed().size());
        Starts good = new Starts(task.listed().size());
        for (List<Vec2> at : some) {
            Gauge.Reach reach = few.reach(at);
            for (int a = 0; a < task.listed().size(); a++) {
                double cost = coarse.motion(reach, a);
                if (cost == 0) {
                    Gauge.Tried tried = few.tried(at, a);
                    cost = coarse.load(tried, Aim.UTILISATION, 1);
                    if (tried.utilisation() <= task.wants().utilisation()) {
                        found.count();
                        found.offer(a, coarse.spot(at, a, tried));
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
     * @param spot null: it does not fit
     */
    private record Better(int actuator, List<Vec2> at, double cost, @Nullable Spot spot) {}

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
                List<Spot> spots = best.of(a, aim);
                for (int s = 0; s < Math.min(AIM_STARTS, spots.size()); s++) {
                    Spot start = spots.get(s);
                    long mine = seed + s;
                    if (Double.isFinite(start.cost(aim))) {
                        then.add(() -> better(actuator, aim, start.cost(aim), AnyRefiner.places(start), mine));
                    }
                }
            }
        }
        improve(then, SECOND_PART, 1);
    }

    /** Every start is a piece of work; it is done from one share of the progress to another. */
    private void improve(List<Callable<Better>> work, double before, double after) {
        for (int from = 0; from < work.size() && !crew.stopped(); from += TOGETHER) {
            int to = Math.min(work.size(), from + TOGETHER);
            for (Better better : crew.all(work.subList(from, to))) {
                if (better.spot() != null) {
                    best.offer(better.actuator(), better.spot());
                }
                starts.offer(better.actuator(), better.at(), better.cost());
            }
            tell(before + (after - before) * to / work.size());
        }
    }

    private Better better(int actuator, Aim aim, double scale, List<Vec2> start, long mine) {
        ToDoubleFunction<double[]> cost = coarse.over(actuator, aim, scale);
        double[] found = coarse.least(
                cost,
                start,
                STEP,
                mine,
                GENERATIONS + SHARED_GENERATIONS / task.listed().size());
        double[] end = found == null ? AnyCost.coordinates(start) : found;
        List<Vec2> at = coarse.places(end, false);
        double utilisation = coarse.over(actuator, Aim.UTILISATION, 1).applyAsDouble(end);
        return new Better(actuator, at, utilisation, fine.spot(fine.places(end, true), actuator));
    }

    private void tell(double share) {
        watcher.accept(new Progress(share, best.of(Aim.UTILISATION)));
    }
}
