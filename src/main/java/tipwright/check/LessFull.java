// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Then;
import tipwright.time.CycleTimer;

/**
 * A fill below the stated one at which something at rest is worst: where that asks more of the actuators, the dump in time and all that
 * depends on it are looked at with it; where it asks more of something else, what becomes of that if something goes wrong.
 *
 * @param look what is found with it
 * @param fill share of the interior
 * @param words the fill, as it is told
 */
record LessFull(Callable<List<Finding>> look, double fill, String words) {
    /** What asks something of the actuators, by the checks' ids. */
    static final Set<String> DRIVE = Set.of("push", "pull", "hold");

    private static final double ALIKE = 1.01;

    /**
     * One of them.
     *
     * @param there the design with this fill
     * @param fill share of the interior
     * @param governing what is worst with this fill
     * @param most how much of the actuators is used with the stated fill
     */
    static LessFull of(Analysis there, double fill, List<Finding> governing, double most, String words) {
        boolean driven = governing.stream().anyMatch(f -> DRIVE.contains(f.id()) && f.utilisation() > most);
        return new LessFull(driven ? () -> inTime(there) : () -> ifSomethingGoesWrong(there, governing), fill, words);
    }

    /**
     * What is found over several fills.
     *
     * @param findings with the stated fill, with what is worse with another in their place
     * @param failing the least of the others with which something fails; NaN: there is none
     */
    record Worst(List<Finding> findings, double failing) {}

    /** The worst with the stated fill and with these; a second thread helps. */
    static Worst worst(List<Finding> found, List<LessFull> all) throws CannotComputeException {
        List<List<Finding>> looks =
                new SharedTasks<>(all.stream().map(LessFull::look).toList()).answersByTwo("less full");
        List<Finding> worst = found;
        double failing = Double.NaN;
        for (int i = 0; i < all.size(); i++) {
            worst = Conditions.worse(worst, looks.get(i), all.get(i).words());
            if (FillSweep.failure(looks.get(i)) != null
                    && !(failing < all.get(i).fill())) {
                failing = all.get(i).fill();
            }
        }
        return new Worst(worst, failing);
    }

    private static List<Finding> inTime(Analysis there) throws CannotComputeException {
        return Conditions.inTime(there, Checks.run(Fullness.TIMED, there, CycleTimer.time(there)));
    }

    private static List<Finding> ifSomethingGoesWrong(Analysis there, List<Finding> governing)
            throws CannotComputeException {
        List<Check> asked = FillSweep.RULES.stream()
                .filter(c -> governing.stream().anyMatch(c::owns))
                .toList();
        List<Finding> found = new ArrayList<>(Conditions.ifSomethingGoesWrong(there, new WhatIfCheck(asked)));
        found.removeIf(f -> governing.stream().anyMatch(g -> alike(f.then(), g)));
        return found;
    }

    /** Whether what is worst then is hardly worse than without the trouble: that is told of the check itself. */
    private static boolean alike(@Nullable Then then, Finding without) {
        return then != null
                && then.worst().id().equals(without.id())
                && then.worst().verdict() == without.verdict()
                && then.worst().utilisation() <= without.utilisation() * ALIKE;
    }
}
