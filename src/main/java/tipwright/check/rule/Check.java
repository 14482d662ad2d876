// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.quantity.UnitSystem;
import tipwright.time.Timing;

/** One rule. Adding a check: one class here and one line in {@link Checks}. */
public interface Check {
    /** Short name, as typed after 'explain'. */
    String id();

    /** In the trade's words. */
    String title();

    /** The rule, in plain words. */
    String rule();

    /** The formula, with its symbols named. */
    String formula();

    /** Standard, handbook or 'common practice, no source'. */
    String source();

    /** One finding for each part that it looks at; never empty: what cannot be checked says so. */
    List<Finding> run(Analysis analysis);

    /**
     * The formula with the numbers of a finding put in, for a reader who checks by hand; empty when demand and capacity tell it all.
     *
     * @param finding one of this check's
     */
    default String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return "";
    }

    /** As {@link #run(Analysis)}, with the dump in time beside it. */
    default List<Finding> run(Analysis analysis, Timing timing) {
        return run(analysis);
    }
}
