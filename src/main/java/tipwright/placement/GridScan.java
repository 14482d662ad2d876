// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;

/** The first look at a drive of a closed form: a grid over all of its places, most of which the lanes turn down. */
final class GridScan {
    /** Tank pins in a batch, and in a piece of work: the same on any number of threads, for the answer to be the same. */
    private static final int BATCH = 32;

    private static final int PIECE = 4;

    private final Task task;
    private final CandidateEvaluator few;
    private final CandidateEvaluator every;
    private final CandidateCost cost;
    private final List<LaneBounds> bounds = new ArrayList<>();
    private final int[] same;
    private final PinRegion frame;
    private final PinRegion tank;
    private final PinRegion pivot;
    private final double step;

    /**
     * A scan.
     *
     * @param few the evaluator at some tilts, and every at all of them
     * @param candidates about how many places of the mounts are looked at
     */
    GridScan(Task task, CandidateEvaluator few, CandidateEvaluator every, CandidateCost cost, long candidates) {
        this.task = task;
        this.few = few;
        this.every = every;
        this.cost = cost;
        Design design = task.design();
        for (ListedActuator listed : task.listed()) {
            bounds.add(new LaneBounds(design, listed));
        }
        same = IntStream.range(0, bounds.size()).map(this::firstAlike).toArray();
        Vec2 axis = design.pivot().at();
        Strut strut = design.drive().skeleton(axis).actuator();
        frame = ground(strut.onA());
        tank = ground(strut.onB());
        pivot = ground(axis);
        step = step(candidates);
    }

    private PinRegion ground(Vec2 drawn) {
        for (PinRegion ground : task.grounds()) {
            if (ground.drawn().equals(drawn)) {
                return ground;
            }
        }
        return new PinRegion(null, drawn, List.of(), 0);
    }

    /**
     * A place of the pivot.
     *
     * @param kernels [actuator]
     */
    record Pivot(Vec2 at, List<Kernel> kernels) {}

    private Pivot pivotAt(Vec2 at) throws CannotComputeException {
        Design moved = task.design().withPivot(task.design().pivot().movedTo(at));
        TiltLoads loads = TiltLoads.of(moved, every.loads());
        List<Kernel> kernels = new ArrayList<>();
        for (int i = 0; i < bounds.size(); i++) {
            kernels.add(
                    same[i] < i
                            ? kernels.get(same[i])
                            : new Kernel(loads, bounds.get(i).pinRadii()));
        }
        return new Pivot(at, kernels);
    }

    /** First actuator with the same friction in the pins: they share the closed form. */
    int sameAs(int i) {
        return same[i];
    }

    private int firstAlike(int i) {
        int k = 0;
        while (!Arrays.equals(bounds.get(k).pinRadii(), bounds.get(i).pinRadii())) {
            k++;
        }
        return k;
    }

    Task task() {
        return task;
    }

    List<LaneBounds> bounds() {
        return bounds;
    }

    CandidateEvaluator few() {
        return few;
    }

    CandidateEvaluator every() {
        return every;
    }

    CandidateCost cost() {
        return cost;
    }

    /** How many places of the mounts, times the actuators, are looked at in all. */
    long whole() {
        return Math.round(count(step) * bounds.size());
    }

    /** Of the grid, m. */
    double step() {
        return step;
    }

    /** Writes the task's places of a candidate, m [place]. */
    void places(Vec2 framePin, Vec2 tankPin, Vec2 axis, List<Vec2> out) {
        for (PinRegion ground : task.grounds()) {
            out.add(ground.equals(frame) ? framePin : ground.equals(tank) ? tankPin : axis);
        }
    }

    /**
     * Fills in the best; how many places of the mounts, times the actuators, were looked at.
     *
     * @throws CannotComputeException when the tank cannot be computed over the whole tilt
     */
    long run(WorkerPool pool, Shortlist best, Consumer<Progress> watcher) throws CannotComputeException {
        List<Vec2> frames = frame.places(step);
        List<Vec2> tanks = tank.places(step);
        List<Vec2> pivots = pivot.places(pivotStep(step));
        long done = 0;
        for (Vec2 at : pivots) {
            Pivot here = pivotAt(at);
            for (int from = 0; from < tanks.size() && !pool.stopped(); from += BATCH) {
                int to = Math.min(tanks.size(), from + BATCH);
                for (Shortlist found : pool.all(batch(here, tanks.subList(from, to), frames, best))) {
                    best.merge(found);
                }
                done += to - from;
                watcher.accept(
                        new Progress((double) done / ((long) tanks.size() * pivots.size()), best.of(Aim.UTILISATION)));
            }
        }
        return done * frames.size() * bounds.size();
    }

    /** Pieces of work that do not depend on the number of threads; each starts from the best before the batch. */
    private List<Callable<Shortlist>> batch(Pivot here, List<Vec2> tanks, List<Vec2> frames, Shortlist before) {
        List<Callable<Shortlist>> work = new ArrayList<>();
        for (int from = 0; from < tanks.size(); from += PIECE) {
            List<Vec2> mine = tanks.subList(from, Math.min(tanks.size(), from + PIECE));
            Shortlist start = before.copy();
            work.add(() -> {
                Chunk chunk = new Chunk(this, here, start);
                chunk.run(mine, frames);
                return chunk.best();
            });
        }
        return work;
    }

    private static double pivotStep(double step) {
        return Math.max(2 * step, 0.01);
    }

    /** The coarsest grid step that still gives no more than a number of candidates, m. */
    private double step(long candidates) {
        double fine = 0.2;
        while (fine > 0.001 && count(fine * 0.93) <= candidates) {
            fine *= 0.93;
        }
        return fine;
    }

    private double count(double fine) {
        return (double) frame.places(fine).size()
                * tank.places(fine).size()
                * pivot.places(pivotStep(fine)).size();
    }
}
