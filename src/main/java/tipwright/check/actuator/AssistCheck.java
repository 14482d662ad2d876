// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether springs stay within the lengths, angles and moments that they are made for. */
public final class AssistCheck implements Check {
    @Override
    public String id() {
        return "assist";
    }

    @Override
    public String title() {
        return "Spring: stretch";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": stretch";
    }

    @Override
    public String rule() {
        return "Over the whole tilt range each gas spring and extension spring stays between its shortest and its longest"
                + " length; each torsion spring is wound no further than it may be and gives no more than it is made for.";
    }

    @Override
    public String formula() {
        return "shortest <= L(tilt) <= longest; |M|/k <= wind range; |M| <= rated moment, M = M0 - k turn";
    }

    @Override
    public String source() {
        return "maker's rating";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a spring with a longer extended length, or move its ends");
    }

    @Override
    public Text says(Finding finding) {
        return finding.kind() == Kind.LENGTH && finding.verdict() == Verdict.FAIL
                ? Text.of(
                        Titles.part(finding.title()) + " is out of its range by {}",
                        Text.amount(-finding.has(), Kind.LENGTH))
                : Check.super.says(finding);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Assist assist : analysis.design().assists()) {
            if (assist instanceof LineSpring spring) {
                all.add(one(make, analysis, assist.name(), spring));
            } else if (assist instanceof TorsionSpring torsion) {
                all.addAll(torsion(make, analysis, torsion));
            }
        }
        return all;
    }

    private static Finding one(Findings make, Analysis analysis, String name, LineSpring spring) {
        Extreme worst = Extreme.largest(analysis, pose -> {
            double length = length(analysis, pose, spring);
            return Math.max(length - spring.longest(), spring.shortest() - length);
        });
        double most = Extreme.largest(analysis, pose -> Math.abs(spring.push(length(analysis, pose, spring))))
                .value();
        double range = spring.longest() - spring.shortest();
        double utilisation = 1 + worst.value() / range;
        Verdict verdict = worst.value() > 0 ? Verdict.FAIL : Verdict.PASS;
        String how = worst.value() > 0 ? "it is out of its range" : "way left at its nearer end";
        Text note = Text.of(how + "; gives up to {}", Text.amount(most, Kind.FORCE));
        return make.atLeast(name, -worst.value(), 0, Kind.LENGTH, utilisation, worst, verdict, note);
    }

    private static List<Finding> torsion(Findings make, Analysis analysis, TorsionSpring spring) {
        Extreme most = Extreme.largest(analysis, pose -> Math.abs(spring.momentAt(turn(analysis, pose, spring))));
        Text gives = Text.of("gives up to {}", Text.amount(most.value(), Kind.MOMENT, "N m", 0));
        List<Finding> all = new ArrayList<>();
        Double rated = spring.rated();
        String moment = spring.name() + " moment";
        all.add(
                rated == null
                        ? make.missing(
                                moment,
                                Text.words("assists: rated missing; it ").plus(gives))
                        : make.compare(moment, most.value(), rated, 1, Kind.MOMENT, most, gives));
        Double range = spring.windRange();
        String wind = spring.name() + " wind";
        Extreme widest = Extreme.largest(analysis, pose -> spring.wound(turn(analysis, pose, spring)));
        all.add(
                range == null || Double.isNaN(widest.value())
                        ? make.missing(wind, "assists: " + (range == null ? "wind-range" : "rate above 0") + " missing")
                        : make.compare(
                                wind, widest.value(), range, 1, Kind.ANGLE, widest, "wound from its free angle"));
        return all;
    }

    /** How far the second body of the spring's pin has turned against the first since stowed, rad, positive clockwise. */
    private static double turn(Analysis analysis, Pose pose, TorsionSpring spring) {
        for (JointPlan joint : analysis.mechanism().joints()) {
            if (joint.name().equals(spring.pin())) {
                return pose.bodies().get(joint.b()).turn()
                        - pose.bodies().get(joint.a()).turn();
            }
        }
        return 0;
    }

    private static double length(Analysis analysis, Pose pose, LineSpring spring) {
        return place(analysis, pose, spring.to())
                .minus(place(analysis, pose, spring.from()))
                .norm();
    }

    private static Vec2 place(Analysis analysis, Pose pose, Anchor anchor) {
        int body = analysis.mechanism().bodies().indexOf(anchor.body());
        return pose.bodies().get(body).place(anchor.at());
    }
}
