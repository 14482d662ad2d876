// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/**
 * What is known of a design before its dump in time has been worked out.
 *
 * @param analysis forces over the tilts
 * @param findings of the checks that need no time
 */
public record Early(Analysis analysis, List<Finding> findings) {
    /** How long a person is left without a word. */
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    /** Copies the list. */
    public Early {
        findings = List.copyOf(findings);
    }

    /** Whether something fails that the dump in time cannot mend. */
    public boolean fails() {
        return certain().anyMatch(f -> f.verdict() == Verdict.FAIL);
    }

    /** The findings that the dump in time leaves as they are. */
    public Stream<Finding> certain() {
        return findings.stream().filter(f -> Checks.of(f)
                .map(c -> !c.traits().contains(Trait.BETTER_IN_TIME))
                .orElse(true));
    }

    /**
     * Who is told, and when.
     *
     * @param patience how long the rest may take before they are told
     * @param told by the thread that asked for the check, at most once, before the check ends
     * @param timer works out the dump in time
     */
    public record Listener(Duration patience, Consumer<Early> told, Function<Analysis, Timing> timer) {
        /** After two seconds. */
        public static Listener of(Consumer<Early> told) {
            return new Listener(PATIENCE, told, CycleTimer::time);
        }
    }
}
