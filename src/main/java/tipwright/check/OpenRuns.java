// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import tipwright.check.rule.Finding;

/** Runs of checks and other work that one thread begins, one after the other, and a second one that is done with its own may help with. */
final class OpenRuns {
    /** Empty: there will be no more. */
    private final BlockingQueue<Optional<Runnable>> begun = new LinkedBlockingQueue<>();

    /** What a run finds: whoever helps may take checks of it meanwhile. */
    List<Finding> findings(SharedRun run) {
        offer(run::help);
        return run.findings();
    }

    /** Whoever helps may do this, if nobody else has. */
    void offer(Runnable work) {
        begun.add(Optional.of(work));
    }

    /** Begins no more; whoever helps is let go. */
    void end() {
        begun.add(Optional.empty());
    }

    /** Helps with what is begun until the other thread has ended. */
    void help() {
        try {
            for (Optional<Runnable> work = begun.take(); work.isPresent(); work = begun.take()) {
                work.get().run();
            }
        } catch (InterruptedException e) {
            // the runs are done without help
            Thread.currentThread().interrupt();
        }
    }
}
