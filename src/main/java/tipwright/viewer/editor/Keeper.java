// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import tipwright.check.SideThreads;

/**
 * Keeps unsaved work on the disk beside the window, since a disk may take its time. Of several texts in a row only the last is written;
 * whatever was asked for last is what is there in the end, when the program is told to stop too.
 */
final class Keeper {
    /** For a disk that does not answer, s. */
    private static final long PATIENCE = 10;

    private final Recovery recovery;
    private final ExecutorService queue = SideThreads.queue("unsaved work");
    /** What is still to be written; null: nothing. An empty one takes away what is there. */
    private final AtomicReference<@Nullable Optional<String>> next = new AtomicReference<>();

    private final ReentrantLock writing = new ReentrantLock();
    private final Thread atEnd = new Thread(this::write, "last of the unsaved work");

    Keeper(Recovery recovery) {
        this.recovery = recovery;
        hook(() -> Runtime.getRuntime().addShutdownHook(atEnd));
    }

    private static void hook(Runnable change) {
        try {
            change.run();
        } catch (IllegalStateException e) {
            // the program is stopping already: what is kept is written at once then, or by the hook that runs
            return;
        }
    }

    /** Keeps a text soon; null: there is nothing to keep. */
    void keep(@Nullable String text) {
        next.set(Optional.ofNullable(text));
        try {
            queue.execute(this::write);
        } catch (RejectedExecutionException e) {
            write();
        }
    }

    private void write() {
        // one after the other, so that what is older never comes to lie over what is newer
        writing.lock();
        try {
            Optional<String> last = next.getAndSet(null);
            if (last != null) {
                recovery.keep(last.orElse(null));
            }
        } finally {
            writing.unlock();
        }
    }

    /** Waits until all of it is on the disk. */
    void settle() {
        try {
            queue.submit(this::write).get(PATIENCE, TimeUnit.SECONDS);
        } catch (RejectedExecutionException e) {
            write();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            System.err.println("tipwright: unsaved work may not be kept safe: the disk does not answer");
        }
    }

    /** Ends with the window, with all of it on the disk. */
    void end() {
        settle();
        if (!queue.isShutdown()) {
            queue.shutdown();
            hook(() -> Runtime.getRuntime().removeShutdownHook(atEnd));
        }
    }
}
