// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.StrokeTime;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
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
        return "Actuator: heat over the hour";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Actuator: heat in one dump";
    }

    @Override
    public String shortly(Finding finding) {
        return "actuator heat";
    }

    @Override
    public String rule() {
        return "The share of the time that the actuator runs, at the wanted number of dumps an hour, is within its rated duty;"
                + " of unlike actuators within the least.";
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
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.OVER_ALL_TILTS, Trait.BETTER_IN_TIME);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a faster actuator or one rated for more on-time, or fewer dumps an hour");
    }

    @Override
    public Text says(Finding finding) {
        return !Double.isFinite(finding.needs())
                ? finding.note()
                : finding.partId().isEmpty()
                        ? Text.of(
                                "the actuator runs {} of the time and is rated for {}",
                                finding.needed(),
                                finding.there())
                        : Text.of("one dump uses {} of the heat that the actuator's duty allows", finding.needed());
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        StrokeTime time = StrokeTime.of(analysis);
        return time == null
                ? share(analysis, Double.NaN, Text.words("actuator.speed or actuator.flow missing"), true)
                : share(
                        analysis,
                        time.raise() + time.lower(),
                        Text.of(
                                "runs {} out and {} back for each dump",
                                Text.amount(time.raise(), Kind.TIME, "s", 0),
                                Text.amount(time.lower(), Kind.TIME, "s", 0)),
                        false);
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Cycle dump = timing.dump();
        if (dump == null) {
            return share(analysis, Double.NaN, Text.words(String.valueOf(timing.missing())), !timing.lost());
        }
        double on = 0;
        for (Cycle cycle : timing.cycles()) {
            on = Math.max(on, cycle.complete() ? cycle.spent().onTime() : Double.POSITIVE_INFINITY);
        }
        Text note = on == 0
                ? Text.words("nothing runs on a motor")
                : dump.perHour() > 0
                        ? Text.of(
                                "runs {} a dump at most; good for {} normal dumps an hour",
                                Text.amount(on, Kind.TIME, "s", 0),
                                Text.number(dump.perHour(), 1))
                        : Text.words("the normal dump never gets through");
        List<Finding> all = new ArrayList<>(share(analysis, on, note, false));
        if (least(analysis.design()) != null) {
            Findings make = new Findings(this, analysis.design());
            Extreme stretch = timing.largest(Moment::duty);
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
     * @param note what is told, or why it is not known
     * @param missing whether it is not known since the design does not give a value
     */
    private List<Finding> share(Analysis analysis, double on, Text note, boolean missing) {
        Findings make = new Findings(this, analysis.design());
        Double rated = least(analysis.design());
        if (rated == null) {
            return List.of(make.missing("", "actuator.duty missing"));
        }
        Double dumps = analysis.design().use().dumpsPerHour();
        if (dumps == null) {
            return List.of(make.missing("", "use.dumps-per-hour missing"));
        }
        if (Double.isNaN(on)) {
            return List.of(make.untold("", note, missing));
        }
        if (on == Double.POSITIVE_INFINITY) {
            return List.of(make.given(
                    "",
                    1,
                    rated,
                    1,
                    Kind.RATIO,
                    1 / rated,
                    Extreme.NOWHERE,
                    Verdict.FAIL,
                    "it never gets through: it stalls, does not come back or does not run out"));
        }
        Finding found = make.compare("", dumps * on / 3600, rated, 1, Kind.RATIO, Extreme.NOWHERE, note);
        boolean all = analysis.design().drive().actuators().stream()
                .allMatch(p -> p.actuator().duty() != null);
        return List.of(
                all || found.verdict() == Verdict.FAIL
                        ? found
                        : make.missing("", "actuator.duty missing of one of the actuators"));
    }

    /** The least rated duty of the actuators that have one; null: none has. */
    private static @Nullable Double least(Design design) {
        return design.drive().actuators().stream()
                .map(p -> p.actuator().duty())
                .filter(Objects::nonNull)
                .min(Double::compare)
                .orElse(null);
    }
}
