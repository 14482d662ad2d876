// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
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
import tipwright.quantity.Text;
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
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> Math.abs(b.force()) / one(row, b.force()));
        Double stiffness = design.whatIf().torsion();
        double torque = Extreme.largest(
                        analysis.cases(),
                        MotionDirection.RESTING,
                        r -> Math.abs(r.rest().force() * r.pose().arm()))
                .value();
        Text twist = stiffness == null
                ? Text.of("twists the cradle with up to {}", Text.amount(torque / 2, Kind.MOMENT, "N m", 0))
                : Text.of("twists the cradle by up to {}", Text.degrees(torque / 2 / stiffness, 2));
        return fault("one carries all", worst, twist);
    }

    /** Over its moving rating an actuator stalls, which is close; over what it holds it fails. */
    private Finding fault(String part, Extreme worst, Text note) {
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
                Text.words("it stalls, but holds; ").plus(note));
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
        Extreme worst = Extreme.largest(
                analysis.cases(),
                (row, b) -> Math.max(0, b.force()) / bears(known, row.pose().length()));
        double length = worst.pose(analysis).length();
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
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> PinStress.combined(joint, Math.abs(b.force())));
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
        Extreme worst = Extreme.largest(
                analysis.cases(),
                (row, b) -> oneSided(b, bearing, l -> EquivalentLoad.ofRest(l.xy().norm(), Math.abs(l.z()))));
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
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> oneSided(b, bearing, l -> l.xy().norm() / area));
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
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> {
            double arm = row.pose().arm();
            double forced = stiffness * step / (arm * arm);
            double mean = b.force() / actuators.size();
            double most = 0;
            for (double force : new double[] {mean + forced, mean - forced}) {
                most = Math.max(most, Math.abs(force) / one(row, force));
            }
            return most;
        });
        double arm = Math.abs(worst.pose(analysis).arm());
        Text note = Text.of(
                "{} ahead twists the cradle by {} and shifts {} from one to the other",
                Text.amount(step, Kind.LENGTH, "mm", 1),
                Text.degrees(step / arm, 2),
                Text.amount(stiffness * step / (arm * arm), Kind.FORCE, "N", 0));
        return fault(part, worst, note);
    }
}
