// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.geometry.Vec2;

/**
 * Searches the zones of a design for the best mounts: a grid over all pins and actuators, then refinement to 0.1 mm, then the full
 * check of every answer. The result depends on design and seed alone, not on the number of threads.
 */
public final class Placer {
    /** Tank pins in a batch, and in a piece of work: the same on any number of threads, for the answer to be the same. */
    static final String BEST_SO_FAR = "stopped before the end: this is the best so far";

    private static final int BATCH = 32;

    private static final int PIECE = 4;
    private static final long CANDIDATES = 2_000_000;

    private final int threads;
    private final long seed;
    private final @Nullable Long given;
    private final BooleanSupplier stop;
    private final Consumer<Progress> watcher;

    /**
     * A placer.
     *
     * @param threads 1 or more
     * @param seed of the refinement
     * @param candidates about how many places of the mounts are looked at; null: two million of a straight drive, twenty
     *     thousand of another mechanism
     * @param stop asked now and then; once true the best so far is the answer
     * @param watcher told how far it is
     */
    public Placer(int threads, long seed, @Nullable Long candidates, BooleanSupplier stop, Consumer<Progress> watcher) {
        this.threads = threads;
        this.seed = seed;
        given = candidates;
        this.stop = stop;
        this.watcher = watcher;
    }

    /**
     * The best mounts.
     *
     * @throws CannotComputeException when the design gives no zones, or cannot be computed
     */
    public Placement place(Design design) throws CannotComputeException {
        if (!(design.drive() instanceof Straight)) {
            return any(design);
        }
        Task task = Task.of(design);
        double step = task.step(given == null ? CANDIDATES : given);
        List<Vec2> frames = task.frame().places(step);
        List<Vec2> tanks = task.tank().places(step);
        List<Vec2> pivots = task.pivot().places(Math.max(2 * step, 0.01));
        if (frames.isEmpty() || tanks.isEmpty() || pivots.isEmpty()) {
            String which = frames.isEmpty() ? "frame-pin" : tanks.isEmpty() ? "tank-pin" : "pivot";
            throw new CannotComputeException(design.name() + ": mounts." + which
                    + ": no place is left in this zone: the keep-outs cover it, or no hole of its rows lies inside");
        }
        List<String> notes = new ArrayList<>();
        try (Crew crew = new Crew(threads, stop)) {
            Best best = new Best(task.judges().size());
            long pairs = grid(crew, task, pivots, tanks, frames, best);
            long looked = pairs * frames.size() * task.judges().size();
            long whole = (long) pivots.size()
                    * tanks.size()
                    * frames.size()
                    * task.judges().size();
            if (best.of(Aim.UTILISATION) == null) {
                List<String> misses = crew.stopped() ? List.of() : new NearMisses(task).say(pivots, tanks, frames);
                return new Placement(List.of(), misses, notes, looked, 0, step, whole, crew.stopped());
            }
            List<Answer> answers =
                    new Finish(task.design(), () -> new Refiner(task, seed, step)).answers(best, crew, notes);
            boolean stopped = crew.stopped();
            if (stopped && !answers.isEmpty()) {
                notes.add(0, BEST_SO_FAR);
            }
            return new Placement(answers, List.of(), notes, looked, best.fitting(), step, whole, stopped);
        }
    }

    /** The best mounts of any mechanism, a straight drive too, by the general analysis. */
    Placement any(Design design) throws CannotComputeException {
        try (Crew crew = new Crew(threads, stop)) {
            return new AnyPlacer(crew, design, seed, given == null ? AnyPlacer.CANDIDATES : given, watcher).place();
        }
    }

    /** Fills in the best; how many pairs of pivot and tank pin were looked at. */
    private long grid(Crew crew, Task task, List<Vec2> pivots, List<Vec2> tanks, List<Vec2> frames, Best best) {
        long done = 0;
        for (Vec2 pivot : pivots) {
            TiltLoads loads = task.loadsAt(pivot);
            for (int from = 0; from < tanks.size() && !crew.stopped(); from += BATCH) {
                int to = Math.min(tanks.size(), from + BATCH);
                for (Best found : crew.all(batch(task, loads, tanks.subList(from, to), frames, best.copy()))) {
                    best.merge(found);
                }
                done += to - from;
                watcher.accept(
                        new Progress((double) done / ((long) tanks.size() * pivots.size()), best.of(Aim.UTILISATION)));
            }
        }
        return done;
    }

    /** Pieces of work that do not depend on the number of threads; each starts from the best before the batch. */
    private static List<Callable<Best>> batch(
            Task task, TiltLoads loads, List<Vec2> tanks, List<Vec2> frames, Best before) {
        List<Callable<Best>> work = new ArrayList<>();
        for (int from = 0; from < tanks.size(); from += PIECE) {
            List<Vec2> mine = tanks.subList(from, Math.min(tanks.size(), from + PIECE));
            work.add(() -> {
                Chunk chunk = new Chunk(task, loads, before.copy());
                for (Vec2 tank : mine) {
                    chunk.run(tank, frames);
                }
                return chunk.best();
            });
        }
        return work;
    }
}
