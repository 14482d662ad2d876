// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sweep;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.strength.Column;
import tipwright.strength.EquivalentLoad;
import tipwright.strength.PinStress;

/** Actuators side by side that do not share equally: one carries all, or one runs ahead of the others. */
final class WhatIfShare {
    private final Findings make;
    private final Analysis analysis;
    private final Design design;
    private final List<PlacedActuator> actuators;

    private WhatIfShare(Findings make, Analysis analysis) {
        this.make = make;
        this.analysis = analysis;
        this.design = analysis.design();
        this.actuators = design.drive().actuators();
    }

    static List<Finding> find(Findings make, Analysis analysis) {
        WhatIfShare share = new WhatIfShare(make, analysis);
        if (share.actuators.size() < 2) {
            return List.of();
        }
        List<Finding> all = new ArrayList<>();
        all.add(share.carriesAll());
        all.addAll(share.rod());
        all.addAll(share.pin("frame pin", share.design.drive().framePinJoint()));
        all.addAll(share.pin("moving pin", share.design.drive().tankPinJoint()));
        List<Support> supports = share.design.pivot().bearings();
        for (int i = 0; i < supports.size(); i++) {
            Bearing bearing = supports.get(i).bearing();
            if (bearing instanceof BallInsert insert) {
                all.add(share.bearing(i, insert));
            } else if (bearing instanceof PlainBush bush) {
                all.add(share.bush(i, bush));
            }
        }
        all.add(share.ahead());
        return all;
    }

    private Finding carriesAll() {
        Findings.Worst worst = Sweep.rows(analysis, row -> {
            double most = 0;
            for (Balance b : Sweep.balances(row)) {
                most = Math.max(most, Math.abs(b.force()) / one(row, b.force()));
            }
            return most;
        });
        Double stiffness = design.whatIf().torsion();
        double torque = Sweep.rows(
                        analysis, r -> Math.abs(r.rest().force() * r.pose().arm()))
                .value();
        String twist = stiffness == null
                ? String.format(Locale.ROOT, "twists the cradle with up to %.0f N m", torque / 2)
                : String.format(
                        Locale.ROOT, "twists the cradle by up to %.2f deg", Math.toDegrees(torque / 2 / stiffness));
        return fault("one carries all", worst, twist);
    }

