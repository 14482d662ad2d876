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
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Lug;
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
        return "Lug, side load";
    }

    @Override
    public String rule() {
        return "Nothing is built quite true: a twentieth of the joint's force is taken to push sideways on the lug at the hole, which bends each plate about its thin way where it is welded on; pull and bending together stay below yield.";
    }

    @Override
    public String formula() {
        return "F/(n w t) + 6 (0.05 F h/n)/(w t^2) <= yield / factor";
    }

    @Override
    public String source() {
        return "elementary bending; a twentieth from the side: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("thicker or lower lugs, or a gusset square to them");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            Lug lug = f.lug();
            JointLoad load = lug == null ? null : JointLoad.of(analysis, f, 0);
            if (lug != null && load != null) {
                double height = f.height() == null ? lug.end() : f.height();
                Extreme most = load.worst(held -> held.force().xy().norm());
                Usage usage = usage(most.value(), lug, height, analysis.design().factors());
                all.add(make.compare(
                        f.joint(),
                        usage,
                        most,
                        Text.of(
                                "with {} from the side, {} above the weld",
                                Text.amount(SHARE * most.value(), Kind.FORCE, "N", 0),
                                Text.amount(height, Kind.LENGTH, "mm", 0))));
            }
        }
        return all;
    }

    /** A lug under a joint's force in N, its hole so high above where it is held, m. */
    static Usage usage(double force, Lug lug, double height, Factors factors) {
        double area = lug.plates() * lug.width() * lug.thickness();
        double stress = force / area + 6 * SHARE * force * height / (area * lug.thickness());
        return new Usage(stress, lug.yield(), factors.lug(), Kind.PRESSURE);
    }
}
