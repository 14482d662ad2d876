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
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.LineSpring;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether springs stay within the lengths that they are made for. */
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
        return part.isEmpty() ? title() : Titles.first(part) + ": stretch";
    }

    @Override
    public String rule() {
        return "Over the whole tilt range each gas spring and extension spring stays between its shortest and its longest"
                + " length.";
    }

    @Override
    public String formula() {
        return "shortest <= L(tilt) <= longest";
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
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        List<Finding> all = new ArrayList<>();
        for (Assist assist : analysis.design().assists()) {
            if (assist instanceof LineSpring spring) {
                all.add(one(make, analysis, assist.name(), spring));
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
        String how = worst.value() > 0 ? "it is out of its range by this much" : "way left at its nearer end";
        Text note = Text.of(how + "; gives up to {}", Text.amount(most, Kind.FORCE));
        return make.given(name, Math.abs(worst.value()), range, 1, Kind.LENGTH, utilisation, worst, verdict, note);
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
