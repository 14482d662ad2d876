// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.Comparator;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.report.Checked;

/**
 * All that a report is made from.
 *
 * @param checked the results
 * @param origin the file
 * @param stills pictures in three dimensions
 */
public record Dossier(Checked checked, Origin origin, Stills stills) {
    Analysis analysis() {
        return checked.result().analysis();
    }

    Design design() {
        return analysis().design();
    }

    /** Findings of a verdict, worst first. */
    List<Finding> findings(Verdict verdict) {
        return checked.result().findings().stream()
                .filter(f -> f.verdict() == verdict)
                .sorted(Comparator.comparingDouble((Finding f) -> Double.isNaN(f.utilisation()) ? -1 : f.utilisation())
                        .reversed())
                .toList();
    }
}
