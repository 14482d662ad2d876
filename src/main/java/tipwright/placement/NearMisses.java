// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.design.actuator.ListedActuator;
import tipwright.geometry.Vec2;

/**
 * When nothing fits: which single change would open it. For each actuator and each limit an evolution looks for the
 * place where that limit alone stands against it, and by how little.
 */
final class NearMisses {
    private static final String NONE = "no single part helps: give the pins more room under mounts";
    private static final int GENERATIONS = 30;
    private static final double STEP = 0.06;
    private static final double OTHER = 1000;
    /** Starts that are tried for each limit. */
    private static final int STARTS = 2;

    private final Task task;
    private final CandidateEvaluator evaluator;
    private final CandidateCost cost;
    private final Starts starts;
    private final long seed;

    /** For the best candidates that a search came to. */
    NearMisses(Task task, CandidateEvaluator evaluator, CandidateCost cost, Starts starts, long seed) {
        this.task = task;
        this.evaluator = evaluator;
        this.cost = cost;
        this.starts = starts;
        this.seed = seed;
    }

    /** What would open it, least change first; without such a change what is nearest. */
    List<String> say(WorkerPool pool) {
        List<Callable<@Nullable NearMiss>> work = new ArrayList<>();
        for (int a = 0; a < task.listed().size(); a++) {
            int actuator = a;
            List<Starts.Start> from =
                    starts.of(a).subList(0, Math.min(STARTS, starts.of(a).size()));
            for (Limit limit : against(a, from)) {
                for (Starts.Start start : from) {
                    work.add(() -> miss(actuator, limit, start.at()));
                }
            }
        }
        List<NearMiss> misses = new ArrayList<>();
        for (@Nullable NearMiss miss : pool.all(work)) {
            if (miss != null) {
                misses.add(miss);
            }
        }
        misses.addAll(new PivotShifts(task, evaluator, starts, seed).say(pool));
        return misses.isEmpty() ? List.of(nearest()) : NearMiss.words(misses);
    }

    /** Limits that the actuator's best candidates violate; both stroke limits count as one. */
    private List<Limit> against(int actuator, List<Starts.Start> from) {
        List<Limit> limits = new ArrayList<>();
        for (Starts.Start start : from) {
            Reach reach = evaluator.reach(start.at());
            if (reach.share() < 1) {
                continue;
            }
            if (!limits.contains(Limit.STROKE_OUT)) {
                limits.add(Limit.STROKE_OUT);
            }
            double[] used = evaluator.judged(start.at(), actuator).utilisations();
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
    private @Nullable NearMiss miss(int actuator, Limit limit, List<Vec2> start) {
        ListedActuator listed = task.listed().get(actuator);
        ToDoubleFunction<double[]> by = p -> by(cost.places(p, false), actuator, limit);
        double[] found = cost.least(by, start, STEP, seed, GENERATIONS);
        if (found == null || !(by.applyAsDouble(found) < OTHER)) {
            return null;
        }
        List<Vec2> at = cost.places(found, true);
        if (isStroke(limit)) {
            Reach reach = evaluator.reach(at);
            return besides(
                    NearMiss.stroke(listed, reach.shortest(), reach.longest(), evaluator.margin(), task.mark()),
                    at,
                    actuator);
        }
        NearMiss past = NearMiss.past(limit, over(evaluator.judged(at, actuator).utilisations(), limit), listed.name());
        return past == null ? null : besides(past, at, actuator);
    }

    /** The same with the other checks that fail at that place, if any, said too. */
    private NearMiss besides(NearMiss miss, List<Vec2> at, int actuator) {
        String others = evaluator.otherFailures(at, actuator).stream()
                .map(Finding::title)
                .distinct()
                .collect(Collectors.joining(", "));
        return others.isEmpty()
                ? miss
                : new NearMiss(1 + miss.size(), miss.words() + "; as things are these fail there too: " + others);
    }

    /** By how much a limit is passed; {@link #OTHER} or more where anything else stands against the candidate. */
    private double by(List<Vec2> at, int actuator, Limit limit) {
        double outside = task.outside(at);
        Reach reach = evaluator.reach(at);
        if (outside > 0 || reach.share() < 1) {
            return OTHER * OTHER * (1 + outside + 1 - reach.share());
        }
        double misfit = reach.misfit(task.listed().get(actuator).actuator(), evaluator.margin());
        if (misfit > 0 && !isStroke(limit)) {
            return OTHER * 10 * (1 + misfit);
        }
        double[] used = evaluator.judged(at, actuator).utilisations();
        double others = 0;
        for (Limit other : Limit.values()) {
            if (other != limit && !(isStroke(limit) && isStroke(other))) {
                others += Math.max(0, over(used, other) - 1);
            }
        }
        if (others > 0) {
            return OTHER * (1 + Math.min(8, others));
        }
        return (isStroke(limit) ? misfit : over(used, limit)) + evaluator.violation(at, actuator);
    }

    /** The candidate that comes nearest, when no single limit stands against it. */
    private String nearest() {
        double least = Double.POSITIVE_INFINITY;
        String words = NONE + ".";
        for (int a = 0; a < task.listed().size(); a++) {
            for (Starts.Start start : starts.of(a)) {
                if (start.cost() < least) {
                    least = start.cost();
                    words = NONE + ". Nearest so far: " + nearest(start.at(), a);
                }
            }
        }
        return words;
    }

    private String nearest(List<Vec2> at, int actuator) {
        Reach reach = evaluator.reach(at);
        String name = task.listed().get(actuator).name();
        if (reach.share() < 1) {
            return "the mechanism gets over " + Math.round(100 * reach.share()) + " % of the tilt range";
        }
        double misfit = reach.misfit(task.listed().get(actuator).actuator(), evaluator.margin());
        if (misfit > 0) {
            return name + " is " + NearMiss.length(misfit, task.mark()) + " out of its stroke";
        }
        double[] used = evaluator.judged(at, actuator).utilisations();
        List<String> over = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            if (over(used, limit) > 1) {
                over.add(limit.words() + " " + Math.round(100 * used[limit.index()]) + " %");
            }
        }
        return String.join(", ", over) + " with " + name;
    }
}
