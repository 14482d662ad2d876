// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.quantity.Kind;

/** Where the load passes over the pivot and the actuator's force changes sign. */
final class OverCentreCheck implements Check {
    @Override
    public String id() {
        return "over-centre";
    }

    @Override
    public String title() {
        return "Load passing over the pivot";
    }

    @Override
    public String rule() {
        return "Where the centroid passes over the pivot the rod goes from push to pull and the slack in the pins lets the tank"
                + " fall through: close with an actuator that can pull, a failure with a single-acting cylinder.";
    }

    @Override
    public String formula() {
        return "F(tilt) = 0 at rest, by load case";
    }

    @Override
    public String source() {
        return "common practice, no source";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        double rated = Ratings.pull(analysis.design());
        List<String> crossings = new ArrayList<>();
        for (CaseResult result : analysis.cases()) {
            double at = crossing(result.rows());
            if (!Double.isNaN(at)) {
                crossings.add(String.format(Locale.ROOT, "%s %.1f deg", result.name(), Math.toDegrees(at)));
            }
        }
        Findings.Worst worst = Sweep.rows(analysis, r -> -r.rest().force());
        double pull = Math.max(0, worst.value());
        if (crossings.isEmpty()) {
            String note = pull > 0 ? "it pulls all the way; nothing falls through" : "the load stays behind the pivot";
            return List.of(make.given("", pull, rated, 1, Kind.FORCE, 0, Findings.Worst.NOWHERE, Verdict.PASS, note));
        }
        boolean canPull = rated > 0;
        double utilisation = canPull ? pull / rated : 2;
        String list = String.join(", ", crossings);
        String note = canPull
                ? "from push to pull at: " + list + "; slack in the pins lets the tank drop there, go slowly"
                : "this cylinder cannot hold back a tank that passes over the pivot at: " + list;
        Verdict verdict = canPull ? Verdict.CLOSE : Verdict.FAIL;
        return List.of(make.given("", pull, rated, 1, Kind.FORCE, utilisation, worst, verdict, note));
    }

    /** First tilt at which the force at rest changes sign, rad; NaN when it does not. */
    static double crossing(List<Row> rows) {
        for (int i = 1; i < rows.size(); i++) {
            double a = rows.get(i - 1).rest().force();
            double b = rows.get(i).rest().force();
            if (a != 0 && a * b <= 0) {
                double share = a / (a - b);
                return rows.get(i - 1).tilt()
                        + share * (rows.get(i).tilt() - rows.get(i - 1).tilt());
            }
        }
        return Double.NaN;
    }
}
