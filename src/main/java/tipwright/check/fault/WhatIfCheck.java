// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.quantity.Text;
import tipwright.time.Timing;

/** What could go wrong: each trouble has a verdict of its own. */
public final class WhatIfCheck implements Check {
    private final List<Check> rules;

    /**
     * The what-ifs.
     *
     * @param rules that are run anew where a wheel sinks
     */
    public WhatIfCheck(List<Check> rules) {
        this.rules = List.copyOf(rules);
    }

    @Override
    public String id() {
        return "what-if";
    }

    @Override
    public String title() {
        return "If something goes wrong: load";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : switch (part) {
                    case "burst hose" -> "Hose bursts: sinking speed";
                    case "lost power" -> "Power lost: holding the tank";
                    case "load let go at once" -> "Whole load drops out at once: recoil";
                    case "wheel sinks" -> "Wheel sinks: worst check then";
                    case "one carries all" -> "One actuator carries everything: force";
                    case "one runs ahead" -> "One actuator gets ahead of the other: force";
                    case "jam" -> "Drive jams: force";
            default -> part.endsWith(" when one carries all")
                    ? "One actuator carries everything: " + part.replace(" when one carries all", "")
                    : Titles.first(part);
                };
    }

    @Override
    public String rule() {
        return "A hose bursts: a lock valve holds the load, or it sinks no faster than allowed. Power is lost: the actuator"
                + " holds. The load lets go at once: the actuator bears the recoil. A wheel sinks: every check is made again"
                + " on the slope that follows. The tank is held fast: what bears the actuator stands its hardest push and pull"
                + " without yielding. A spring that helps breaks, or gas springs are cold and have lost gas: every check is made"
                + " again without it. With several actuators, one takes the whole load, or gets ahead of the others: it must"
                + " stay within its rating.";
    }

    @Override
    public String formula() {
        return "burst: v = Cd a sqrt(2 p / rho) / A, sinking at v F / W; let go: F = 2 F_empty - F_loaded; wheel:"
                + " slope = atan(drop / track); jam: F = relief x area, or where the motor stalls;"
                + " ahead by s: F/n + k s / r^2 with r = dL/dtilt and twist stiffness k";
    }

    @Override
    public String source() {
        return "orifice equation, Cd 0.62 and oil of 870 kg/m3 from memory; suddenly released load on an undamped spring"
                + " overshoots by the step (Roark, from memory); statics";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.ABOUT_FAULT);
    }

    @Override
    public Text says(Finding finding) {
        Text numbers = finding.byWords();
        Text note = finding.note();
        return Text.words(finding.title() + ": ")
                .plus(numbers)
                .plus(note.isEmpty() ? "" : "; ")
                .plus(note);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return switch (finding.id().substring(finding.id().indexOf('/') + 1)) {
            case "lost-power", "load-let-go-at-once" -> Fix.of(
                    "an actuator that holds more{}, or " + Fix.ARM, finding, limits);
            case "one-carries-all", "one-runs-ahead" -> Fix.of(
                    "stronger actuators{}, or less in the tank", finding, limits);
            case "burst-hose" -> Text.words("a lock valve on the cylinder port, or a restrictor in it");
            case "jam" -> Text.words("a lower relief setting, or a stronger part where it is worst");
            case "wheel-sinks" -> Text.words("same as under the check that is named");
            default -> Fix.part(finding, limits);
        };
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return List.of();
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Findings make = new Findings(this, analysis.design().limits());
        List<Finding> all = new ArrayList<>(WhatIfFall.find(make, analysis));
        all.add(WhatIfLetGo.find(make, analysis));
        all.add(WhatIfWheel.find(make, analysis, rules));
        all.addAll(WhatIfJam.find(make, analysis, rules));
        all.addAll(WhatIfHelper.find(make, analysis, rules));
        all.addAll(WhatIfShare.find(make, analysis, rules));
        return all;
    }
}
