// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.around.Footing;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the machine slides down a slope. */
public final class SkidCheck implements Check {
    @Override
    public String id() {
        return "skid";
    }

    @Override
    public String title() {
        return "Machine: skidding on the slope";
    }

    @Override
    public String shortly(Finding finding) {
        return "skidding";
    }

    @Override
    public String rule() {
        return "On the site's ground, on the slope on which it may stand any way round and on the slope asked for, whichever slopes most, the friction of feet or braked wheels on wet ground holds the machine; full or empty makes no difference. Wheels that are not braked hold nothing. Wind is not in it.";
    }

    @Override
    public String formula() {
        return "tan(slope) <= friction / factor";
    }

    @Override
    public String source() {
        return "friction of rest; friction of 0.4: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.ABOUT_STANDING);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.FOOT);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("chocks or spikes, rougher ground, or a gentler slope");
    }

    @Override
    public Text says(Finding finding) {
        return Text.of(
                "on a slope of {}; it would skid from {} on, with its margin",
                Text.degrees(Math.atan(finding.needs()), 1),
                Text.degrees(Math.atan(finding.has()), 1));
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Footing footing = design.supports();
        if (footing == null) {
            return List.of(make.missing("", "supports missing"));
        }
        Vec3 up = design.site().up();
        double ground = Math.hypot(up.x(), up.z()) / up.y();
        Double asked = footing.slope();
        double any = Math.tan(design.site().anyWay());
        double slope = Math.max(Math.max(ground, any), asked == null ? 0 : Math.tan(asked));
        Usage usage = usage(slope, footing.friction(), design.factors().skid());
        return List.of(make.compare(
                "",
                usage,
                Extreme.NOWHERE,
                Text.of("slope as rise over run; a slope of {}", Text.degrees(Math.atan(slope), 1))));
    }

    /** A slope as rise over run, with the friction that holds on it. */
    static Usage usage(double slope, double friction, double factor) {
        return new Usage(slope, friction, factor, Kind.RATIO);
    }
}
