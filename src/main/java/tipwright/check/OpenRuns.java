// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import tipwright.check.rule.Finding;

/** Runs of checks that one thread begins, one after the other, and a second one that is done with its own work may help with. */
final class OpenRuns {
    /** Empty: there will be no more. */
    private final BlockingQueue<Optional<SharedRun>> begun = new LinkedBlockingQueue<>();

    /** What a run finds: whoever helps may take checks of it meanwhile. */
    List<Finding> findings(SharedRun run) {
        begun.add(Optional.of(run));
        return run.findings();
    }

    /** Begins no more; whoever helps is let go. */
    void end() {
        begun.add(Optional.empty());
    }

    /** Helps with what is begun until the other thread has ended. */
    void help() {
        try {
            for (Optional<SharedRun> run = begun.take(); run.isPresent(); run = begun.take()) {
                run.get().help();
            }
        } catch (InterruptedException e) {
            // the runs are done without help
            Thread.currentThread().interrupt();
        }
    }
}
