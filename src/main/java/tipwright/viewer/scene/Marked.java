// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.outline.MachinePart;
import tipwright.quantity.UnitSystem;

/**
 * A part that the picture marks.
 *
 * @param partId of the outlines' part
 * @param label what is wrong with it, in few words
 * @param failing else it is only close
 */
public record Marked(String partId, String label, boolean failing) {
    /** What is marked for some findings: the parts that each that fails or is close is about, each part once, the worst first. */
    public static List<Marked> of(
            Analysis analysis, List<MachinePart> parts, List<Finding> findings, UnitSystem units) {
        List<Finding> bad = new ArrayList<>(findings);
        bad.removeIf(f -> f.verdict() != Verdict.FAIL && f.verdict() != Verdict.CLOSE);
        bad.sort((f, g) -> f.worseThan(g) ? -1 : g.worseThan(f) ? 1 : 0);
        Map<String, Marked> all = new LinkedHashMap<>();
        for (Finding f : bad) {
            String label = f.title() + ", " + f.byWords().show(units);
            Checks.of(f).ifPresent(check -> check.concerned(analysis, f)
                    .among(parts)
                    .forEach(p -> all.putIfAbsent(p.id(), new Marked(p.id(), label, f.verdict() == Verdict.FAIL))));
        }
        return List.copyOf(all.values());
    }
}
