// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.SideThreads;
import tipwright.design.Design;
import tipwright.placement.Placement;
import tipwright.placement.Placer;
import tipwright.placement.Progress;
import tipwright.quantity.UnitSystem;

/** Searches for the best places of the pins beside the window; what it finds does not depend on how it is watched. */
final class SearchWorker {
    private static final double TELLING = 0.03;
    private static final double NANO = 1e-9;

    private final Consumer<News> watcher;
    private AtomicBoolean stop = new AtomicBoolean(true);

    /**
     * How far it is, or what came of it.
     *
     * @param progress the latest; null before there is any
     * @param secondsLeft about, s; not a number as long as it cannot be told
     * @param found null: it still searches
     * @param fault why there is no answer; empty when there is one, or none yet
     */
    record News(@Nullable Progress progress, double secondsLeft, @Nullable Placement found, String fault) {
        boolean over() {
            return found != null || !fault.isEmpty();
        }
    }

    /** Tells a watcher, on the window's thread. */
    SearchWorker(Consumer<News> watcher) {
        this.watcher = watcher;
    }

    /** Starts in place of any search before; on marks of a tape. */
    void start(Design design, UnitSystem tape) {
        stop.set(true);
        AtomicBoolean mine = new AtomicBoolean();
        AtomicBoolean dropped = mine;
        stop = mine;
        SideThreads.start("search for places", () -> search(design, tape, dropped));
    }

    private void search(Design design, UnitSystem tape, AtomicBoolean mine) {
        long[] start = {System.nanoTime()};
        boolean[] again = {false};
        AtomicReference<@Nullable News> latest = new AtomicReference<>();
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        Placer placer = new Placer(threads, 1, null, mine::get, progress -> {
            if (progress.again() && !again[0]) {
                start[0] = System.nanoTime();
                again[0] = true;
            }
            double seconds = NANO * (System.nanoTime() - start[0]);
            double left = progress.share() < TELLING ? Double.NaN : seconds * (1 / progress.share() - 1);
            // one in the queue at a time: the window is never flooded
            if (latest.getAndSet(new News(progress, left, null, "")) == null) {
                Platform.runLater(() -> tell(latest.getAndSet(null), mine));
            }
        });
        News end;
        try {
            end = new News(null, 0, placer.place(design, tape), "");
        } catch (CannotComputeException e) {
            end = new News(null, 0, null, String.valueOf(e.getMessage()));
        }
        News last = end;
        Platform.runLater(() -> tell(last, mine));
    }

    private void tell(@Nullable News news, AtomicBoolean mine) {
        if (news != null && mine == stop) {
            watcher.accept(news);
        }
    }

    /** Ends the search with the best so far. */
    void stop() {
        stop.set(true);
    }

    /** Ends it and forgets what it finds. */
    void end() {
        stop.set(true);
        stop = new AtomicBoolean(true);
    }
}
