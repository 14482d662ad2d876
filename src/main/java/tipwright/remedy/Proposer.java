// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;

/** Proposes changes of one kind. Adding a kind: one class, and one line in {@link FixSearch}. */
interface Proposer {
    /** What a finding asks of it; findings that ask the same get the same changes. Empty: it cannot help. */
    String asked(Finding finding);

    /**
     * Changes in the order in which they are tried: those of one list change about as much.
     *
     * @param analysis of the design as it is
     * @param asked as told for a finding
     */
    List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop);
}
