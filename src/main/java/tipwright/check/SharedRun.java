// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.time.Timing;

/** One run of checks, with the dump in time beside them or without, which two threads may work off together: each check is made by one of them. */
final class SharedRun {
    private final List<Check> some;
    private final SharedTasks<List<Finding>> parts;

    /**
     * Of some checks, on a machine that has worn as far as its design allows.
     *
     * @param timing the dump in time, asked for by each check when it is made
     */
    SharedRun(List<Check> some, Analysis analysis, Supplier<Timing> timing) {
        this(some, Worn.of(analysis), (check, worn) -> check.run(worn, timing.get()));
    }

    /** The same of some that need no time. */
    SharedRun(List<Check> some, Analysis analysis) {
        this(some, Worn.of(analysis), Check::run);
    }

    private SharedRun(List<Check> some, Analysis worn, BiFunction<Check, Analysis, List<Finding>> made) {
        this.some = some;
        parts = new SharedTasks<>(some.stream()
                .map(c -> (Callable<List<Finding>>) () -> made.apply(c, worn))
                .toList());
    }

    /** Makes those that nobody has begun. */
    void help() {
        parts.help();
    }

    /** What all of them find, in their order: makes those that nobody has begun and waits for the others. */
    List<Finding> findings() {
        return parts.all().stream().flatMap(List::stream).toList();
    }

    /** What one of them has found. */
    List<Finding> findings(Check check) {
        return parts.get(some.indexOf(check));
    }
}
