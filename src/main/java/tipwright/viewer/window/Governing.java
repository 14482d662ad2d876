// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.Early;
import tipwright.check.rule.Finding;
import tipwright.quantity.UnitSystem;
import tipwright.report.FiveNumbers;
import tipwright.report.Peak;
import tipwright.report.Style;

/**
 * Where the actuators have most to do: the largest push or the largest pull, whichever uses more of what they are rated for.
 *
 * @param push else a pull
 * @param loadCase name of the case of the analysis in which it is
 * @param tilt rad
 */
record Governing(boolean push, String loadCase, double tilt) {
    /** Of an analysed design; null when the actuators never have anything to do. */
    static @Nullable Governing of(Analysis analysis, List<Finding> findings) {
        Peak push = Peak.force(analysis.cases(), Peak.Tilts.ALL, true);
        Peak pull = Peak.force(analysis.cases(), Peak.Tilts.ALL, false);
        boolean pushes = push != null && (pull == null || used(push, "push", findings) >= used(pull, "pull", findings));
        Peak most = pushes ? push : pull;
        return most == null ? null : new Governing(pushes, most.loadCase(), most.tilt());
    }

    private static double used(Peak peak, String id, List<Finding> findings) {
        double rated = ForceScale.rated(id, findings);
        return Double.isNaN(rated) ? 0 : peak.value() / rated;
    }

    /** 'Worst push 9.14 kN of 12 kN, full, outlet shut, at 0 deg'. */
    String headline(Early early, UnitSystem units) {
        String name = push ? "Push" : "Pull";
        return FiveNumbers.known(early, new Style(false, units)).stream()
                .filter(line -> line.name().equals(name))
                .map(line -> (push ? "Worst push " : "Worst pull ") + line.says())
                .findFirst()
                .orElse("");
    }
}
