// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.LineSpring;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** Whether springs stay within the lengths that they are made for. */
public final class AssistCheck implements Check {
    @Override
    public String id() {
        return "assist";
    }

    @Override
    public String title() {
        return "Assist spring";
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
        Findings.Worst worst = new Findings.Worst(Double.NEGATIVE_INFINITY, Double.NaN, null);
        double most = Double.NEGATIVE_INFINITY;
        for (Pose pose : analysis.poses()) {
            double length = length(analysis, pose, spring);
            double over = Math.max(length - spring.longest(), spring.shortest() - length);
            if (over > worst.value()) {
                worst = new Findings.Worst(over, pose.tilt(), null);
            }
            most = Math.max(most, Math.abs(spring.push(length)));
        }
        double range = spring.longest() - spring.shortest();
        double utilisation = 1 + worst.value() / range;
        Verdict verdict = worst.value() > 0 ? Verdict.FAIL : Verdict.PASS;
        String note = (worst.value() > 0 ? "it is out of its range by this much" : "way left at its nearer end")
                + "; gives up to " + Quantities.show(most, Kind.FORCE, UnitSystem.METRIC);
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
