// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.List;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Then;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;

/** What many checks find when one thing goes wrong, as one finding: the worst of them, and which others fail. */
final class WorstOfAll {
    private WorstOfAll() {}

    /**
     * The worst.
     *
     * @param part what goes wrong
     * @param all at least one
     */
    static Finding of(Findings make, String part, List<Finding> all) {
        Finding worst = all.get(0);
        for (Finding f : all) {
            worst = f.worseThan(worst) ? f : worst;
        }
        Finding top = worst;
        List<String> others = all.stream()
                .filter(f -> f.verdict() == Verdict.FAIL && !f.id().equals(top.id()))
                .map(Finding::title)
                .distinct()
                .toList();
        return make.of(part, new Then(worst, Text.NONE, others), worst.worst());
    }
}
