// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.time.Timing;

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

    /** Both halves of what the checks found of a machine, as worn as its design allows. */
    public static Parts of(Analysis analysis, @Nullable Timing timing, List<Finding> findings) {
        Analysis worn = Worn.of(analysis);
        Halves normal = new Halves(Occasion.NORMAL.of(worn));
        Halves fault = new Halves(Occasion.FAULT.of(worn));
        TimedHalves timed = new TimedHalves(worn, timing);
        prepare(findings, analysis, timed, normal, fault);
        List<Finding> usual = new ArrayList<>();
        List<Finding> wrong = new ArrayList<>();
        for (Finding f : findings) {
            Check check = Checks.of(f).orElse(null);
            Occasion when = check == null
                    ? Occasion.NORMAL
                    : timed.splits(check) ? timed.of(f, check) : Occasion.of(f, check, analysis);
            List<Finding> its = when == Occasion.NORMAL ? usual : wrong;
            List<Finding> others = when == Occasion.NORMAL ? wrong : usual;
            its.add(f);
            if (check != null && timed.splits(check)) {
                others.addAll(timed.twins(f, check, when));
            } else if (check != null && f.loadCase() != null && twofold(check)) {
                (when == Occasion.NORMAL ? fault : normal).twin(check, f).ifPresent(others::add);
            }
        }
        return new Parts(new Part(Occasion.NORMAL, usual), new Part(Occasion.FAULT, wrong), skipped(analysis.design()));
    }

    /** Runs whatever will be asked for, on two threads. */
    private static void prepare(
            List<Finding> findings, Analysis analysis, TimedHalves timed, Halves normal, Halves fault) {
        Map<String, Callable<Runnable>> work = new LinkedHashMap<>();
        for (Finding f : findings) {
            Check check = Checks.of(f).orElse(null);
            if (check == null) {
                continue;
            }
            if (timed.splits(check)) {
                if (f.verdict() != Verdict.NOT_CHECKED) {
                    for (Occasion when : Occasion.values()) {
                        work.put(check.id() + when, () -> timed.run(check, when));
                    }
                }
            } else if (f.loadCase() != null && twofold(check)) {
                boolean usual = Occasion.of(f, check, analysis) == Occasion.NORMAL;
                work.put(check.id() + usual, () -> (usual ? fault : normal).run(check));
            }
        }
        new SharedTasks<>(List.copyOf(work.values())).allByTwo("check").forEach(Runnable::run);
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

    /** What checks find on one half; each is run once. */
    private static final class Halves {
        private final Analysis analysis;
        private final Map<String, List<Finding>> known = new HashMap<>();

        Halves(Analysis analysis) {
            this.analysis = analysis;
        }

        /** The finding of the same part, of a check that was run; empty when nothing of it belongs here. */
        Optional<Finding> twin(Check check, Finding finding) {
            return Objects.requireNonNull(known.get(check.id())).stream()
                    .filter(f -> f.id().equals(finding.id()) && f.verdict() != Verdict.NOT_CHECKED)
                    .findFirst();
        }

        /** Runs a check; what comes back keeps what it found. */
        Runnable run(Check check) {
            List<Finding> found = analysis.cases().isEmpty() ? List.of() : check.run(analysis);
            return () -> known.put(check.id(), found);
        }
    }
}
