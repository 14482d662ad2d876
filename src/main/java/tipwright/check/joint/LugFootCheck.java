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
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Lug;
import tipwright.geometry.Vec2;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether there is metal left between the hole of a lug and the weld at its foot. */
public final class LugFootCheck implements Check {
    @Override
    public String id() {
        return "lug-foot";
    }

    @Override
    public String title() {
        return "Lugs: metal between hole and weld";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Lug at " + Titles.the(part) + ": metal between hole and weld";
    }

    @Override
    public String rule() {
        return "From the middle of the pin to the foot of its lug there is more than half the hole and the leg of the weld on"
                + " the plate, or the hole is cut into the weld.";
    }

    @Override
    public String formula() {
        return "h >= d/2 + a, with the hole d, the leg a and the height h of the pin over the plane of the weld";
    }

    @Override
    public String source() {
        return "geometry";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of();
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a lug that stands further off its weld, or a smaller pin");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        List<Finding> all = new ArrayList<>();
        for (Fastening fastening : design.fastenings()) {
            Lug lug = fastening.lug();
            FilletWeld weld = fastening.weld();
            Vec2 pin = design.drive().places(design.pivot().at()).get(fastening.joint());
            double off = weld == null || pin == null ? Double.NaN : weld.off(pin);
            if (lug != null && weld != null && off >= 0) {
                double wanted = lug.hole() / 2 + weld.leg();
                all.add(make.atLeast(
                        fastening.joint(),
                        off,
                        wanted,
                        Kind.LENGTH,
                        wanted / off,
                        Extreme.NOWHERE,
                        off >= wanted ? Verdict.PASS : Verdict.FAIL,
                        Text.words("from the middle of the pin to the foot of its lug")));
            }
        }
        return all;
    }
}
