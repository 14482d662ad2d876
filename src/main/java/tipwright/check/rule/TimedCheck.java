// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.time.Timing;

/** A rule that needs the dump in time; without it, it finds nothing. */
public interface TimedCheck extends Check {
    @Override
    default Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME);
    }

    @Override
    default List<Finding> run(Analysis analysis) {
        return List.of();
    }

    @Override
    List<Finding> run(Analysis analysis, Timing timing);
}
