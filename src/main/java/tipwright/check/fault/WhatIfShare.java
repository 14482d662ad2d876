// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Actuators side by side that do not share equally: one carries all, or one runs ahead of the others. */
final class WhatIfShare {
    static final String ALL = " when one carries all";
    static final String CARRIES = "One actuator carries everything: ";
    /** In place of a rating where an actuator cannot push or pull, N. */
    private static final double NOTHING = 1e-9;

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

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        WhatIfShare share = new WhatIfShare(make, analysis);
        if (share.actuators.size() < 2) {
            return List.of();
        }
        List<Finding> all = new ArrayList<>();
        all.add(share.carriesAll());
        all.addAll(share.parts(rules));
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
        String part = "one carries all";
        return worse(
                fault(part, worst, twist),
                held(part, (row, i) -> Math.abs(row.rest().force()), twist));
    }

    /** Force on one of the actuators at rest, N. */
    private interface Borne {
        double of(Row row, int actuator);
    }

    /** An actuator that stops with that force on it; null: it is not known of each what it holds. */
    private @Nullable Finding held(String part, Borne force, Text note) {
        if (!HoldCheck.known(design)) {
            return null;
        }
        Finding worst = null;
        for (int i = 0; i < actuators.size(); i++) {
            int one = i;
            Extreme most = Extreme.largest(analysis.cases(), MotionDirection.RESTING, row -> held(force, row, one)
                    .utilisation());
            Usage usage = held(force, Objects.requireNonNull(most.row(analysis.cases()), "a load case"), one);
            Text slips = Text.words(usage.utilisation() <= 1 ? "" : "stopped, that actuator cannot hold the tank; ");
            Finding f = make.compare(part, usage, most, slips.plus(note));
            worst = worst == null || f.worseThan(worst) ? f : worst;
        }
        return worst;
    }

    private Usage held(Borne force, Row row, int actuator) {
        Double hold = hold(actuators.get(actuator), row, row.rest().force());
        return HoldCheck.usage(force.of(row, actuator), Objects.requireNonNull(hold, "hold"), design.factors());
    }

    /** What an actuator holds at a row, N; null where that is not known. */
    private @Nullable Double hold(PlacedActuator placed, Row row, double force) {
        Pose pose = row.pose();
        return HoldCheck.one(design, placed.actuator(), pose.length(), pose.arm(), force > 0);
    }

    private static Finding worse(Finding moving, @Nullable Finding held) {
        return held != null && held.verdict() == Verdict.FAIL && held.worseThan(moving) ? held : moving;
    }

    /** Over its moving rating an actuator stalls, which is close; over what it holds it fails. */
    private Finding fault(String part, Extreme worst, Text note) {
        Row row = Objects.requireNonNull(worst.row(analysis.cases()), "a load case");
        Balance there = Objects.requireNonNull(worst.balance(analysis.cases()), "a direction of motion");
        double factor = design.factors().service();
        double holds = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : actuators) {
            Double hold = hold(p, row, there.force());
            // the stronger way, on the safe side
            double moving = Math.max(p.actuator().ratedPush(), one(p, row, there.force()));
            holds = Math.min(holds, hold == null || moving == NOTHING ? 1 : Math.max(1, hold / moving));
        }
        double utilisation = worst.value() * factor;
        double moves = one(row, there.force());
        double force = worst.value() * moves;
        if (utilisation <= 1 || utilisation > holds) {
            return make.compare(
                    part, force, moves * Math.max(1, utilisation > 1 ? holds : 1), factor, Kind.FORCE, worst, note);
        }
        Text stalls = Text.of(
                "that actuator stalls (it moves {}), but holds and does not let the tank down; ",
                Text.amount(moves, Kind.FORCE));
        return make.given(
                part,
                force,
                moves * holds,
                factor,
                Kind.FORCE,
                utilisation / holds,
                worst,
                Verdict.CLOSE,
                stalls.plus(note));
    }

    /** What the weakest actuator alone bears, N. */
    private double one(Row row, double force) {
        double weakest = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : actuators) {
            weakest = Math.min(weakest, one(p, row, force));
        }
        return weakest;
    }

    /** What an actuator moves alone that way, N. */
    private double one(PlacedActuator placed, Row row, double force) {
        return Math.max(Ratings.one(design, placed.actuator(), row.pose().length(), force > 0), NOTHING);
    }

    /**
     * Every part that bears the actuators' force, by its own check: what it bears with the whole force on the worst-placed actuator.
     * Parts that bear no more than when all share are left out; those that their own check cannot tell are named together.
     */
    private List<Finding> parts(List<Check> rules) {
        List<Finding> all = new ArrayList<>();
        Set<String> unknown = new LinkedHashSet<>();
        boolean missing = false;
        Set<String> twisted = twisted();
        List<Analysis> alone =
                actuators.stream().map(a -> OneAlone.of(analysis, a)).toList();
        for (Check check : rules) {
            if (check.traits().contains(Trait.BEARS_DRIVE)) {
                Map<String, Finding> worst = new LinkedHashMap<>();
                for (Analysis one : alone) {
                    check.run(one).forEach(f -> worst.merge(f.id(), f, (a, b) -> b.worseThan(a) ? b : a));
                }
                Map<String, Finding> shared =
                        check.run(analysis).stream().collect(Collectors.toMap(Finding::id, f -> f, (a, b) -> a));
                for (Finding f : worst.values()) {
                    if (f.verdict() == Verdict.NOT_CHECKED || (f.isOf("pin") && twisted.contains(f.partId()))) {
                        unknown.add(check.shortly(f));
                        missing |= f.missing();
                    } else if (differs(f, shared.get(f.id()))) {
                        all.add(make.of(check.part(f) + ALL, CARRIES + f.title(), f));
                    }
                }
            }
        }
        if (!unknown.isEmpty()) {
            all.add(make.untold(
                    "other parts" + ALL,
                    Text.words("what their own checks cannot tell: " + String.join("; ", unknown)),
                    missing));
        }
        return all;
    }

    /** Ids of the pins of a crank that one actuator pushes beside its middle: how they bear the twist is not worked out. */
    private Set<String> twisted() {
        Mechanism mechanism = analysis.mechanism();
        Set<String> pins = new HashSet<>();
        for (int body : new int[] {mechanism.actuatorFrom(), mechanism.actuatorTo()}) {
            for (JointPlan joint : mechanism.joints()) {
                boolean on = joint.a() == body || joint.b() == body;
                if (body != 0
                        && body != mechanism.tank()
                        && on
                        && !design.drive().paired(joint.name())) {
                    pins.add(joint.name().replace(' ', '-'));
                }
            }
        }
        return pins;
    }

    private static boolean differs(Finding f, @Nullable Finding other) {
        return other == null || f.clearlyWorseThan(other) || other.clearlyWorseThan(f);
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
            double[] shares = Sharing.shares(actuators, row.pose().length(), b.force() > 0);
            double most = 0;
            for (int i = 0; i < shares.length; i++) {
                for (double more : new double[] {forced, -forced}) {
                    double force = shares[i] * b.force() + more;
                    most = Math.max(most, Math.abs(force) / one(actuators.get(i), row, force));
                }
            }
            return most;
        });
        double arm = Math.abs(worst.pose(analysis).arm());
        Text note = Text.of(
                "{} ahead twists the cradle by {} and shifts {} from one to the other",
                Text.amount(step, Kind.LENGTH, "mm", 1),
                Text.degrees(step / arm, 2),
                Text.amount(stiffness * step / (arm * arm), Kind.FORCE, "N", 0));
        Borne borne = (row, i) -> {
            double force = row.rest().force();
            double share = Sharing.shares(actuators, row.pose().length(), force > 0)[i];
            double lever = row.pose().arm();
            return share * Math.abs(force) + stiffness * step / (lever * lever);
        };
        return worse(fault(part, worst, note), held(part, borne, note));
    }
}
