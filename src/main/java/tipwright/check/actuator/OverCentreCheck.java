// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Where the load passes over the pivot and the actuator's force changes sign. */
public final class OverCentreCheck implements Check {
    /** So many loads are named one by one. */
    private static final int FEW = 2;

    @Override
    public String id() {
        return "over-centre";
    }

    @Override
    public String title() {
        return "Tank: going over by itself";
    }

    @Override
    public String rule() {
        return "When the tank's centre of weight goes over the pivot, the push becomes a pull and slack in the pins lets the tank drop: close with an actuator that can pull, a failure with a single-acting cylinder.";
    }

    @Override
    public String formula() {
        return "F(tilt) = 0 at rest, by load case";
    }

    @Override
    public String source() {
        return "common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.PASS
                ? finding.note()
                : Text.of(
                        "the tank goes over by itself and pulls the other way with {}; the actuator holds {} that way",
                        Text.amount(finding.needs(), Kind.FORCE),
                        Text.amount(finding.has(), Kind.FORCE));
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("move the pivot towards the dump end or higher, tilt less, or fit an actuator that can pull");
    }

    @Override
    public String bound(String id) {
        return "goes over by itself";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        boolean pushesUp = analysis.poses().get(0).arm() > 0;
        List<Text> crossings = new ArrayList<>();
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        int toPull = 0;
        for (CaseResult result : analysis.cases()) {
            double at = crossing(result.rows());
            if (!Double.isNaN(at)) {
                first = Math.min(first, at);
                last = Math.max(last, at);
                crossings.add(Text.words(
                                CaseName.shown(result.name(), analysis.design().tank()) + " at ")
                        .plus(Text.degrees(at, 1)));
                toPull += result.rows().get(0).rest().force() > 0 ? 1 : 0;
            }
        }
        Extreme push = Extreme.largest(
                analysis.cases(), MotionDirection.RESTING, r -> r.rest().force());
        Extreme pull = Extreme.largest(
                analysis.cases(), MotionDirection.RESTING, r -> -r.rest().force());
        Extreme back = pushesUp ? pull : push;
        double force = Math.max(0, back.value());
        double rated = pushesUp
                ? Ratings.pull(analysis.design())
                : Ratings.push(analysis.design(), push.pose(analysis).length());
        boolean both = push.value() > 0 && pull.value() > 0;
        if (!both) {
            String note = (pull.value() > 0 ? "the actuator pulls" : "the actuator pushes")
                    + " at every tilt; the load never goes over by itself";
            return List.of(make.given("", force, rated, 1, Kind.FORCE, 0, Extreme.NOWHERE, Verdict.PASS, note));
        }
        boolean holds = rated > 0;
        double utilisation = utilisation(force, rated);
        Verdict verdict = holds ? Verdict.CLOSE : Verdict.FAIL;
        String word = Ratings.byRope(analysis.design()) ? "rope" : "cylinder";
        Text list = crossings.size() <= FEW
                ? Text.words(": ").plus(Text.join(", ", crossings))
                : Text.of(" at {} to {}, depending on the load", Text.degrees(first, 1), Text.degrees(last, 1));
        Text note = crossings.isEmpty()
                ? Text.words(leaving(push, pull, analysis.design().tank())
                        + (holds
                                ? "; slack in the pins lets the tank jump as the load leaves, let it leave slowly"
                                : ", which this " + word + " cannot hold back"))
                : holds
                        ? passing(list, toPull, crossings.size())
                        : Text.words("this " + word + " cannot hold back a tank that goes over by itself")
                                .plus(list);
        return List.of(make.given("", force, rated, 1, Kind.FORCE, utilisation, back, verdict, note));
    }

    /** A force in N that turned round, against what is rated that way, N; 2 where nothing is. */
    static double utilisation(double force, double rated) {
        return rated > 0 ? force / rated : 2;
    }

    private static Text passing(Text list, int toPull, int all) {
        String from = toPull == all
                ? "the push turns into a pull"
                : toPull == 0 ? "the pull turns into a push" : "the force changes direction";
        return Text.words(from).plus(list).plus("; slack in the pins lets the tank drop there, so go slowly");
    }

    /** No load passes over the pivot as it tips, but one leaves and the other is on the other side of it. */
    private static String leaving(Extreme push, Extreme pull, Tank tank) {
        return "it pushes with the load '" + name(push, tank) + "' and pulls with the load '" + name(pull, tank) + "'";
    }

    private static String name(Extreme extreme, Tank tank) {
        return CaseName.shown(String.valueOf(extreme.loadCase()), tank);
    }

    /** First tilt at which the force at rest changes sign, rad; NaN when it does not. */
    static double crossing(List<Row> rows) {
        for (int i = 1; i < rows.size(); i++) {
            double a = rows.get(i - 1).rest().force();
            double b = rows.get(i).rest().force();
            if (a != 0 && a * b <= 0) {
                double share = a / (a - b);
                return rows.get(i - 1).tilt()
                        + share * (rows.get(i).tilt() - rows.get(i - 1).tilt());
            }
        }
        return Double.NaN;
    }
}
