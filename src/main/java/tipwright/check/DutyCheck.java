// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.analysis.StrokeTime;
import tipwright.design.Actuator;
import tipwright.quantity.Kind;

/** On-time share of the actuator. */
final class DutyCheck implements Check {
    @Override
    public String id() {
        return "duty";
    }

    @Override
    public String title() {
        return "Duty of the actuator";
    }

    @Override
    public String rule() {
        return "The share of the time that the actuator runs, at the wanted number of dumps an hour, is within its rated duty.";
    }

    @Override
    public String formula() {
        return "dumps per hour x (raise + lower) / 3600 s";
    }

    @Override
    public String source() {
        return "maker's rating";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        Double rated = actuator.duty();
        if (rated == null) {
            return List.of(make.missing("", "actuator.duty missing"));
        }
        Double dumps = analysis.design().use().dumpsPerHour();
        if (dumps == null) {
            return List.of(make.missing("", "use.dumps-per-hour missing"));
        }
        StrokeTime time = StrokeTime.of(analysis);
        if (time == null) {
            return List.of(make.missing("", "actuator.speed or actuator.flow missing"));
        }
        double on = time.raise() + time.lower();
        if (!Double.isFinite(on)) {
            return List.of(make.given(
                    "",
                    1,
                    rated,
                    1,
                    Kind.RATIO,
                    1 / rated,
                    Findings.Worst.NOWHERE,
                    Verdict.FAIL,
                    "it stalls on the way"));
        }
        String note =
                String.format(Locale.ROOT, "runs %.0f s out and %.0f s back for each dump", time.raise(), time.lower());
        return List.of(make.compare("", dumps * on / 3600, rated, 1, Kind.RATIO, Findings.Worst.NOWHERE, note));
    }
}
