// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.BiFunction;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.time.Timing;

/** One run of checks, with the dump in time beside them or without, which two threads may work off together: each check is made by one of them. */
final class SharedRun {
    private final List<Check> some;
    private final List<FutureTask<List<Finding>>> parts;

    /** Of some checks, on a machine that has worn as far as its design allows. */
    SharedRun(List<Check> some, Analysis analysis, Timing timing) {
        this(some, Worn.of(analysis), (check, worn) -> check.run(worn, timing));
    }

    /** The same of some that need no time. */
    SharedRun(List<Check> some, Analysis analysis) {
        this(some, Worn.of(analysis), Check::run);
    }

    private SharedRun(List<Check> some, Analysis worn, BiFunction<Check, Analysis, List<Finding>> made) {
        this.some = some;
        parts = some.stream()
                .map(c -> new FutureTask<>(() -> made.apply(c, worn)))
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

    /** What one of them has found. */
    List<Finding> findings(Check check) {
        return found(parts.get(some.indexOf(check)));
    }

    /** What a piece of work that has begun comes to; whatever it throws is thrown here. */
    static <T> T found(FutureTask<T> part) {
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
