// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.ListedActuator;
import tipwright.geometry.Vec2;

/**
 * When nothing fits on a mechanism: which single change would open it. For each actuator and each limit an evolution looks for the
 * place where that limit alone stands against it, and by how little.
 */
final class AnyMisses {
    private static final int GENERATIONS = 30;
    private static final double STEP = 0.06;
    private static final double OTHER = 1000;
    /** Starts that are tried for each limit. */
    private static final int STARTS = 2;

    private final AnyTask task;
    private final Gauge gauge;
    private final AnyCost cost;
    private final Starts starts;
    private final long seed;

    /** For the best candidates that a search came to. */
    AnyMisses(AnyTask task, Gauge gauge, AnyCost cost, Starts starts, long seed) {
        this.task = task;
        this.gauge = gauge;
        this.cost = cost;
        this.starts = starts;
        this.seed = seed;
    }

    /** What would open it, least change first; without such a change what is nearest. */
    List<String> say(Crew crew) {
        List<Callable<@Nullable Way>> work = new ArrayList<>();
        for (int a = 0; a < task.listed().size(); a++) {
            int actuator = a;
            List<Starts.Start> from =
                    starts.of(a).subList(0, Math.min(STARTS, starts.of(a).size()));
            for (Limit limit : against(a, from)) {
                for (Starts.Start start : from) {
                    work.add(() -> way(actuator, limit, start.at()));
                }
            }
        }
        List<Way> ways = new ArrayList<>();
        for (@Nullable Way way : crew.all(work)) {
            if (way != null) {
                ways.add(way);
            }
        }
        return ways.isEmpty() ? List.of(nearest()) : Way.words(ways);
    }

    /** Limits that the actuator's best candidates violate; both stroke limits count as one. */
    private List<Limit> against(int actuator, List<Starts.Start> from) {
        List<Limit> limits = new ArrayList<>();
        for (Starts.Start start : from) {
            Gauge.Reach reach = gauge.reach(start.at());
            if (reach.share() < 1) {
                continue;
            }
            if (!limits.contains(Limit.STROKE_OUT)) {
                limits.add(Limit.STROKE_OUT);
            }
            double[] used = gauge.tried(start.at(), actuator).utilisations();
            for (Limit limit : Limit.values()) {
                if (over(used, limit) > 1 && !isStroke(limit) && !limits.contains(limit)) {
                    limits.add(limit);
                }
            }
        }
        limits.remove(Limit.REACH);
        return limits;
    }

    private static boolean isStroke(Limit limit) {
        return limit == Limit.STROKE_IN || limit == Limit.STROKE_OUT;
    }

    private double over(double[] used, Limit limit) {
        return used[limit.index()] / task.wants().utilisation();
    }

    /** How far over its limit the best candidate is when only this limit fails; null when another always fails too. */
    private @Nullable Way way(int actuator, Limit limit, List<Vec2> start) {
        ListedActuator listed = task.listed().get(actuator);
        ToDoubleFunction<double[]> by = p -> by(cost.places(p, false), actuator, limit);
        double[] found = cost.least(by, start, STEP, seed, GENERATIONS);
        if (found == null || !(by.applyAsDouble(found) < OTHER)) {
            return null;
        }
        List<Vec2> at = cost.places(found, true);
        if (isStroke(limit)) {
            Gauge.Reach reach = gauge.reach(at);
            return Way.stroke(listed, reach.shortest(), reach.longest(), gauge.margin());
        }
        return Way.past(limit, over(gauge.tried(at, actuator).utilisations(), limit), listed.name());
    }

    /** By how much a limit is passed; {@link #OTHER} or more where anything else stands against the candidate. */
    private double by(List<Vec2> at, int actuator, Limit limit) {
        double outside = task.outside(at);
        Gauge.Reach reach = gauge.reach(at);
        if (outside > 0 || reach.share() < 1) {
            return OTHER * OTHER * (1 + outside + 1 - reach.share());
        }
        double misfit = reach.misfit(task.listed().get(actuator).actuator(), gauge.margin());
        if (misfit > 0 && !isStroke(limit)) {
            return OTHER * 10 * (1 + misfit);
        }
        double[] used = gauge.tried(at, actuator).utilisations();
        double others = 0;
        for (Limit other : Limit.values()) {
            if (other != limit && !(isStroke(limit) && isStroke(other))) {
                others += Math.max(0, over(used, other) - 1);
            }
        }
        others += others > 0 ? 0 : gauge.amiss(at, actuator);
        return others > 0 ? OTHER * (1 + Math.min(8, others)) : isStroke(limit) ? misfit : over(used, limit);
    }

    /** The candidate that comes nearest, when no single limit stands against it. */
    private String nearest() {
        double least = Double.POSITIVE_INFINITY;
        String words = "No single part helps. Give the pins more room in mounts:";
        for (int a = 0; a < task.listed().size(); a++) {
            for (Starts.Start start : starts.of(a)) {
                if (start.cost() < least) {
                    least = start.cost();
                    words = "no single change opens it; widen the zones. Nearest so far: " + nearest(start.at(), a);
                }
            }
        }
        return words;
    }

    private String nearest(List<Vec2> at, int actuator) {
        Gauge.Reach reach = gauge.reach(at);
        String name = task.listed().get(actuator).name();
        if (reach.share() < 1) {
            return "the mechanism gets over " + Math.round(100 * reach.share()) + " % of the tilt range";
        }
        double misfit = reach.misfit(task.listed().get(actuator).actuator(), gauge.margin());
        if (misfit > 0) {
            return name + " is " + Way.millimetres(misfit) + " mm out of its stroke";
        }
        double[] used = gauge.tried(at, actuator).utilisations();
        List<String> over = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            if (over(used, limit) > 1) {
                over.add(limit.words() + " " + Math.round(100 * used[limit.index()]) + " %");
            }
        }
        return String.join(", ", over) + " with " + name;
    }
}
