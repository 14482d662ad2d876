// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sweep;
import tipwright.check.rule.Worked;
import tipwright.design.Alike;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;

/** Stroke and closed length. */
public final class StrokeCheck implements Check {
    @Override
    public String id() {
        return "stroke";
    }

    @Override
    public String title() {
        return "Stroke";
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
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        double length = Sweep.poseAt(analysis, finding.tilt()).length();
        Worked worked = new Worked(analysis, finding, units);
        boolean in = finding.id().endsWith("drawn-in");
        double end = in ? length - finding.demand() : length + finding.demand();
        String limit = worked.show(end, Kind.LENGTH);
        String there = worked.show(length, Kind.LENGTH);
        return "left " + (in ? there + " - closed " + limit : "closed + stroke " + limit + " - " + there) + " = "
                + worked.show(finding.demand(), Kind.LENGTH);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        double margin = analysis.design().limits().strokeMargin();
        Pose shortest = analysis.poses().get(0);
        Pose longest = shortest;
        for (Pose p : analysis.poses()) {
            shortest = p.length() < shortest.length() ? p : shortest;
            longest = p.length() > longest.length() ? p : longest;
        }
        List<Finding> all = new ArrayList<>();
        for (PlacedActuator placed : distinct(analysis)) {
            Actuator a = placed.actuator();
            all.add(end(make, "drawn in", margin, shortest.length() - a.closed(), shortest));
            all.add(end(make, "drawn out", margin, a.closed() + a.stroke() - longest.length(), longest));
        }
        return all;
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

    private static Finding end(Findings make, String part, double margin, double left, Pose at) {
        double utilisation = left > margin / 2 ? margin / left : 2 + (margin / 2 - left) / Math.max(margin, 1e-3);
        Findings.Worst worst = new Findings.Worst(left, at.tilt(), null);
        String note = left < 0
                ? "the actuator is too " + ("drawn in".equals(part) ? "long" : "short") + " by this much"
                : "stroke left at this end, against the margin wanted";
        return make.given(part, left, margin, 1, Kind.LENGTH, utilisation, worst, make.verdict(utilisation), note);
    }
}
