// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import tipwright.check.SideThreads;

/** Threads that work for one search; results come back in the order in which the work was given. */
final class WorkerPool implements AutoCloseable {
    private final ExecutorService pool;
    private final BooleanSupplier stop;

    WorkerPool(int threads, BooleanSupplier stop) {
        this.stop = stop;
        pool = Executors.newFixedThreadPool(threads, SideThreads.named("search"));
    }

    /** Whether to end with the best so far. */
    boolean stopped() {
        return stop.getAsBoolean();
    }

    /** Does all of the work. */
    <T> List<T> all(List<Callable<T>> work) {
        List<Future<T>> running = new ArrayList<>();
        for (Callable<T> one : work) {
            running.add(pool.submit(one));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> one : running) {
            try {
                results.add(one.get());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("the search was interrupted", e);
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            }
        }
        return results;
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
