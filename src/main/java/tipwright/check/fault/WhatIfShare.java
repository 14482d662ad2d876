// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.Ratings;
import tipwright.check.joint.TwistedLinks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.around.Trouble;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Actuators side by side that do not share equally: one carries all, or one runs ahead of the others. */
final class WhatIfShare {
    static final String ALL = " when one carries all";
    static final String CARRIES = "One actuator carries everything: ";
    static final String AHEAD = " when one runs ahead";
    static final String AHEAD_OF = "One actuator gets ahead of the other: ";
    private static final String TWIST = "twist";

    private final Findings make;
    private final Analysis analysis;
    private final Design design;
    private final List<PlacedActuator> actuators;
    private final TwistedLinks links;
    private final List<Analysis> carrying;
    /** What each check finds when one carries all, by its id. */
    private final Map<String, Map<String, Finding>> alone = new HashMap<>();

    private WhatIfShare(Findings make, Analysis analysis) {
        this.make = make;
        this.analysis = analysis;
        this.design = analysis.design();
        this.actuators = design.drive().actuators();
        links = new TwistedLinks(analysis);
        carrying = actuators.size() < 2
                ? List.of()
                : actuators.stream().map(a -> OneAlone.of(analysis, a)).toList();
    }

    static List<Finding> find(Findings make, Analysis analysis, List<Check> rules) {
        WhatIfShare share = new WhatIfShare(make, analysis);
        if (share.actuators.size() < 2) {
            return List.of();
        }
        List<Finding> all = new ArrayList<>();
        all.add(share.carriesAll());
        List<Check> bear = rules.stream()
                .filter(check -> check.traits().contains(Trait.BEARS_DRIVE))
                .toList();
        all.addAll(share.parts(bear));
        all.add(share.ahead());
        if (share.design.whatIf().torsion() != null) {
            all.addAll(share.partsAhead(bear));
        }
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
            Extreme most = Usage.worst(figure -> Extreme.largest(
                    analysis.cases(), MotionDirection.RESTING, row -> figure.applyAsDouble(held(force, row, one))));
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
            holds = Math.min(holds, hold == null || moving == Ratings.NOTHING ? 1 : Math.max(1, hold / moving));
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
        return Math.max(Ratings.one(design, placed.actuator(), row.pose().length(), force > 0), Ratings.NOTHING);
    }

    /**
     * Every part that bears the actuators' force, by its own check: what it bears with the whole force on the worst-placed actuator.
     * Parts that bear no more than when all share are left out; those that their own check cannot tell are named together.
     */
    private List<Finding> parts(List<Check> rules) {
        List<Finding> all = new ArrayList<>();
        Untold untold = new Untold(make);
        for (Check check : rules) {
            Map<String, Finding> shared = shared(check);
            for (Finding f : alone(check).values()) {
                if (!untold.takes(check, f, links) && differs(f, shared.get(f.id()))) {
                    all.add(make.of(check.part(f) + ALL, CARRIES + f.title(), f));
                }
            }
        }
        all.addAll(untold.told("other parts" + ALL));
        return all;
    }

    private Map<String, Finding> alone(Check check) {
        return alone.computeIfAbsent(check.id(), id -> worst(check, carrying));
    }

    private Map<String, Finding> shared(Check check) {
        return check.run(analysis).stream().collect(Collectors.toMap(Finding::id, f -> f, (a, b) -> a));
    }

    private static Map<String, Finding> worst(Check check, List<Analysis> each) {
        Map<String, Finding> worst = new LinkedHashMap<>();
        for (Analysis one : each) {
            check.run(one).forEach(f -> worst.merge(f.id(), f, (a, b) -> b.worseThan(a) ? b : a));
        }
        return worst;
    }

    /**
     * The same with each of them ahead or behind in turn: what bears more then than when one carries all, or than when all share where
     * that cannot happen.
     */
    private List<Finding> partsAhead(List<Check> rules) {
        boolean never = design.whatIf().never().contains(Trouble.ONE_CARRIES_ALL);
        List<Analysis> ahead = new ArrayList<>();
        List<Analysis> twisted = new ArrayList<>();
        for (PlacedActuator one : actuators) {
            for (int way : new int[] {1, -1}) {
                OneAlone.Excess excess = (pose, force, share) -> way * forced(pose);
                ahead.add(OneAlone.with(analysis, one, excess));
                twisted.add(OneAlone.twisted(analysis, one, excess));
            }
        }
        List<Finding> all = new ArrayList<>();
        Untold untold = new Untold(make);
        for (Check check : rules) {
            Map<String, Finding> before = never ? shared(check) : alone(check);
            for (Finding f :
                    worst(check, check.id().equals(TWIST) ? twisted : ahead).values()) {
                Finding had = before.get(f.id());
                if (!untold.takes(check, f, links) && (had == null || f.clearlyWorseThan(had))) {
                    all.add(make.of(check.part(f) + AHEAD, AHEAD_OF + f.title(), f));
                }
            }
        }
        if (never) {
            all.addAll(untold.told("other parts" + AHEAD));
        }
        return all;
    }

    private static boolean differs(Finding f, @Nullable Finding other) {
        return other == null || f.clearlyWorseThan(other) || other.clearlyWorseThan(f);
    }

    /** What goes from one actuator to another at a pose when one is ahead, N. */
    private double forced(Pose pose) {
        double stiffness = Objects.requireNonNull(design.whatIf().torsion(), "torsion");
        return stiffness * design.whatIf().runsAhead() / (pose.arm() * pose.arm());
    }

    private Finding ahead() {
        String part = "one runs ahead";
        if (design.whatIf().torsion() == null) {
            return make.missing(part, "what-if.torsion missing; with a stiff cradle one carries all");
        }
        double step = design.whatIf().runsAhead();
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> {
            double forced = forced(row.pose());
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
        Pose where = worst.pose(analysis);
        Text note = Text.of(
                "{} ahead twists the cradle by {} and shifts {} from one to the other",
                Text.amount(step, Kind.LENGTH, "mm", 1),
                Text.degrees(step / Math.abs(where.arm()), 2),
                Text.amount(forced(where), Kind.FORCE, "N", 0));
        Borne borne = (row, i) -> {
            double force = row.rest().force();
            double share = Sharing.shares(actuators, row.pose().length(), force > 0)[i];
            return share * Math.abs(force) + forced(row.pose());
        };
        return worse(fault(part, worst, note), held(part, borne, note));
    }
}
