// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/**
 * An analysed design with its findings.
 *
 * @param analysis forces over the tilts
 * @param findings of the checks, the worst first, what was not checked last
 * @param later in words, the checks that wait until nothing is being moved, because they take too long for every frame
 */
public record Solved(Analysis analysis, List<Finding> findings, List<String> later) {
    /** Copies the list. */
    public Solved {
        findings = List.copyOf(findings);
        later = List.copyOf(later);
    }

    /**
     * Solves a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static Solved of(Design design) throws CannotComputeException {
        return of(Analyser.analyse(design), false);
    }

    /**
     * Solves it again with its mechanism elsewhere, while that is being moved: the slow checks wait.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    Solved moved(Design design) throws CannotComputeException {
        return of(Analyser.again(design, analysis), true);
    }

    private static Solved of(Analysis analysis, boolean moving) throws CannotComputeException {
        List<Finding> found =
                moving ? Checks.quick(analysis) : Checker.asFilled(analysis).findings();
        return new Solved(analysis, found.stream().sorted(worstFirst()).toList(), moving ? waiting() : List.of());
    }

    private static List<String> waiting() {
        Stream<String> slow = Checks.all().stream()
                .filter(c -> c.traits().contains(Trait.SLOW))
                .map(c -> c.title().toLowerCase(Locale.ROOT));
        return Stream.concat(slow, Stream.of("all that takes time or part fills into account"))
                .toList();
    }

    /**
     * The same with the slow checks made too; takes long, and may be asked for on any thread.
     *
     * @throws CannotComputeException when one of them meets something that cannot be computed
     */
    public Solved whole() throws CannotComputeException {
        return later.isEmpty() ? this : of(analysis, false);
    }

    /** The design. */
    public Design design() {
        return analysis.design();
    }

    private static Comparator<Finding> worstFirst() {
        return Comparator.comparingInt((Finding f) -> switch (f.verdict()) {
                    case FAIL -> 0;
                    case CLOSE -> 1;
                    case PASS -> 2;
                    case NOT_CHECKED -> 3;
                })
                .thenComparingDouble(f -> Double.isNaN(f.utilisation()) ? 0 : -f.utilisation());
    }

    /** The worst of all findings; what was not checked does not count. */
    public Verdict verdict() {
        Verdict first = findings.isEmpty() ? Verdict.PASS : findings.get(0).verdict();
        return first == Verdict.NOT_CHECKED ? Verdict.PASS : first;
    }
}
