// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/** Time got against time wanted. */
public final class CycleTimeCheck implements TimedCheck {
    @Override
    public String id() {
        return "cycle-time";
    }

    @Override
    public String title() {
        return "Dump: time taken";
    }

    @Override
    public String shortly(Finding finding) {
        return "time of a dump";
    }

    @Override
    public String rule() {
        return "The normal dump, from stowed, up, drained, hold, and back down, takes no longer than the"
                + " time wanted (dump.cycle-time); without a time wanted there is nothing to check.";
    }

    @Override
    public String formula() {
        return "t = integral of dL / v(F) up and back + time until drained at full tilt + hold";
    }

    @Override
    public String source() {
        return "kinematics; strip integral of Torricelli's law for the outflow";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.OF_NORMAL_DUMP);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a faster actuator or one rated for more on-time, or fewer dumps an hour");
    }

    @Override
    public Text says(Finding finding) {
        return finding.allowed("a dump takes");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Double wanted = analysis.design().dump().cycleTime();
        if (wanted == null) {
            return List.of();
        }
        Findings make = new Findings(this, analysis.design());
        Cycle cycle = timing.dump();
        if (cycle == null) {
            return List.of(make.untimed("", timing));
        }
        if (!cycle.complete()) {
            return List.of(make.given(
                    "",
                    Double.POSITIVE_INFINITY,
                    wanted,
                    1,
                    Kind.TIME,
                    Double.POSITIVE_INFINITY,
                    Extreme.NOWHERE,
                    Verdict.FAIL,
                    "it never gets through: it stalls, does not come back or does not run out"));
        }
        Text note = Text.of(
                "raises in {}, comes back in {}",
                Text.amount(cycle.raise(), Kind.TIME, "s", 0),
                Text.amount(cycle.lower(), Kind.TIME, "s", 0));
        return List.of(make.compare("", cycle.total(), wanted, 1, Kind.TIME, Extreme.NOWHERE, note));
    }
}
