// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Mechanism;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.drive.Assist;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.TorsionSpring;
import tipwright.design.joint.Lug;
import tipwright.design.key.NameId;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.LugStress;

/** The links of the mechanism, as columns where they are pressed and as bars where they are drawn. */
public final class LinkCheck implements Check {
    private static final String TENSION = "-tension";
    private static final String EYE = "-eye";
    private static final double SHEAR_YIELD = 1 / Math.sqrt(3);

    @Override
    public String id() {
        return "link";
    }

    @Override
    public String title() {
        return "Links: buckling";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.endsWith(TENSION)
                        ? Titles.link(part.substring(0, part.length() - TENSION.length())) + ": pull"
                        : part.endsWith(EYE)
                                ? Titles.link(part.substring(0, part.length() - EYE.length())) + ": eye"
                                : Titles.link(part) + ": buckling";
    }

    @Override
    public String rule() {
        return "A link between two pins is a column pinned at both ends, about its weaker axis, under the largest compression"
                + " over all tilts, loads and directions of motion; pulled, its section beside the hole stays below yield. Of links"
                + " on both sides each bears half. Where a weight on the link bends it too, both shares are added, the bending"
                + " enlarged by the compression. Its eyes, where they are described, are checked as lugs: pressed by the pin, torn"
                + " out in front of it and pulled apart beside it. Friction's moment in the pins is not looked at."
                + " Where force reaches a link beside its middle, it cannot be told.";
    }

    @Override
    public String formula() {
        return "Euler pi^2 E I / L^2; Johnson A Sy (1 - Sy (L/k)^2 / (4 pi^2 E)) when L/k < sqrt(2 pi^2 E / Sy); with bending:"
                + " n P/Pcr + n2 M/(S Sy) / (1 - n P/Pe) <= 1; drawn: T/(A - hole) <= yield / n2;"
                + " eye: F/(d t), T/((w - d) t) <= yield / n2, T/(2 t (e - d/2)) <= 0.577 yield / n2";
    }

    @Override
    public String source() {
        return "Euler and J. B. Johnson columns (Hibbeler, Mechanics of Materials, ch. 13; Faires); with bending: the sum of"
                + " shares of AISC's allowable stress design (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LINK);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("a thicker or shorter link{}", finding, limits);
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        for (LinkPlan link : analysis.mechanism().links()) {
            String name = analysis.mechanism().bodies().get(link.body());
            LinkSection made = find(analysis.design(), name);
            if (made != null && finding.id().equals(id() + "/" + NameId.of(name))) {
                return new WorkedFormula(analysis, finding, units).bars(made, link.length());
            }
        }
        return "";
    }

    private static @Nullable LinkSection find(Design design, String body) {
        return design.linkSections().stream()
                .filter(s -> s.body().equals(body))
                .findFirst()
                .orElse(null);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Mechanism mechanism = analysis.mechanism();
        List<Finding> all = new ArrayList<>();
        for (int body = 1; body < mechanism.bodies().size(); body++) {
            if (body != mechanism.tank() && !mechanism.slides(body)) {
                all.addAll(one(make, analysis, body));
            }
        }
        return TwistedLinks.judged(make, analysis, all);
    }

    private static List<Finding> one(Findings make, Analysis analysis, int body) {
        String name = analysis.mechanism().bodies().get(body);
        LinkPlan link = analysis.mechanism().link(body);
        if (link == null) {
            return List.of(make.cannot(name, "it has more than two pins, so it bends; check it by hand"));
        }
        if (analysis.design().assists().stream().anyMatch(a -> springs(a, analysis.mechanism(), body))) {
            return List.of(make.cannot(name, "a spring sits on it, so it bends; check it by hand"));
        }
        LinkLoad load = new LinkLoad(analysis, link);
        LinkSection made = find(analysis.design(), name);
        if (made == null) {
            double squeeze = Extreme.largest(
                            analysis.cases(), (row, b) -> load.at(row.pose(), b).squeeze())
                    .value();
            Text bears = squeeze > 0
                    ? Text.of("it is pressed with up to {}", Text.amount(squeeze, Kind.FORCE))
                    : Text.words("it is only pulled, never pushed");
            return List.of(make.missing(
                    name, Text.words("link-sections: '" + name + "' missing; ").plus(bears)));
        }
        LinkBars bars = new LinkBars(made, link.length(), analysis.design().factors());
        List<Finding> found = new ArrayList<>();
        found.add(pressed(make, analysis, name, load, bars));
        Extreme drawn = Extreme.largest(analysis.cases(), (row, b) -> bars.stress(load.at(row.pose(), b)));
        if (drawn.value() > 0) {
            found.add(make.compare(
                    name + TENSION,
                    drawn(drawn.value(), made, analysis.design().factors()),
                    drawn,
                    Text.words("pull across the hole, against yield")));
        }
        found.add(eye(make, analysis, name, load, made));
        return found;
    }

