// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Cylinder;
import tipwright.design.supply.Pump;
import tipwright.outline.PartKind;
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
        return "Actuator: holding the tank when stopped";
    }

    @Override
    public String shortly(Finding finding) {
        return "holding when stopped";
    }

    @Override
    public String rule() {
        return "Stopped anywhere, push or pull without friction is within the rated holding force; over a counterbalance valve it makes no more pressure than the valve is set to, at which it opens.";
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
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.CARRIES_TANK);
    }

    @Override
    public Text says(Finding finding) {
        return Text.of(
                "stopped, the actuator must hold {} and is good for {}",
                Text.amount(finding.needs(), Kind.FORCE),
                Text.amount(finding.has(), Kind.FORCE));
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.force(Fix.HOLD, finding, limits);
    }

    @Override
    public String bound(String id) {
        return "holding force";
    }

    @Override
    public String opener() {
        return "{more} holding force than {actuator} has";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return new WorkedFormula(analysis, finding, units).force();
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Extreme worst = worst(analysis);
        if (worst == null) {
            return List.of(make.missing("", "actuator.hold missing"));
        }
        return List.of(
                make.compare("", usage(analysis, worst), worst, Text.words("actuator stopped with the tank on it")));
    }

    /** Where a stopped tank asks most of what the actuators hold; null when that is not known of each. */
    public static @Nullable Extreme worst(Analysis analysis) {
        Design design = analysis.design();
        return known(design)
                ? Usage.worst(figure -> Extreme.largest(
                        analysis.cases(), MotionDirection.RESTING, row -> figure.applyAsDouble(usage(row, design))))
                : null;
    }

    /** What is held where something is worst. */
    public static Usage usage(Analysis analysis, Extreme worst) {
        return usage(Objects.requireNonNull(worst.row(analysis.cases()), "a load case"), analysis.design());
    }

    private static Usage usage(Row row, Design design) {
        double force = row.rest().force();
        double rated = rated(design, row.pose().length(), row.pose().arm(), force > 0);
        return usage(Math.abs(force), rated, design.factors());
    }

    /** Whether it is known of each actuator what it holds. */
    public static boolean known(Design design) {
        return design.drive().actuators().stream().allMatch(p -> p.actuator().ratedHold() != null);
    }

    /**
     * What all actuators hold together, N; of each it has to be known.
     *
     * @param length pin to pin, m
     * @param arm effective arm of the actuators, m
     * @param push whether the load presses on them, else it draws
     */
    public static double rated(Design design, double length, double arm, boolean push) {
        return Ratings.together(
                design, length, push, a -> Objects.requireNonNull(one(design, a, length, arm, push), "hold"));
    }

    /**
     * What an actuator holds, N, with the same parameters; null where that is not known. One that cannot push or pull at all holds nothing
     * that way: a rope goes slack, and oil on one side of a piston holds one way. A counterbalance valve shuts in the oil that the load
     * presses on where it drives the tank back, up to its setting. Source: p = F / A.
     */
    public static @Nullable Double one(Design design, Actuator actuator, double length, double arm, boolean push) {
        Double hold = actuator.ratedHold();
        if (hold != null && !((push ? actuator.ratedPush(length) : actuator.ratedPull()) > 0)) {
            return 0.0;
        }
        boolean back = push == arm > 0;
        Double setting = design.supply() instanceof Pump pump && pump.lowering() == Pump.Lowering.COUNTERBALANCE
                ? pump.counterbalance()
                : null;
        return hold != null && setting != null && back && actuator instanceof Cylinder cylinder
                ? Double.valueOf(Math.min(hold, setting * cylinder.oilArea(length, push)))
                : hold;
    }

    /** Actuators that hold a force together, N. */
    public static Usage usage(double force, double rated, Factors factors) {
        return new Usage(force, rated, factors.service(), Kind.FORCE);
    }
}
