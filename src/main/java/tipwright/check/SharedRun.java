// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.time.Timing;

/** One run of checks, with the dump in time beside them or without, which two threads may work off together: each piece is done by one of them. */
final class SharedRun {
    private final List<Check> some;
    /** Where the pieces of each check begin, and where the last one ends. */
    private final int[] from;

    private final SharedTasks<List<Finding>> parts;

    /**
     * Of some checks, on a machine that has worn as far as its design allows.
     *
     * @param timing the dump in time, asked for by each check when it is made
     */
    SharedRun(List<Check> some, Analysis analysis, Supplier<Timing> timing) {
        this(some, Worn.of(analysis), (check, worn) -> check.pieces(worn, timing));
    }

    /** The same of some that need no time. */
    SharedRun(List<Check> some, Analysis analysis) {
        this(some, Worn.of(analysis), Check::pieces);
    }

    private SharedRun(
            List<Check> some, Analysis worn, BiFunction<Check, Analysis, List<Supplier<List<Finding>>>> pieces) {
        this.some = some;
        from = new int[some.size() + 1];
        List<Callable<List<Finding>>> all = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            for (Supplier<List<Finding>> piece : pieces.apply(some.get(i), worn)) {
                all.add(piece::get);
            }
            from[i + 1] = all.size();
        }
        parts = new SharedTasks<>(all);
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
        int i = some.indexOf(check);
        return IntStream.range(from[i], from[i + 1])
                .mapToObj(parts::get)
                .flatMap(List::stream)
                .toList();
    }
}