    /** The plate round the pin: the worst of bearing under push or pull, tear-out and net section under pull. */
    private static Finding eye(Findings make, Analysis analysis, String name, LinkLoad load, LinkSection made) {
        Lug eye = made.eye();
        double factor = analysis.design().factors().lug();
        if (eye == null) {
            return make.missing(name + EYE, "link-sections: '" + name + "': eye missing");
        }
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> stressed(eye, load.at(row.pose(), b)));
        LinkLoad.Borne there =
                load.at(worst.pose(analysis), Objects.requireNonNull(worst.balance(analysis.cases()), "a load case"));
        double pull = Math.max(0, there.draw());
        double torn = LugStress.tearOut(eye, pull) / SHEAR_YIELD;
        double beside = LugStress.netSection(eye, pull);
        String how = worst.value() == torn && pull > 0
                ? "tear-out in front of the pin, as yield in pull"
                : worst.value() == beside && pull > 0 ? "pull beside the pin" : "the pin pressing in its hole";
        return make.compare(name + EYE, worst.value(), eye.yield(), factor, Kind.PRESSURE, worst, how);
    }

    /** Largest stress in an eye as a share of what it may bear times yield, Pa. */
    private static double stressed(Lug eye, LinkLoad.Borne load) {
        double pull = Math.max(0, load.draw());
        double either = Math.max(pull, Math.max(0, load.squeeze()));
        double drawn =
                pull > 0 ? Math.max(LugStress.tearOut(eye, pull) / SHEAR_YIELD, LugStress.netSection(eye, pull)) : 0;
        return Math.max(LugStress.bearing(eye, either), drawn);
    }

    private static Finding pressed(Findings make, Analysis analysis, String name, LinkLoad load, LinkBars bars) {
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> bars.share(load.at(row.pose(), b)));
        LinkLoad.Borne there =
                load.at(worst.pose(analysis), Objects.requireNonNull(worst.balance(analysis.cases()), "a load case"));
        String what = load.sides() == 2 ? "each of the two" : "it";
        Text note = !(there.squeeze() > 0)
                ? Text.words("it is only pulled, never pushed")
                : there.bend() > 0
                        ? Text.words(what)
                                .plus(Text.of(
                                        " is pressed, and bent by its own weight with {}",
                                        Text.amount(there.bend(), Kind.MOMENT)))
                        : Text.words(what + " as a column about its weaker axis");
        return make.given(
                name,
                Math.max(0, there.squeeze()),
                bars.buckling(),
                analysis.design().factors().buckling(),
                Kind.FORCE,
                Math.max(0, worst.value()),
                worst,
                make.verdict(worst.value()),
                note);
    }

    /** A link that is drawn, under a stress beside its hole in Pa. */
    static Usage drawn(double stress, LinkSection made, Factors factors) {
        return new Usage(stress, made.yield(), factors.lug(), Kind.PRESSURE);
    }

    private static boolean springs(Assist assist, Mechanism mechanism, int body) {
        String name = mechanism.bodies().get(body);
        return assist instanceof LineSpring line
                ? line.from().body().equals(name) || line.to().body().equals(name)
                : assist instanceof TorsionSpring torsion && mechanism.has(body, torsion.pin());
    }
}
