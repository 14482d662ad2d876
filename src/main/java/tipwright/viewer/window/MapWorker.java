// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.SideThreads;
import tipwright.design.Design;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;

/** Works placement maps out in the background: first a coarse one, then, unless another has been asked for, a fine one, then one with gaps. */
final class MapWorker {
    private static final int COARSE = 28;
    private static final int FINE = 120;
    /** With all checks it takes many times as long. */
    private static final int CHECKED = 48;

    private final AtomicInteger newest = new AtomicInteger();
    private final Consumer<Answer> watcher;
    private final ExecutorService worker = SideThreads.queue("where it may go");

    /**
     * What has come of it.
     *
     * @param map null: there is none
     * @param fault why not; empty when there is one
     * @param last whether nothing finer will come for what was asked last
     * @param gaps whether gaps and all other checks are in it
     */
    record Answer(Pin pin, @Nullable PlacementMap map, String fault, boolean last, boolean gaps) {}

    /** Tells a watcher, on the window's thread. */
    MapWorker(Consumer<Answer> watcher) {
        this.watcher = watcher;
    }

    /** Asks for a map in place of any before. */
    void ask(Design design, Pin pin) {
        int mine = newest.incrementAndGet();
        worker.execute(() -> work(design, pin, mine));
    }

    private void work(Design design, Pin pin, int mine) {
        // a coarse map once begun is finished, so that something is shown however fast the questions come
        if (mine == newest.get()
                && tell(design, pin, COARSE, mine, false, () -> true)
                && tell(design, pin, FINE, mine, false, () -> mine == newest.get())) {
            tell(design, pin, CHECKED, mine, true, () -> mine == newest.get());
        }
    }

    private boolean tell(Design design, Pin pin, int across, int mine, boolean gaps, BooleanSupplier wanted) {
        PlacementMap map = null;
        String fault = "";
        try {
            map = gaps
                    ? PlacementMap.whole(design, PlacementMap.name(design, pin), across, wanted)
                    : PlacementMap.of(design, pin, across, wanted);
        } catch (CannotComputeException e) {
            fault = String.valueOf(e.getMessage());
        } catch (CancellationException e) {
            // another map was asked for, which is worked out next
            return false;
        }
        boolean last = map == null || across != COARSE;
        PlacementMap found = map;
        String why = fault;
        Platform.runLater(() -> watcher.accept(new Answer(pin, found, why, last && mine == newest.get(), gaps)));
        return map != null;
    }

    /** Forgets what was asked. */
    void cancel() {
        newest.incrementAndGet();
    }

    /** Ends with the window. */
    void end() {
        cancel();
        worker.shutdown();
    }
}
