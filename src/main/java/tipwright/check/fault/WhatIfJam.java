// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.key.Copy;
import tipwright.design.supply.HandWinch;
import tipwright.geometry.Vec2;
import tipwright.load.LoadCase;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * The tank is held fast, by a transport pin left in or by ice, and the drive pushes and pulls as hard as it can: cylinders with the
 * relief pressure on their whole area, electric actuators up to where they stall. What bears the actuator alone then has to stay below
 * yield, with no factor. What the bearings and links bear depends on where the tank is held, so it is left out. Source: p = F / A; statics.
 */
final class WhatIfJam {
    private static final String PART = "jam";
    private static final Set<String> PINS = Set.of(Drive.FRAME_PIN, Drive.ROD_PIN, Drive.TANK_PIN);

    private WhatIfJam() {}

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        Design design = analysis.design();
        if (design.supply() instanceof HandWinch) {
            return List.of(make.missing(PART, "how hard the crank can be turned is not known"));
        }
        Analysis jammed = jammed(analysis);
        List<Finding> told = new ArrayList<>();
        Set<String> unknown = new LinkedHashSet<>();
        for (Check check : rules) {
            if (check.traits().contains(Trait.BEARS_DRIVE)) {
                List<Finding> found =
                        check.run(jammed).stream().filter(WhatIfJam::inTheWay).toList();
                for (Finding f : found) {
                    if (f.verdict() != Verdict.NOT_CHECKED) {
                        told.add(f);
                    } else if (missing(check.run(analysis), f.id())) {
                        unknown.add(check.part(f));
                    }
                }
            }
        }
        List<Finding> all = new ArrayList<>();
        if (!told.isEmpty()) {
            all.add(worst(make, jammed, told));
        }
        if (!unknown.isEmpty()) {
            all.add(make.missing(
                    PART + " other parts", "what their own checks cannot tell: " + String.join(", ", unknown)));
        }
        return all;
    }

    /** Whether a part is missing in the whole design, and not only among those that bear the actuator. */
    private static boolean missing(List<Finding> all, String id) {
        return all.stream().anyMatch(f -> f.id().equals(id) && f.verdict() == Verdict.NOT_CHECKED);
    }

    /** Whether a finding is about a part that bears the actuator's force and nothing else. */
    private static boolean inTheWay(Finding f) {
        String id = f.id();
        return !id.startsWith("bearing") && !id.startsWith("bush") && !id.startsWith("shaft")
                && (!id.startsWith("pin/") || PINS.contains(id.substring(4)));
    }

    private static Finding worst(Findings make, Analysis jammed, List<Finding> told) {
        Finding worst = told.get(0);
        for (Finding f : told) {
            worst = f.worseThan(worst) ? f : worst;
        }
        Balance balance = worst.worst().balance(jammed.cases());
        double force = balance == null ? 0 : balance.force();
        List<String> others = new ArrayList<>();
        for (Finding f : told) {
            if (f.verdict() == Verdict.FAIL && !f.equals(worst)) {
                others.add(f.title());
            }
        }
        Text note = Text.of(
                "held fast, the drive {} with {}; worst there: " + worst.title()
                        + (others.isEmpty() ? "" : "; too weak as well: " + String.join("; ", others)),
                Text.words(force < 0 ? "pulls" : "pushes"),
                Text.amount(Math.abs(force), Kind.FORCE));
        return make.given(
                PART,
                worst.demand(),
                worst.capacity(),
                worst.factor(),
                worst.kind(),
                worst.utilisation(),
                Extreme.at(worst.worst().value(), worst.tilt()),
                worst.verdict(),
                note);
    }

    /** The same machine with the drive at its limit at every tilt: it pushes on its way up and pulls on its way back. */
    static Analysis jammed(Analysis analysis) {
        Design design = analysis.design();
        List<Fastening> held = design.fastenings().stream()
                .filter(f -> PINS.contains(f.joint()))
                .toList();
        Design bare = Copy.with(Copy.with(design, "fastenings", held), "factors", Factors.none());
        CaseResult any = analysis.cases().get(0);
        List<Row> rows = any.rows().stream().map(row -> row(design, row)).toList();
        LoadCase load = any.load();
        LoadCase named = new LoadCase(PART, load.about(), LoadCase.NEVER, load.states(), load.contents());
        return new Analysis(
                bare,
                analysis.mechanism(),
                analysis.poses(),
                List.of(new CaseResult(named, rows)),
                analysis.emptying(),
                analysis.stop(),
                analysis.warnings());
    }

    private static Row row(Design design, Row row) {
        double length = row.pose().length();
        return new Row(
                row.pose(),
                row.load(),
                row.centroid(),
                at(row.rest(), 0),
                at(row.raise(), most(design, length, true)),
                at(row.lower(), -most(design, length, false)));
    }

    private static Balance at(Balance b, double force) {
        return new Balance(
                force,
                b.pivot(),
                b.bearings(),
                b.drive(),
                b.joints().stream().map(j -> Vec2.ZERO).toList(),
                b.couples());
    }

    /**
     * The hardest that all actuators can push or pull together, N.
     *
     * @param length pin to pin, m
     */
    static double most(Design design, double length, boolean push) {
        Double setting = Ratings.setting(design);
        double pressure = setting == null ? Double.POSITIVE_INFINITY : setting;
        List<PlacedActuator> actuators = design.drive().actuators();
        for (PlacedActuator p : actuators) {
            pressure = p.actuator() instanceof Cylinder c ? Math.min(pressure, c.reliefPressure()) : pressure;
        }
        double sum = 0;
        for (PlacedActuator p : actuators) {
            if (p.actuator() instanceof Cylinder c) {
                sum += pressure * c.oilArea(length, push);
            } else if (p.actuator() instanceof ElectricActuator e) {
                sum += e.stall() * (push ? e.ratedPush() : e.ratedPull());
            }
        }
        return sum;
    }
}
