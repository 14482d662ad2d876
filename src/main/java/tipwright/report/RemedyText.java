// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** What would mend a check that fails or is close, as the check itself tells. */
public final class RemedyText {
    private RemedyText() {}

    /** A sentence; where a larger capacity would do, it tells how large. Empty when there is nothing to say. */
    public static String of(Finding f, Limits limits, UnitSystem units) {
        if (f.verdict() != Verdict.FAIL && f.verdict() != Verdict.CLOSE) {
            return "";
        }
        Text fix = Checks.of(f).map(c -> c.fix(f, limits)).orElse(Text.NONE);
        return fix.isEmpty() ? "" : "Fix: " + fix.show(units) + ".";
    }
}
