// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/**
 * A verdict in its two halves. A finding that depends on the load is in both: each half has it where it is worst among the loads and tilts
 * that belong there, and one of them is the finding itself.
 *
 * @param normal all goes as meant
 * @param fault something goes wrong
 * @param skipped load cases by name, and troubles in words, that the design says do not happen
 */
public record Parts(Part normal, Part fault, List<String> skipped) {
    /** Copies the list. */
    public Parts {
        skipped = List.copyOf(skipped);
    }

    /** Both halves of what the checks found. */
    public static Parts of(Analysis analysis, List<Finding> findings) {
        Halves normal = new Halves(Occasion.NORMAL.of(analysis));
        Halves fault = new Halves(Occasion.FAULT.of(analysis));
        List<Finding> usual = new ArrayList<>();
        List<Finding> wrong = new ArrayList<>();
        for (Finding f : findings) {
            Optional<Check> made = Checks.of(f);
            Occasion when = made.map(c -> Occasion.of(f, c, analysis)).orElse(Occasion.NORMAL);
            (when == Occasion.NORMAL ? usual : wrong).add(f);
            made.filter(c -> f.loadCase() != null && twofold(c))
                    .flatMap(c -> (when == Occasion.NORMAL ? fault : normal).twin(c, f))
                    .ifPresent((when == Occasion.NORMAL ? wrong : usual)::add);
        }
        return new Parts(new Part(Occasion.NORMAL, usual), new Part(Occasion.FAULT, wrong), skipped(analysis.design()));
    }

    private static List<String> skipped(Design design) {
        List<String> all = new ArrayList<>(design.cases().skip());
        design.whatIf().never().forEach(t -> all.add(t.words()));
        return all;
    }

    /** Both. */
    public List<Part> both() {
        return List.of(normal, fault);
    }

    /** Whether a check looks at the load cases alone, so that it can look at some of them. */
    private static boolean twofold(Check check) {
        return !check.traits().contains(Trait.ABOUT_FAULT)
                && !check.traits().contains(Trait.NEEDS_TIME)
                && !check.traits().contains(Trait.OVER_ALL_TILTS)
                && !check.traits().contains(Trait.SLOW);
    }

    /** Runs checks on one half; each once. */
    private static final class Halves {
        private final Analysis analysis;
        private final Map<String, List<Finding>> known = new HashMap<>();

        Halves(Analysis analysis) {
            this.analysis = analysis;
        }

        /** The finding of the same part; empty when nothing of it belongs here. */
        Optional<Finding> twin(Check check, Finding finding) {
            if (analysis.cases().isEmpty()) {
                return Optional.empty();
            }
            return known.computeIfAbsent(check.id(), id -> check.run(analysis)).stream()
                    .filter(f -> f.id().equals(finding.id()) && f.verdict() != Verdict.NOT_CHECKED)
                    .findFirst();
        }
    }
}
