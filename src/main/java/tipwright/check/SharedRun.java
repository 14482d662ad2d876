// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.time.Timing;

/** One run of checks with the dump in time beside them, which two threads may work off together: each check is made by one of them. */
final class SharedRun {
    private final List<FutureTask<List<Finding>>> parts;

    /** Of some checks, on a machine that has worn as far as its design allows. */
    SharedRun(List<Check> some, Analysis analysis, Timing timing) {
        Analysis worn = Worn.of(analysis);
        parts = some.stream()
                .map(c -> new FutureTask<>(() -> c.run(worn, timing)))
                .toList();
    }

    /** Makes those that nobody has begun, the last first; what goes wrong is thrown where the findings are asked for. */
    void help() {
        for (int i = parts.size() - 1; i >= 0; i--) {
            parts.get(i).run();
        }
    }

    /** What all of them find, in their order: makes those that nobody has begun and waits for the others. */
    List<Finding> findings() {
        parts.forEach(FutureTask::run);
        List<Finding> all = new ArrayList<>();
        for (FutureTask<List<Finding>> part : parts) {
            all.addAll(found(part));
        }
        return all;
    }

    private static List<Finding> found(FutureTask<List<Finding>> part) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return part.get();
                } catch (InterruptedException e) {
                    // the other thread is in the middle of this check and will be done with it soon
                    interrupted = true;
                } catch (ExecutionException e) {
                    if (e.getCause() instanceof Error error) {
                        throw error;
                    }
                    if (e.getCause() instanceof RuntimeException fault) {
                        throw fault;
                    }
                    throw new IllegalStateException(e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
