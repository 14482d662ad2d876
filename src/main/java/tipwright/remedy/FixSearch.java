// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** Looks for changes that fix what fails, and tries each. The number of tries is counted, so that it always ends soon. */
public final class FixSearch {
    /** Price of all that may be tried, in analyses without time. */
    private static final int BUDGET = 400;

    /** Of it for one ladder of changes. */
    private static final int SHARE = 100;

    /** How many of one ladder are told for one finding. */
    private static final int OF_A_KIND = 1;

    /** Changes that looked good and then did not pass everything, for one ladder. */
    private static final int DISAPPOINTMENTS = 3;

    private static final List<Proposer> ALL = List.of(
            new JointSizes(),
            new BearingSizes(),
            new SupplySizes(),
            new SurroundingSizes(),
            new EmptiesBetter(),
            new ActuatorToMiddle(),
            new OtherActuator(),
            new MovedPins(),
            new LessFill(),
            new SecondActuator());

    private final Trials trials;
    private final Shop shop;
    private final BooleanSupplier asked;
    private final List<TriedFix> found = new ArrayList<>();

    private FixSearch(Trials trials, Shop shop, BooleanSupplier wanted) {
        this.trials = trials;
        this.shop = shop;
        asked = wanted;
    }

    /**
     * The changes that fix what fails.
     *
     * @param shop what can be had; asked for only when something is to be fixed
     * @param close whether what is close is to be fixed too
     */
    public static TriedFixes of(Result result, Supplier<Shop> shop, boolean close) {
        return of(result, shop, close, () -> true);
    }

    /**
     * The same for as long as it is wanted; what is found until then is kept.
     *
     * @param wanted asked before every try
     */
    public static TriedFixes of(Result result, Supplier<Shop> shop, boolean close, BooleanSupplier wanted) {
        List<Finding> bad = result.findings().stream()
                .filter(f -> f.verdict() == Verdict.FAIL || (close && f.verdict() == Verdict.CLOSE))
                .toList();
        return of(result, shop, bad, wanted);
    }

    /** The changes with which one finding passes well that fails or is close, whatever else fails meanwhile. */
    public static TriedFixes of(Result result, Supplier<Shop> shop, Finding finding, BooleanSupplier wanted) {
        return of(result, shop, List.of(finding), wanted);
    }

    private static TriedFixes of(Result result, Supplier<Shop> shop, List<Finding> bad, BooleanSupplier wanted) {
        if (bad.isEmpty()) {
            return TriedFixes.NONE;
        }
        try {
            Trials trials = new Trials(result, bad, BUDGET);
            FixSearch search = new FixSearch(trials, shop.get(), wanted);
            boolean complete = search.all(bad);
            return new TriedFixes(search.found, true, complete);
        } catch (CannotComputeException e) {
            return TriedFixes.NONE;
        }
    }

    /**
     * Whether a fix comes to the same with another design: with its numbers rounded, or read back from a file.
     *
     * @param before of the design as it is
     * @param changed the other design with the fix
     */
    public static boolean holds(TriedFix fix, Result before, Design changed) {
        try {
            FixRule.Outcome outcome = FixRule.of(before, fix.fixes())
                    .outcome(Checker.asFilled(changed).findings());
            return outcome != null && outcome.fixes().containsAll(fix.fixes());
        } catch (CannotComputeException e) {
            return false;
        }
    }

    private boolean all(List<Finding> bad) {
        for (Proposer proposer : ALL) {
            Map<String, Set<String>> ladders = new LinkedHashMap<>();
            for (Finding f : bad) {
                String asked = proposer.asked(f);
                if (!asked.isEmpty()) {
                    ladders.computeIfAbsent(asked, a -> new LinkedHashSet<>()).add(f.id());
                }
            }
            for (Map.Entry<String, Set<String>> ladder : ladders.entrySet()) {
                if (trials.left() <= 0 || !asked.getAsBoolean()) {
                    return false;
                }
                climb(ladder.getKey(), proposer.changes(trials.analysis(), ladder.getKey(), shop), ladder.getValue());
            }
        }
        return true;
    }

    private record Looked(Proposal proposal, Trials.Look look) {}

    private void climb(String kind, List<List<Proposal>> ladder, Set<String> wanted) {
        Map<String, Integer> still = new LinkedHashMap<>();
        wanted.forEach(id -> still.put(id, OF_A_KIND));
        int end = trials.left() - SHARE;
        int disappointed = 0;
        for (List<Proposal> rung : ladder) {
            List<Looked> good = new ArrayList<>();
            for (Proposal p : rung) {
                if (trials.left() <= Math.max(0, end) || !asked.getAsBoolean()) {
                    return;
                }
                Trials.Look look = trials.look(p.design(), still.keySet());
                if (look.fixes().stream().anyMatch(still::containsKey)) {
                    good.add(new Looked(p, look));
                }
            }
            good.sort(Comparator.comparingInt((Looked l) -> -l.look().fixes().size())
                    .thenComparingDouble(l -> l.look().worst()));
            for (Looked l : good) {
                Set<String> open = new HashSet<>(l.look().fixes());
                open.retainAll(still.keySet());
                if (open.isEmpty() || disappointed >= DISAPPOINTMENTS || trials.left() <= 0 || !asked.getAsBoolean()) {
                    continue;
                }
                TriedFix fix = trials.full(kind, l.proposal());
                if (fix == null || fix.fixes().stream().noneMatch(still::containsKey)) {
                    disappointed++;
                    continue;
                }
                found.add(fix);
                fix.fixes().stream()
                        .filter(id -> !fix.close().contains(id))
                        .forEach(id -> still.computeIfPresent(id, (k, n) -> n > 1 ? n - 1 : null));
            }
            if (still.isEmpty() || disappointed >= DISAPPOINTMENTS) {
                return;
            }
        }
    }
}
