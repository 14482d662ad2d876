// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.List;
import java.util.stream.Collectors;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;

/** What many checks find when one thing goes wrong, as one finding: the worst of them, and which others fail. */
final class WorstOfAll {
    static final String CLOSEST = "closest to failing then: ";

    private static final int NAMED = 3;

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
        String note = CLOSEST + worst.title();
        if (!others.isEmpty()) {
            String named = others.stream().limit(NAMED).collect(Collectors.joining(", "));
            int more = others.size() - Math.min(NAMED, others.size());
            note += "; fails too: " + named + (more > 0 ? " and " + more + " more" : "");
        }
        if (worst.sense() == Sense.AT_LEAST) {
            return make.atLeast(
                    part,
                    worst.has(),
                    worst.needs(),
                    worst.kind(),
                    worst.utilisation(),
                    worst.worst(),
                    worst.verdict(),
                    Text.words(note));
        }
        return make.given(
                part,
                worst.demand(),
                worst.capacity(),
                worst.factor(),
                worst.kind(),
                worst.utilisation(),
                worst.worst(),
                worst.verdict(),
                note);
    }
}
