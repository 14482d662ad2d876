// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.load.LoadCase;
import tipwright.time.Timing;

/**
 * What checks find that need the dump in time, in both halves of a verdict: with the outlet shut beyond the tilt at which it opens, a
 * dump belongs to what goes wrong.
 */
final class TimedHalves {
    /** Two utilisations nearer than this, as a share, are one. */
    private static final double SAME = 1e-9;

    private final Analysis analysis;
    private final @Nullable Timing normal;
    private final @Nullable Timing fault;
    private final Map<String, List<Finding>> known = new HashMap<>();

    TimedHalves(Analysis analysis, @Nullable Timing timing) {
        this.analysis = analysis;
        boolean known = timing != null && timing.dump() != null;
        this.normal = known && timing != null ? timing.half(true, this::normalTo) : null;
        this.fault = known && timing != null ? timing.half(false, this::normalTo) : null;
    }

    private double normalTo(String load) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(load))
                .findFirst()
                .map(c -> c.load().normalTo())
                .orElse(LoadCase.ALWAYS);
    }

    /** Whether what a check finds depends on the dump in time, which is known, and may belong to either half. */
    boolean splits(Check check) {
        boolean timed =
                check.traits().contains(Trait.NEEDS_TIME) || check.traits().contains(Trait.BETTER_IN_TIME);
        boolean one =
                check.traits().contains(Trait.ABOUT_FAULT) || check.traits().contains(Trait.OF_NORMAL_DUMP);
        return normal != null && timed && !one;
    }

    /**
     * The half that a finding belongs to: the normal one when the normal dump alone gives the same. What neither half gives alike, found
     * in a wind, goes by where it is worst.
     */
    Occasion of(Finding finding, Check check) {
        if (finding.verdict() == Verdict.NOT_CHECKED || gives(Occasion.NORMAL, finding, check)) {
            return Occasion.NORMAL;
        }
        boolean wrong = finding.loadCase() == null || gives(Occasion.FAULT, finding, check);
        return wrong ? Occasion.FAULT : Occasion.of(finding, check, analysis);
    }

    private boolean gives(Occasion when, Finding finding, Check check) {
        return found(check, when).stream()
                .filter(f -> f.id().equals(finding.id()) && f.verdict() == finding.verdict())
                .anyMatch(f -> !Double.isFinite(finding.utilisation())
                        || f.utilisation() >= finding.utilisation() * (1 - SAME));
    }

    /** What the other half has of a finding's part; where it has another part in its place, of that. */
    List<Finding> twins(Finding finding, Check check, Occasion when) {
        if (finding.verdict() == Verdict.NOT_CHECKED) {
            return List.of();
        }
        Occasion other = when == Occasion.NORMAL ? Occasion.FAULT : Occasion.NORMAL;
        List<Finding> all = new ArrayList<>();
        for (Finding f : found(check, other)) {
            boolean its =
                    f.id().equals(finding.id()) || !found(check, when).stream().anyMatch(g -> g.id().equals(f.id()));
            boolean told = other == Occasion.NORMAL || f.loadCase() != null;
            if (its && told && f.verdict() != Verdict.NOT_CHECKED) {
                all.add(f);
            }
        }
        return all;
    }

    private List<Finding> found(Check check, Occasion when) {
        return Objects.requireNonNull(known.get(check.id() + when));
    }

    /** Runs a check on one half; what comes back keeps what it found. All that is asked for afterwards has to be run. */
    Runnable run(Check check, Occasion when) {
        Timing timing = when == Occasion.NORMAL ? normal : fault;
        List<Finding> found = timing == null ? List.of() : check.run(analysis, timing);
        return () -> known.put(check.id() + when, found);
    }
}
