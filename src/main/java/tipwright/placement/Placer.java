// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.quantity.UnitSystem;

/**
 * Searches the zones of a design for the best mounts, then refines to 0.1 mm and checks every answer in full. The result depends on
 * design, seed and number of candidates alone, not on the number of threads.
 */
public final class Placer {
    private final int threads;
    private final long seed;
    private final @Nullable Long candidates;
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
        return place(design, CandidateEngine.of(design));
    }

    /**
     * The best mounts on whole marks of a tape, and checked there.
     *
     * @throws CannotComputeException when the design gives no zones, or cannot be computed
     */
    public Placement place(Design design, UnitSystem tape) throws CannotComputeException {
        return place(Task.of(design).onMarks(tape), CandidateEngine.of(design));
    }

    private Placement place(Task task, CandidateEngine engine) throws CannotComputeException {
        try (WorkerPool pool = new WorkerPool(threads, stop)) {
            return new Search(pool, task, engine, seed, candidates, watcher).place();
        }
    }

    /** The best mounts by one of the engines. */
    Placement place(Design design, CandidateEngine engine) throws CannotComputeException {
        return place(Task.of(design), engine);
    }
}
