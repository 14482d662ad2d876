// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import tipwright.analysis.CannotComputeException;

/** Pieces of work that two threads may do together: each piece is done by one of them. */
final class SharedTasks<T> {
    private final List<FutureTask<T>> parts;

    SharedTasks(List<Callable<T>> work) {
        parts = work.stream().map(FutureTask::new).toList();
    }

    /** Does those that nobody has begun, the last first; what goes wrong is thrown where the answer is asked for. */
    void help() {
        for (int i = parts.size() - 1; i >= 0; i--) {
            parts.get(i).run();
        }
    }

    /** What all of them come to, in their order: does those that nobody has begun and waits for the others. */
    List<T> all() {
        parts.forEach(FutureTask::run);
        List<T> all = new ArrayList<>(parts.size());
        for (FutureTask<T> part : parts) {
            all.add(found(part));
        }
        return all;
    }

    /** The same, with a second thread that helps. */
    List<T> allByTwo(String name) {
        if (parts.size() > 1) {
            SideThreads.start(name, this::help);
        }
        return all();
    }

    /** The same of work that may find that something cannot be computed. */
    List<T> answersByTwo(String name) throws CannotComputeException {
        return answer(() -> allByTwo(name));
    }

    /** What one of them has come to. */
    T get(int index) {
        return found(parts.get(index));
    }

    /** What a piece of work has thrown, to be thrown again; an error is thrown at once. */
    static RuntimeException fault(ExecutionException thrown) {
        if (thrown.getCause() instanceof Error error) {
            throw error;
        }
        return thrown.getCause() instanceof RuntimeException fault
                ? fault
                : new IllegalStateException(thrown.getCause());
    }

    /** The same of work that may find that something cannot be computed. */
    static <T> T answer(FutureTask<T> work) throws CannotComputeException {
        return answer(() -> found(work));
    }

    private static <T> T answer(Supplier<T> work) throws CannotComputeException {
        try {
            return work.get();
        } catch (IllegalStateException e) {
            if (e.getCause() instanceof CannotComputeException cannot) {
                throw cannot;
            }
            throw e;
        }
    }

    /** What a piece of work that has begun comes to; whatever it throws is thrown here. */
    static <T> T found(FutureTask<T> part) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return part.get();
                } catch (InterruptedException e) {
                    // the other thread is in the middle of this piece and will be done with it soon
                    interrupted = true;
                } catch (ExecutionException e) {
                    throw fault(e);
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
