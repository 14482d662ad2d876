// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/**
 * Searches the zones of a design for the best mounts: a grid over all pins and actuators, then refinement to 0.1 mm, then the full
 * check of every answer. The result depends on design and seed alone, not on the number of threads.
 */
public final class Placer {
    private static final int BATCH = 32;

    private final int threads;
    private final long seed;
    private final long candidates;
    private final BooleanSupplier stop;
    private final Consumer<Progress> watcher;

    /**
     * A placer.
     *
     * @param threads 1 or more
     * @param seed of the refinement
     * @param candidates about how many places of the mounts the grid has
     * @param stop asked now and then; once true the best so far is the answer
     * @param watcher told how far it is
     */
    public Placer(int threads, long seed, long candidates, BooleanSupplier stop, Consumer<Progress> watcher) {
        this.threads = threads;
        this.seed = seed;
        this.candidates = candidates;
        this.stop = stop;
        this.watcher = watcher;
    }

    /**
     * The best mounts.
     *
     * @throws CannotComputeException when the design gives no zones, or cannot be computed
     */
    public Placement place(Design design) throws CannotComputeException {
        Task task = Task.of(design);
        double step = task.step(candidates);
        List<Vec2> frames = task.frame().places(step);
        List<Vec2> tanks = task.tank().places(step);
        List<Vec2> pivots = task.pivot().places(Math.max(2 * step, 0.01));
        if (frames.isEmpty() || tanks.isEmpty() || pivots.isEmpty()) {
            String which = frames.isEmpty() ? "frame-pin" : tanks.isEmpty() ? "tank-pin" : "pivot";
            throw new CannotComputeException(design.name() + ": mounts." + which
                    + ": no place is left in this zone: the keep-outs cover it, or no hole of its rows lies inside");
        }
        Best best = grid(task, pivots, tanks, frames);
        long looked = (long) frames.size()
                * tanks.size()
                * pivots.size()
                * task.judges().size();
        List<String> notes = new ArrayList<>();
        if (stop.getAsBoolean()) {
            notes.add("stopped before the end: this is the best so far");
        }
        if (best.all().isEmpty()) {
            List<String> misses = stop.getAsBoolean() ? List.of() : new NearMisses(task).say(pivots, tanks, frames);
            return new Placement(List.of(), misses, notes, looked, 0, step);
        }
        List<Spot> good = refine(task, best, step);
        List<Answer> answers = new Rechecker(task).answers(good, notes);
        return new Placement(answers, List.of(), notes, looked, best.fitting(), step);
    }

    private Best grid(Task task, List<Vec2> pivots, List<Vec2> tanks, List<Vec2> frames) {
        Best best = new Best(task.judges().size());
        ExecutorService pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "search");
            thread.setDaemon(true);
            return thread;
        });
        try {
            long done = 0;
            for (Vec2 pivot : pivots) {
                TiltLoads loads = task.loadsAt(pivot);
                for (int from = 0; from < tanks.size() && !stop.getAsBoolean(); from += BATCH * threads) {
                    int to = Math.min(tanks.size(), from + BATCH * threads);
                    for (Best found : batch(pool, task, loads, tanks.subList(from, to), frames)) {
                        best.merge(found);
                    }
                    done += to - from;
                    watcher.accept(new Progress(
                            (double) done / ((long) tanks.size() * pivots.size()), best.of(Aim.UTILISATION)));
                }
            }
        } finally {
            pool.shutdownNow();
        }
        return best;
    }

    /** One result for each tank pin, in their order. */
    private List<Best> batch(ExecutorService pool, Task task, TiltLoads loads, List<Vec2> tanks, List<Vec2> frames) {
        List<Future<List<Best>>> running = new ArrayList<>();
        int share = (tanks.size() + threads - 1) / threads;
        for (int from = 0; from < tanks.size(); from += share) {
            List<Vec2> mine = tanks.subList(from, Math.min(tanks.size(), from + share));
            running.add(pool.submit(() -> {
                Chunk chunk = new Chunk(task, loads);
                List<Best> found = new ArrayList<>();
                for (Vec2 tank : mine) {
                    found.add(chunk.run(tank, frames));
                }
                return found;
            }));
        }
        List<Best> all = new ArrayList<>();
        for (Future<List<Best>> part : running) {
            try {
                all.addAll(part.get());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return all;
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            }
        }
        return all;
    }

    /** The grid's best of each actuator and aim, moved to the best place near them. */
    private List<Spot> refine(Task task, Best best, double step) {
        Refiner refiner = new Refiner(task, seed);
        List<Spot> all = new ArrayList<>();
        for (int a = 0; a < task.judges().size(); a++) {
            for (Aim aim : Aim.values()) {
                Spot spot = best.of(a, aim);
                if (spot != null) {
                    all.add(aim == Aim.PRICE || stop.getAsBoolean() ? spot : refiner.refine(spot, aim, step));
                }
            }
        }
        return all;
    }
}
