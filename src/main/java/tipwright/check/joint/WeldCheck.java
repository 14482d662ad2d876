// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.WeldGroup;

/** Fillet welds at the joints. */
public final class WeldCheck implements Check {
    @Override
    public String id() {
        return "weld";
    }

    @Override
    public String title() {
        return "Welds: breaking";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Welds at " + Titles.the(part) + ": breaking";
    }

    @Override
    public String rule() {
        return "The joint's force makes direct force, bending and torsion in the group of seams; together, at the worst end of"
                + " a seam, tilt and load, they stay below 0.30 of the electrode's strength on the throat. No allowance for"
                + " fatigue, poor fusion or the strength of the plate.";
    }

    @Override
    public String formula() {
        return "f = F/L + M c/I + T r/J as vectors; f / (0.707 leg) <= 0.30 FEXX / factor";
    }

    @Override
    public String source() {
        return "line method: Shigley, Mechanical Engineering Design, tables 9-1 and 9-2; 0.30 FEXX: AISC ASD, AWS D1.1";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG, PartKind.PIN, PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a bigger or longer weld, or the two welds further apart");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Factors factors = analysis.design().factors();
        return FasteningParts.each(
                make,
                analysis,
                "weld",
                Fastening::weld,
                w -> w.at().z(),
                (name, weld, load) -> List.of(one(make, name, weld, load, factors)));
    }

    private static Finding one(Findings make, String name, FilletWeld weld, JointLoad load, Factors factors) {
        WeldGroup group = new WeldGroup(weld);
        Extreme worst = load.worst(held -> group.most(held.force(), held.at()));
        Text note = Double.isFinite(worst.value())
                ? Text.of(
                        "stress on the throat; {} on {} of weld",
                        Text.amount(worst.value(), Kind.STIFFNESS, "N/mm", 0),
                        Text.amount(group.length(), Kind.LENGTH, "mm", 0))
                : Text.words("a single seam cannot bear bending about itself; weld both sides");
        return make.compare(name, usage(worst.value(), weld, factors), worst, note);
    }

    /** A seam under a force along it in N/m. */
    static Usage usage(double along, FilletWeld weld, Factors factors) {
        double throat = WeldGroup.THROAT * weld.leg();
        double allowed = WeldGroup.allowed(weld.leg(), weld.electrode());
        return new Usage(along / throat, allowed / throat, factors.weld(), Kind.PRESSURE);
    }
}
