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
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.BoltGroup;

/** Bolts at the joints. */
public final class BoltCheck implements Check {
    @Override
    public String id() {
        return "bolt";
    }

    @Override
    public String title() {
        return "Bolts: breaking";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Bolts at " + Titles.the(part) + ": breaking";
    }

    @Override
    public String rule() {
        return "The joint's force makes shear and pull in each bolt; together, in the worst bolt, at the worst tilt and load,"
                + " they stay below its design strength. No help from friction under the plate, no prying.";
    }

    @Override
    public String formula() {
        return "Fv/FvRd + Ft/(1.4 FtRd) <= 1 / factor and Ft/FtRd <= 1 / factor; FvRd = 0.6 fu As/1.25 (0.5 where it is not like class 8.8), FtRd = 0.9 fu As/1.25";
    }

    @Override
    public String source() {
        return "EN 1993-1-8 table 3.4 (from memory); elastic method: Shigley, Mechanical Engineering Design (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG, PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("bigger, stronger or more bolts, or bolts further apart");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Factors factors = analysis.design().factors();
        return FasteningParts.each(
                make,
                analysis,
                "bolts",
                Fastening::bolts,
                b -> b.at().z(),
                (name, bolts, load) -> List.of(one(make, name, bolts, load, factors)));
    }

    private static Finding one(Findings make, String name, Bolts bolts, JointLoad load, Factors factors) {
        BoltGroup group = new BoltGroup(bolts);
        Extreme worst = load.worst(held -> group.share(held.force(), held.at()));
        Text note = Text.words("bolts in one line cannot bear a moment about that line");
        JointLoad.Held held = load.at(worst);
        if (held != null && Double.isFinite(worst.value())) {
            double shear = 0;
            double pull = 0;
            for (BoltGroup.Load l : group.loads(held.force(), held.at())) {
                shear = Math.max(shear, l.shear());
                pull = Math.max(pull, l.pull());
            }
            note = Text.of(
                    "share of its design strength; up to {} shear and {} pull in one bolt",
                    Text.amount(shear, Kind.FORCE, "kN", 1),
                    Text.amount(pull, Kind.FORCE, "kN", 1));
        }
        return make.compare(name, usage(worst.value(), factors), worst, note);
    }

    /** The worst bolt of a group under a share of its design strength. */
    static Usage usage(double share, Factors factors) {
        return new Usage(share, 1, factors.bolt(), Kind.RATIO);
    }
}
