// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Worked;
import tipwright.design.Limits;
import tipwright.design.actuator.PlacedActuator;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Force at rest against the holding rating. */
public final class HoldCheck implements Check {
    @Override
    public String id() {
        return "hold";
    }

    @Override
    public String title() {
        return "Holding at rest";
    }

    @Override
    public String rule() {
        return "Stopped anywhere, push or pull without friction is within the rated holding force.";
    }

    @Override
    public String formula() {
        return "|F_rest| / (n F_hold / service factor)";
    }

    @Override
    public String source() {
        return "maker's rating";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of(Fix.STRONGER, finding, limits);
    }

    @Override
    public String bound(String id) {
        return "holding force";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return new Worked(analysis, finding, units).force();
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        for (PlacedActuator p : analysis.design().drive().actuators()) {
            if (p.actuator().ratedHold() == null) {
                return List.of(make.missing("", "actuator.hold missing"));
            }
        }
        double rated = Ratings.together(analysis.design(), a -> {
            Double hold = a.ratedHold();
            return hold == null ? 0 : hold;
        });
        Extreme worst = Extreme.largest(
                analysis.cases(),
                MotionDirection.RESTING,
                r -> Math.abs(r.rest().force()));
        double factor = analysis.design().factors().service();
        return List.of(make.compare("", worst.value(), rated, factor, Kind.FORCE, worst, "stopped and holding"));
    }
}
