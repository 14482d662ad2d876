// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.time.CycleTimer;

/** Findings of single checks, for tests: quicker than all of them. */
public final class One {
    private One() {}

    /** What the check that an id belongs to finds in a design as worn. */
    public static List<Finding> all(String yaml, String id) throws CannotComputeException {
        Analysis analysis = Worn.of(Analyser.analyse(Examples.read(yaml)));
        return Checks.all().stream()
                .filter(c -> id.equals(c.id()) || id.startsWith(c.id() + "/"))
                .flatMap(c -> (c.traits().contains(Trait.NEEDS_TIME)
                                ? c.run(analysis, CycleTimer.time(analysis))
                                : c.run(analysis))
                        .stream())
                .toList();
    }

    /** One finding; fails the test where there is none of that id. */
    public static Finding of(String yaml, String id) throws CannotComputeException {
        List<Finding> all = all(yaml, id);
        return all.stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        id + ": " + all.stream().map(Finding::id).toList()));
    }
}
