// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
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
import tipwright.design.joint.Lug;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Lugs that are pushed sideways. */
public final class LugSideCheck implements Check {
    /** Share of a joint's force that may come from the side. Common practice, no source. */
    static final double SHARE = 0.05;

    @Override
    public String id() {
        return "lug-side";
    }

    @Override
    public String title() {
        return "Lugs: side load";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Lug at " + Titles.the(part) + ": side load";
    }

    @Override
    public String rule() {
        return "Nothing is built quite true: a twentieth of the joint's force is taken to push sideways on the lug at the hole. An actuator whose two brackets are out of line along the pivot pushes sideways by as much more as it leans, and on ground that slopes across the locating bearing's lug takes all the push along the pivot. This bends each plate about its thin way where it is welded on; pull and bending together stay below yield.";
    }

    @Override
    public String formula() {
        return "F/(n w t) + 6 (S h/n)/(w t^2) <= yield / factor; S = (0.05 + lean) F + push along the pivot";
    }

    @Override
    public String source() {
        return "elementary bending; statics; a twentieth from the side: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("thicker or lower lugs, or a gusset square to them");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            Lug lug = f.lug();
            JointLoad load = lug == null ? null : JointLoad.of(analysis, f, 0);
            if (lug != null && load != null) {
                double height = f.height() == null ? lug.end() : f.height();
                double share = SHARE + BracketLine.lean(analysis, f);
                Factors factors = analysis.design().factors();
                Extreme most = load.worst(
                        held -> usage(held.force(), share, lug, height, factors).utilisation());
                JointLoad.Held held = load.at(most);
                Vec3 force = held == null ? Vec3.ZERO : held.force();
                all.add(make.compare(
                        f.joint(),
                        usage(force, share, lug, height, factors),
                        most,
                        Text.of(
                                "with {} from the side, {} above the weld",
                                Text.amount(side(force, share), Kind.FORCE, "N", 0),
                                Text.amount(height, Kind.LENGTH, "mm", 0))));
            }
        }
        return TwistedLinks.judged(make, analysis, all);
    }

    /** Force from the side, N. */
    private static double side(Vec3 force, double share) {
        return share * force.xy().norm() + Math.abs(force.z());
    }

    /**
     * A lug under a joint's force in N, its hole so high above where it is held, m.
     *
     * @param share of the force in the side view that comes from the side
     */
    static Usage usage(Vec3 force, double share, Lug lug, double height, Factors factors) {
        double area = lug.plates() * lug.width() * lug.thickness();
        double stress = force.xy().norm() / area + 6 * side(force, share) * height / (area * lug.thickness());
        return new Usage(stress, lug.yield(), factors.lug(), Kind.PRESSURE);
    }
}
