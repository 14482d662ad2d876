// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.actuator.Ratings;
import tipwright.check.joint.TwistedLinks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.Alike;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.supply.HandWinch;

/**
 * The tank is held fast, by a transport pin left in or by ice, and the drive pushes and pulls as hard as it can: cylinders with the
 * relief pressure on their whole area, electric actuators up to where they stall, each of unlike ones with its own force on its own
 * ends. What the bearings and the links that carry the tank bear depends on where it is held, so it is left out. Source: p = F / A;
 * statics.
 */
final class WhatIfJam {
    private static final String PART = "jam";

    private WhatIfJam() {}

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        Design design = analysis.design();
        if (design.supply() instanceof HandWinch || Ratings.byRope(design)) {
            return List.of(make.cannot(PART, "how hard the crank can be turned is not known"));
        }
        Untold untold = new Untold(make);
        List<Finding> each = new ArrayList<>(path(make, analysis, rules, "the drive", untold::takes));
        List<PlacedActuator> actuators = design.drive().actuators();
        if (unlike(actuators)) {
            TwistedLinks links = new TwistedLinks(analysis);
            for (int i = 0; i < actuators.size(); i++) {
                Analysis alone = OneAlone.of(analysis, actuators.get(i));
                each.addAll(
                        path(make, alone, rules, "actuator " + (i + 1), (check, f) -> untold.takes(check, f, links)));
            }
        }
        List<Finding> all = new ArrayList<>();
        each.stream().reduce((a, b) -> b.worseThan(a) ? b : a).ifPresent(all::add);
        all.addAll(untold.told(PART + DrivePath.OTHERS));
        return all;
    }

    /** What bears the actuators of an analysis, told under the name of what pushes. */
    private static List<Finding> path(
            Findings make, Analysis analysis, List<Check> rules, String pushes, DrivePath.Taken untold) {
        Design design = analysis.design();
        return new DrivePath(make, analysis, rules)
                .under(
                        PART,
                        "stuck fast, " + pushes,
                        row -> most(design, row.pose().length(), true),
                        row -> most(design, row.pose().length(), false),
                        untold);
    }

    /** Whether some push harder than their share of what all push: cylinders on one line share by their areas, others alike. */
    private static boolean unlike(List<PlacedActuator> actuators) {
        Actuator first = actuators.get(0).actuator();
        return !actuators.stream().allMatch(p -> p.actuator() instanceof Cylinder)
                && !actuators.stream().allMatch(p -> Alike.parts(p.actuator(), first));
    }

    /**
     * The hardest that all actuators can push or pull together, N.
     *
     * @param length pin to pin, m
     */
    static double most(Design design, double length, boolean push) {
        double pressure = Ratings.relief(design);
        double sum = 0;
        for (PlacedActuator p : design.drive().actuators()) {
            if (p.actuator() instanceof Cylinder c) {
                sum += pressure * c.oilArea(length, push);
            } else if (p.actuator() instanceof ElectricActuator e) {
                sum += e.stall() * (push ? e.ratedPush() : e.ratedPull());
            }
        }
        return sum;
    }
}
