// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.tank.Vent;
import tipwright.load.Contents;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Outlet;
import tipwright.time.Timing;

/** Whether air gets in while slurry leaves. */
public final class VentCheck implements TimedCheck {
    private static final double GENTLE = 2000;

    @Override
    public String id() {
        return "vent";
    }

    @Override
    public String title() {
        return "Vent: air getting in";
    }

    @Override
    public String rule() {
        return "A closed tank gets the air it needs while it drains, through its vent and what stands open above the slurry:"
                + " it drains, and the vacuum stays under 2 kPa, which thin sheet bears. Never open a tank under vacuum"
                + " or pressure: vent first.";
    }

    @Override
    public String formula() {
        return "dp = rho_air / 2 (Q / sum of Cd A of all air openings)^2";
    }

    @Override
    public String source() {
        return "orifice equation for air at small vacuum (from memory); 2 kPa: common practice, no source";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.OF_NORMAL_DUMP);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a larger vent");
    }

    @Override
    public Text says(Finding finding) {
        return finding.allowed("while it drains, the vacuum in the tank reaches");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Findings make = new Findings(this, analysis.design());
        Vent vent = analysis.design().tank().vent();
        Cycle cycle = timing.dump();
        if (cycle == null) {
            return List.of(make.untimed("", timing));
        }
        if (vent == null) {
            return List.of(open(make, analysis.design(), cycle));
        }
        Extreme vacuum = cycle.largest(Moment::vacuum);
        if (vent.diameter() <= 0 && vacuum.value() > GENTLE / 2) {
            return List.of(make.given(
                    "",
                    vacuum.value(),
                    GENTLE,
                    1,
                    Kind.PRESSURE,
                    Double.POSITIVE_INFINITY,
                    vacuum,
                    Verdict.FAIL,
                    "a closed tank without a vent whose opening is under the slurry: it pulls a vacuum and gulps or does not"
                            + " run at all; fit a vent, and never open it under vacuum"));
        }
        Text note = Text.of(
                "vacuum while it drains; vent of {}. Vent it before it is opened",
                Text.amount(vent.diameter(), Kind.LENGTH, "mm", 0));
        return List.of(make.compare("", vacuum.value(), GENTLE, 1, Kind.PRESSURE, vacuum, note));
    }

    /** No vent is stated: fine where air always gets in beside the slurry, else a question. */
    private static Finding open(Findings make, Design design, Cycle cycle) {
        Outlet outlet = new Outlet(design.tank(), design.slurry().mixtureDensity());
        Contents contents = new Contents(design);
        double level = Double.NaN;
        for (Moment m : cycle.moments()) {
            if (m.discharge() > 0) {
                level = contents.liquid(m.tilt(), m.volume(), level).plane().level();
                if (outlet.drowned(m.tilt(), contents.up(m.tilt()), level)) {
                    return make.missing(
                            "",
                            Text.of(
                                    "tank.vent missing; its opening is all under the slurry at {}, and the tank is taken as"
                                            + " open to the air elsewhere",
                                    Text.degrees(m.tilt(), 0)));
                }
            }
        }
        return make.given(
                "",
                0,
                GENTLE,
                1,
                Kind.PRESSURE,
                0,
                Extreme.NOWHERE,
                Verdict.PASS,
                "the opening is never covered, so air gets in there");
    }
}
