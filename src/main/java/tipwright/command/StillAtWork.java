// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.time.Duration;
import tipwright.check.SideThreads;

/** Tells a person who waits that the program is still at work: after two seconds, then each time twice as late. */
final class StillAtWork implements AutoCloseable {
    private static final Duration FIRST = Duration.ofSeconds(2);
    private static final int MOST = 20;

    private final PrintWriter err;
    private final Duration first;
    private final Thread thread;

    private StillAtWork(PrintWriter err, Duration first) {
        this.err = err;
        this.first = first;
        thread = SideThreads.named("still-at-work").newThread(this::tell);
    }

    /**
     * Starts.
     *
     * @param watched whether a person looks at the error output; nothing is told otherwise
     */
    static StillAtWork on(PrintWriter err, boolean watched) {
        return on(err, watched, FIRST);
    }

    static StillAtWork on(PrintWriter err, boolean watched, Duration first) {
        StillAtWork told = new StillAtWork(err, first);
        if (watched) {
            told.thread.start();
        }
        return told;
    }

    private void tell() {
        try {
            Duration past = Duration.ZERO;
            Duration next = first;
            for (int i = 0; i < MOST; i++) {
                Thread.sleep(next.minus(past).toMillis());
                String why = i == 0 ? "; a mesh of many triangles or a fine tilt step takes long" : "";
                err.println("tipwright: still at work after " + next.toSeconds() + " s" + why);
                err.flush();
                past = next;
                next = next.multipliedBy(2);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Tells no more. */
    void stop() {
        thread.interrupt();
    }

    @Override
    public void close() {
        stop();
    }
}
