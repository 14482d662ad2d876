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
import tipwright.design.joint.Lug;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.LugStress;

/** Lugs at the joints. */
public final class LugCheck implements Check {
    private static final double SHEAR_YIELD = 1 / Math.sqrt(3);

    @Override
    public String id() {
        return "lug";
    }

    @Override
    public String title() {
        return "Lugs: breaking";
    }

    @Override
    public String title(String part) {
        int end = part.indexOf(' ');
        String place = Titles.the(end < 0 ? part : part.substring(0, end));
        String what = end < 0 ? "" : part.substring(end + 1);
        String wrong =
                switch (what) {
                    case "bearing" -> "hole crushing";
                    case "tear-out" -> "tear-out";
                    case "net section" -> "pull across the hole";
                    default -> "breaking";
                };
        return part.isEmpty() ? title() : "Lug at " + place + ": " + wrong;
    }

    @Override
    public String rule() {
        return "The plate round the pin is checked as if the whole force pulled towards its nearest free edge:"
                + " pressed by the pin, torn out in front of it, and pulled apart beside it.";
    }

    @Override
    public String formula() {
        return "F/(d t) and F/((w - d) t) <= yield / factor; F/(2 t (e - d/2)) <= 0.577 yield / factor";
    }

    @Override
    public String source() {
        return "elementary lug rules, tear-out length conservative against ASME BTH-1 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a thicker lug, or more metal around the hole");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Factors factors = analysis.design().factors();
        return FasteningParts.each(
                make,
                analysis,
                "lug",
                Fastening::lug,
                l -> 0.0,
                (name, lug, load) -> all(make, name, lug, load, factors));
    }

    private static List<Finding> all(Findings make, String name, Lug lug, JointLoad load, Factors factors) {
        Extreme most = load.worst(held -> held.force().xy().norm());
        double force = most.value();
        return List.of(
                make.compare(
                        name + " bearing",
                        crushing(force, lug, factors),
                        most,
                        Text.words("the pin pressing in its hole")),
                make.compare(
                        name + " tear-out",
                        tearingOut(force, lug, factors),
                        most,
                        Text.words("shear on the two planes in front of the pin")),
                make.compare(
                        name + " net section",
                        pulledApart(force, lug, factors),
                        most,
                        Text.words("pull beside the hole")));
    }

    /** The hole of a lug under a force in N. */
    static Usage crushing(double force, Lug lug, Factors factors) {
        return new Usage(LugStress.bearing(lug, force), lug.yield(), factors.lug(), Kind.PRESSURE);
    }

    /** The metal in front of the pin under a force in N. */
    static Usage tearingOut(double force, Lug lug, Factors factors) {
        return new Usage(LugStress.tearOut(lug, force), SHEAR_YIELD * lug.yield(), factors.lug(), Kind.PRESSURE);
    }

    /** The metal beside the hole under a force in N. */
    static Usage pulledApart(double force, Lug lug, Factors factors) {
        return new Usage(LugStress.netSection(lug, force), lug.yield(), factors.lug(), Kind.PRESSURE);
    }
}
