// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.check.joint.TwistedLinks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;

/** Parts that cannot be told once something has gone wrong, named together. */
final class Untold {
    private final Findings make;
    private final Set<String> parts = new LinkedHashSet<>();
    private boolean missing;

    Untold(Findings make) {
        this.make = make;
    }

    /** Takes what its own check cannot tell. */
    boolean takes(Check check, Finding f) {
        return takes(check, f, f.verdict() == Verdict.NOT_CHECKED);
    }

    /** The same where one actuator pushes beside the middle of links: what bears their twist is told only where it fails without. */
    boolean takes(Check check, Finding f, TwistedLinks links) {
        return takes(check, f, f.verdict() == Verdict.NOT_CHECKED || (f.verdict() != Verdict.FAIL && links.bear(f)));
    }

    private boolean takes(Check check, Finding f, boolean untold) {
        if (untold) {
            parts.add(check.shortly(f));
            missing |= f.missing();
        }
        return untold;
    }

    List<Finding> told(String part) {
        return parts.isEmpty()
                ? List.of()
                : List.of(make.untold(
                        part, Text.words("what their own checks cannot tell: " + String.join("; ", parts)), missing));
    }
}
