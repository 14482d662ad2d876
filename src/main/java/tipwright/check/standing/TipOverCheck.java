// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.around.Footing;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the machine stays on its feet. */
public final class TipOverCheck implements Check {
    private static final String SUPPORTS = "supports";

    @Override
    public String id() {
        return "tip-over";
    }

    @Override
    public String title() {
        return "Machine: overturning";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.equals("supports")
                        ? "Wheels and feet: load"
                        : part.equals("any way round")
                                ? "Machine: overturning, parked any way round"
                                : "Machine: overturning, as parked in the file";
    }

    @Override
    public String shortly(Finding finding) {
        return "overturning";
    }

    @Override
    public String rule() {
        return "About each edge of the outline that it stands on, at every tilt and load, also with the settled solids stuck to"
                + " the end, the moments that hold the machine down are larger than those that turn it over: on the site's"
                + " ground, on the slope asked for whichever way it stands, in the wind over that edge, and no support is"
                + " overloaded. The wind blows on the tank, on the frame's members and on the wheels, also on those behind others; a"
                + " member without z reaches as far as those with it, and where one takes up the place of a tyre that counts once. What is loose in the tank settles again on each slope: the surface of a"
                + " liquid is level there too. Feet or tyres that give let the machine lean until it is at rest on them.";
    }

    @Override
    public String formula() {
        return "overturning / (restoring / factor) about an edge; square to the ground W cos(a) d, along it W sin(a) h, wind"
                + " p A h; R = k (a + b x + c z) at the supports";
    }

    @Override
    public String source() {
        return "statics of a rigid body on a plane; factor, and equal springs where none are given: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_STANDING);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.FOOT, PartKind.WHEEL);
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        Footing footing = analysis.design().supports();
        Double y = footing == null ? null : level(analysis.design(), footing);
        if (footing == null || y == null || !finding.id().endsWith(SUPPORTS)) {
            return Concerned.of(looksAt(), finding);
        }
        List<String> some = Standing.of(analysis, footing, y).feet().stream()
                .map(i -> MachinePart.support(i + 1))
                .toList();
        return new Concerned(looksAt(), String.join(", ", some), false);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a wider stance or outriggers, weight low down on the far side, or less in the tank");
    }

    @Override
    public Text says(Finding finding) {
        return switch (finding.partId()) {
            case "any-way-round" -> Text.of(
                    "parked any way round, the machine keeps its margin on slopes up to {}, {} wanted",
                    finding.there(),
                    finding.needed());
            case "as-it-stands" -> Text.of(
                    "parked as in the file, {} turn the machine over and {} hold it, the margin taken off",
                    finding.needed(),
                    finding.there());
            default -> Check.super.says(finding);
        };
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Footing footing = design.supports();
        if (footing == null) {
            return List.of(make.missing("", "supports missing"));
        }
        Double y = level(design, footing);
        if (y == null) {
            return List.of(make.missing("", "supports.y missing, and no ground"));
        }
        if (WholeUnit.frame(design) == null) {
            return List.of(make.missing("", "frame.mass or frame.centre missing"));
        }
        Standing standing = Standing.of(analysis, footing, y);
        List<Finding> all = new ArrayList<>();
        all.add(asItStands(make, design, standing));
        Double slope = footing.slope();
        if (slope != null) {
            all.add(anyWay(make, standing, slope));
        }
        all.add(supports(make, footing, standing));
        return all;
    }

    private static @Nullable Double level(Design design, Footing footing) {
        if (footing.y() != null) {
            return footing.y();
        }
        return design.ground() == null ? null : design.ground().y();
    }

    private static Finding asItStands(Findings make, Design design, Standing s) {
        Text edge = s.worstEdge().isEmpty()
                ? Text.words("nothing turns it over on this ground")
                : Text.words("over the edge ").plus(s.worstEdge());
        Text note = edge.plus(Text.of(
                "; parked any way round it keeps its margin on slopes up to {} and overturns at {}",
                Text.degrees(s.keeps().value(), 1),
                Text.degrees(s.tips(), 1)));
        note = s.wind().isEmpty() ? note : note.plus("; ").plus(s.wind());
        return make.compare(
                "as-it-stands",
                s.moments().overturning(),
                s.moments().restoring(),
                design.factors().tipOver(),
                Kind.MOMENT,
                s.worst(),
                note);
    }

    private static Finding anyWay(Findings make, Standing s, double slope) {
        return make.compare(
                "any way round",
                slope,
                s.keeps().value(),
                1,
                Kind.ANGLE,
                s.keeps(),
                "slope asked for, straight down over the weakest edge");
    }

    private static Finding supports(Findings make, Footing footing, Standing s) {
        Double rating = footing.rating();
        if (rating == null) {
            Text most = Double.isInfinite(s.heaviest().value())
                    ? Text.words("; it overturns")
                    : Text.of(
                            "; the most on one is {}", Text.amount(s.heaviest().value(), Kind.FORCE, "kN", 1));
            return make.missing(SUPPORTS, Text.words("supports.rating missing").plus(most));
        }
        Text lifts = s.lifts();
        Text note = Text.words("load on one support");
        note = lifts == null ? note : note.plus("; one lifts off at ").plus(lifts);
        return make.compare(SUPPORTS, s.heaviest().value(), rating, 1, Kind.FORCE, s.heaviest(), note);
    }
}
