// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.analysis.StrokeTime;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Times;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.Actuator;
import tipwright.quantity.Kind;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** On-time share of the actuator. */
public final class DutyCheck implements Check {
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
        return "maker's rating; ten minutes for the rated duty: IEC 60034-1, S3 (from memory)";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        StrokeTime time = StrokeTime.of(analysis);
        return time == null
                ? share(analysis, Double.NaN, "actuator.speed or actuator.flow missing")
                : share(
                        analysis,
                        time.raise() + time.lower(),
                        String.format(
                                Locale.ROOT,
                                "runs %.0f s out and %.0f s back for each dump",
                                time.raise(),
                                time.lower()));
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Cycle dump = timing.dump();
        if (dump == null) {
            return share(analysis, Double.NaN, String.valueOf(timing.missing()));
        }
        double on = 0;
        for (Cycle cycle : timing.cycles()) {
            on = Math.max(on, cycle.complete() ? cycle.spent().onTime() : Double.POSITIVE_INFINITY);
        }
        String note = dump.perHour() > 0
                ? String.format(
                        Locale.ROOT,
                        "runs %.0f s for each dump, at the most; the normal dump may be made %.1f times an hour",
                        on,
                        dump.perHour())
                : "the normal dump never gets through";
        List<Finding> all = new ArrayList<>(share(analysis, on, note));
        if (analysis.design().drive().actuators().get(0).actuator().duty() != null) {
            Findings make = new Findings(this, analysis.design().limits());
            Findings.Worst stretch = Times.worst(timing, Moment::duty);
            all.add(
                    make.compare(
                            "one stretch",
                            stretch.value(),
                            1,
                            1,
                            Kind.RATIO,
                            stretch,
                            "heat of one dump, by the square of the current, against what the rated duty allows in ten minutes"));
        }
        return all;
    }

    /**
     * Share of the hour that it runs.
     *
     * @param on for each dump, s; NaN: not known; infinite: it stalls
     * @param note what is told, or what is missing
     */
    private List<Finding> share(Analysis analysis, double on, String note) {
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
        if (Double.isNaN(on)) {
            return List.of(make.missing("", note));
        }
        if (on == Double.POSITIVE_INFINITY) {
            return List.of(make.given(
                    "",
                    1,
                    rated,
                    1,
                    Kind.RATIO,
                    1 / rated,
                    Findings.Worst.NOWHERE,
                    Verdict.FAIL,
                    "it never gets through: it stalls, does not come back or does not run out"));
        }
        return List.of(make.compare("", dumps * on / 3600, rated, 1, Kind.RATIO, Findings.Worst.NOWHERE, note));
    }
}
