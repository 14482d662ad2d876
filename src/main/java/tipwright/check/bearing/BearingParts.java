// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.Support;

/** Goes through the pivot's bearings of one kind. */
final class BearingParts {
    private BearingParts() {}

    /**
     * What is found at one bearing.
     *
     * @param <B> kind of bearing
     */
    interface Rule<B extends Bearing> {
        /**
         * Looks at one bearing.
         *
         * @param part its name, for the finding
         * @param index among the pivot's bearings
         */
        Finding at(Findings make, String part, int index, B bearing);
    }

    /** A finding for each bearing of the kind; none when there is no such bearing. */
    static <B extends Bearing> List<Finding> each(Check check, Analysis analysis, Class<B> kind, Rule<B> rule) {
        Findings make = new Findings(check, analysis.design());
        List<Support> supports = analysis.design().pivot().bearings();
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            Bearing bearing = supports.get(i).bearing();
            if (kind.isInstance(bearing)) {
                all.add(rule.at(make, "bearing " + (i + 1), i, kind.cast(bearing)));
            }
        }
        return all;
    }
}