    /** Over its moving rating an actuator stalls, which is close; over what it holds it fails. */
    private Finding fault(String part, Findings.Worst worst, String note) {
        double factor = design.factors().service();
        double holds = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : actuators) {
            Double hold = p.actuator().ratedHold();
            double moving = p.actuator().ratedPush();
            holds = Math.min(holds, hold == null ? 1 : Math.max(1, hold / moving));
        }
        double utilisation = worst.value() * factor;
        if (utilisation <= 1 || utilisation > holds) {
            return make.compare(part, worst.value(), 1, factor, Kind.RATIO, worst, note);
        }
        return make.given(
                part,
                worst.value(),
                1,
                factor,
                Kind.RATIO,
                utilisation,
                worst,
                Verdict.CLOSE,
                "it stalls, but holds; " + note);
    }

    /** What the weakest actuator alone bears, N. */
    private double one(Row row, double force) {
        double together = force > 0 ? Ratings.push(design, row.pose().length()) : Ratings.pull(design);
        return Math.max(together / actuators.size(), 1e-9);
    }

    /** The weakest rod under the whole push; nothing where no rod is known, which the buckling check tells. */
    private List<Finding> rod() {
        List<Actuator> known = actuators.stream()
                .map(PlacedActuator::actuator)
                .filter(Column::known)
                .toList();
        if (known.isEmpty()) {
            return List.of();
        }
        Findings.Worst worst = Sweep.rows(
                analysis, row -> Sweep.push(row) / bears(known, row.pose().length()));
        double length = Sweep.poseAt(analysis, worst.tilt()).length();
        double capacity = bears(known, length);
        return List.of(make.compare(
                "rod when one carries all",
                worst.value() * capacity,
                capacity,
                design.factors().buckling(),
                Kind.FORCE,
                worst,
                "the whole push on one rod, against buckling"));
    }

    private static double bears(List<Actuator> known, double length) {
        return known.stream().mapToDouble(a -> Column.actuator(a, length)).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** A pin of the one that carries all; nothing where it is not known, which the pin check tells. */
    private List<Finding> pin(String name, @Nullable PinJoint joint) {
        if (joint == null) {
            return List.of();
        }
        Findings.Worst worst = Sweep.balances(analysis, b -> PinStress.combined(joint, Math.abs(b.force())));
        return List.of(make.compare(
                name + " when one carries all",
                worst.value(),
                joint.yield(),
                design.factors().pin(),
                Kind.PRESSURE,
                worst,
                "combined stress against yield"));
    }

    private Finding bearing(int bearing, BallInsert insert) {
        String part = part(bearing);
        Double c0 = insert.c0();
        if (c0 == null) {
            return make.missing(part, "bearing.c0 missing");
        }
        Findings.Worst worst = Sweep.balances(
                analysis, b -> oneSided(b, bearing, l -> EquivalentLoad.ofRest(l.xy().norm(), Math.abs(l.z()))));
        return make.compare(
                part,
                worst.value(),
                c0,
                design.factors().bearingStatic(),
                Kind.FORCE,
                worst,
                "static equivalent load against C0");
    }

    private Finding bush(int bearing, PlainBush bush) {
        String part = part(bearing);
        Double allowed = bush.pressure();
        if (allowed == null) {
            return make.missing(part, "bearing.pressure missing");
        }
        double area = bush.bore() * bush.length();
        Findings.Worst worst = Sweep.balances(analysis, b -> oneSided(b, bearing, l -> l.xy().norm() / area));
        return make.compare(
                part,
                worst.value(),
                allowed,
                design.factors().bush(),
                Kind.PRESSURE,
                worst,
                "mean pressure, load over d b");
    }

    private static String part(int bearing) {
        return "bearing " + (bearing + 1) + " when one carries all";
    }

    /** What the load of a bearing asks when the worst-placed actuator carries all: its force moves along z. */
    private double oneSided(Balance b, int bearing, ToDoubleFunction<Vec3> asks) {
        List<Support> supports = design.pivot().bearings();
        double span = supports.get(1).z() - supports.get(0).z();
        double mean =
                actuators.stream().mapToDouble(PlacedActuator::z).average().orElse(0);
        Vec3 load = b.bearings().get(bearing);
        double worst = 0;
        for (PlacedActuator p : actuators) {
            double share = (bearing == 1 ? 1 : -1) * (p.z() - mean) / span;
            double x = load.x() + share * b.drive().x();
            double y = load.y() + share * b.drive().y();
            worst = Math.max(worst, asks.applyAsDouble(new Vec3(x, y, load.z())));
        }
        return worst;
    }

    private Finding ahead() {
        String part = "one runs ahead";
        Double stiffness = design.whatIf().torsion();
        if (stiffness == null) {
            return make.missing(part, "what-if.torsion missing; with a stiff cradle one carries all");
        }
        double step = design.whatIf().runsAhead();
        Findings.Worst worst = Sweep.rows(analysis, row -> {
            double arm = row.pose().arm();
            double forced = stiffness * step / (arm * arm);
            double most = 0;
            for (Balance b : Sweep.balances(row)) {
                double mean = b.force() / actuators.size();
                for (double force : new double[] {mean + forced, mean - forced}) {
                    most = Math.max(most, Math.abs(force) / one(row, force));
                }
            }
            return most;
        });
        double arm = Math.abs(Sweep.poseAt(analysis, worst.tilt()).arm());
        String note = String.format(
                Locale.ROOT,
                "%.1f mm ahead twists the cradle by %.2f deg and shifts %.0f N from one to the other",
                step * 1e3,
                Math.toDegrees(step / arm),
                stiffness * step / (arm * arm));
        return fault(part, worst, note);
    }
}
