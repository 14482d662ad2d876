// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Largest pull while moving, friction included. */
public final class PullCheck implements Check {
    @Override
    public String id() {
        return "pull";
    }

    @Override
    public String title() {
        return "Actuator: pull";
    }

    @Override
    public String rule() {
        return "The largest pull over all load cases and tilts, with friction either way, is within the rated pull;"
                + " a single-acting cylinder has none.";
    }

    @Override
    public String formula() {
        return "F_pull / (n F_rated / service factor)";
    }

    @Override
    public String source() {
        return "maker's rating; virtual work F = W (dh/dtilt) / (dL/dtilt)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.TELLS_RATING);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.force("pull", finding, limits);
    }

    @Override
    public Text says(Finding finding) {
        return !(finding.demand() > 0)
                ? Text.words("the actuator never pulls")
                : finding.has() > 0
                        ? Text.of("the actuator must pull {} and is good for {}", finding.needed(), finding.there())
                        : Text.of("the actuator must pull {} and cannot pull", finding.needed());
    }

    @Override
    public String bound(String id) {
        return "pull";
    }

    @Override
    public String opener() {
        return "{more} pull than {actuator} has";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return new WorkedFormula(analysis, finding, units).force();
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> -b.force());
        Usage usage = PushCheck.usage(
                worst.value(),
                Ratings.pull(analysis.design()),
                analysis.design().factors());
        if (usage.demand() == 0) {
            return List.of(make.given(
                    "",
                    0,
                    usage.capacity(),
                    usage.factor(),
                    usage.kind(),
                    0,
                    Extreme.NOWHERE,
                    Verdict.PASS,
                    "the actuator never pulls"));
        }
        String note = usage.capacity() > 0 ? "largest pull" : "but this cylinder cannot pull";
        return List.of(make.compare("", usage, worst, Text.words(note)));
    }
}
