// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Alike;
import tipwright.design.Limits;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Stroke and closed length. */
public final class StrokeCheck implements Check {
    private static final String IN = "drawn-in";
    private static final String OUT = "drawn-out";

    @Override
    public String id() {
        return "stroke";
    }

    @Override
    public String title() {
        return "Actuator: stroke";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.equals(IN) ? "Actuator: stroke left when closed" : "Actuator: stroke left when fully out";
    }

    @Override
    public String rule() {
        return "Over the whole tilt range the pin-to-pin length stays between the closed length and the full length, with a"
                + " margin kept free at each end.";
    }

    @Override
    public String formula() {
        return "closed + margin <= L(tilt) <= closed + stroke - margin";
    }

    @Override
    public String source() {
        return "common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Text says(Finding finding) {
        String end = drawnIn(finding.id()) ? "before it is closed" : "before it is fully out";
        return finding.has() < 0
                ? Text.of(
                        "the actuator has no stroke left " + end + ": it is {} short, with the {} spare that is wanted",
                        Text.amount(finding.needs() - finding.has(), Kind.LENGTH),
                        Text.amount(finding.needs(), Kind.LENGTH))
                : Text.of(
                        "the actuator has {} of stroke left " + end + ", {} wanted", finding.there(), finding.needed());
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        double lacking = finding.needs() - finding.has();
        if (!(lacking > 0)) {
            return Text.words("a little more room at that end of the stroke, or " + Fix.NEARER);
        }
        Text much = Text.amount(lacking, Kind.LENGTH);
        return drawnIn(finding.id())
                ? Text.of("an actuator that is {} shorter when closed" + Fix.BOX + ", or " + Fix.NEARER, much)
                : Text.of("an actuator with {} more stroke" + Fix.BOX + ", a shorter tilt, or " + Fix.NEARER, much);
    }

    @Override
    public String bound(String id) {
        return drawnIn(id) ? "actuator too long when closed" : "stroke too short";
    }

    @Override
    public List<String> bounding() {
        return List.of(id() + "/" + IN, id() + "/" + OUT);
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        double length = finding.worst().pose(analysis).length();
        WorkedFormula worked = new WorkedFormula(analysis, finding, units);
        boolean in = drawnIn(finding.id());
        double end = in ? length - finding.demand() : length + finding.demand();
        String limit = worked.show(end, Kind.LENGTH);
        String there = worked.show(length, Kind.LENGTH);
        return "left " + (in ? there + " - closed " + limit : "closed + stroke " + limit + " - " + there) + " = "
                + worked.show(finding.demand(), Kind.LENGTH);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        double margin = analysis.design().limits().strokeMargin();
        Extreme shortest = Extreme.smallest(analysis, 0, Pose::length);
        Extreme longest = Extreme.largest(analysis, Pose::length);
        List<Finding> all = new ArrayList<>();
        List<PlacedActuator> kinds = distinct(analysis);
        for (String part : List.of(IN, OUT)) {
            Finding worst = null;
            for (PlacedActuator placed : kinds) {
                Actuator a = placed.actuator();
                String which = kinds.size() == 1
                        ? "the actuator"
                        : "actuator " + (analysis.design().drive().actuators().indexOf(placed) + 1);
                Finding f = part.equals(IN)
                        ? end(make, which, IN, margin, shortest.value() - a.closed(), shortest)
                        : end(make, which, OUT, margin, a.closed() + a.stroke() - longest.value(), longest);
                worst = worst == null || f.worseThan(worst) ? f : worst;
            }
            if (worst != null) {
                all.add(worst);
            }
        }
        return all;
    }

    private static boolean drawnIn(String id) {
        return id.endsWith(IN);
    }

    private static List<PlacedActuator> distinct(Analysis analysis) {
        List<PlacedActuator> all = new ArrayList<>();
        for (PlacedActuator p : analysis.design().drive().actuators()) {
            boolean known = false;
            for (PlacedActuator q : all) {
                known |= Alike.parts(q.actuator(), p.actuator());
            }
            if (!known) {
                all.add(p);
            }
        }
        return all;
    }

    /** Share of a margin in m that is used up, by what is left of the stroke in m: over 2, how far it is short of half of it. */
    static double used(double left, double margin) {
        return left > margin / 2 ? margin / left : 2 + (margin / 2 - left) / Math.max(margin, 1e-3);
    }

    private static Finding end(Findings make, String which, String part, double margin, double left, Extreme at) {
        double utilisation = used(left, margin);
        Extreme worst = Extreme.at(left, at.tilt());
        String note = left < 0
                ? which + " is too " + (IN.equals(part) ? "long" : "short") + " by this much"
                : "stroke left at this end, against the margin wanted";
        return make.atLeast(
                part, left, margin, Kind.LENGTH, utilisation, worst, make.verdict(utilisation), Text.words(note));
    }
}
