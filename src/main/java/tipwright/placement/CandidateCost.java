// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.geometry.Vec2;

/**
 * One number for how good or how wrong a candidate is, smaller is better. What is wrong is told in tiers: outside a zone, does not
 * get to the full tilt, does not fit the stroke, over a limit, fails another check; each tier is looked at only when those before
 * are in order, for they cost less. Immutable: several threads may use it.
 */
final class CandidateCost {
    static final double STROKE = 1e5;
    private static final double REACH = 1e6;
    private static final double OUTSIDE = 1e7;
    private static final double OVER = 20;

    private final Task task;
    private final CandidateEvaluator evaluator;
    private final BooleanSupplier stop;

    CandidateCost(Task task, CandidateEvaluator evaluator, BooleanSupplier stop) {
        this.task = task;
        this.evaluator = evaluator;
        this.stop = stop;
    }

    /** Cost of the motion alone with an actuator; 0: it fits. */
    double motion(Reach reach, int actuator) {
        if (reach.share() < 1) {
            return REACH * (2 - reach.share());
        }
        Actuator a = task.listed().get(actuator).actuator();
        double misfit = reach.misfit(a, evaluator.margin());
        return misfit > 0 ? STROKE * (1 + misfit / a.stroke()) : 0;
    }

    /** Cost of what the analysis tells; the utilisation, or share of a scale, where everything is in order. */
    double load(Judgement judged, Aim aim, double scale) {
        double over = Math.max(0, judged.utilisation() - task.wants().utilisation());
        double value =
                switch (aim) {
                    case UTILISATION, PRICE -> judged.utilisation();
                    case FORCE -> judged.force() / scale;
                    case TIME -> judged.time() / scale;
                };
        return Math.min(STROKE / 2, value) + OVER * over;
    }

    /**
     * The cost over coordinates in m [x and y of each place], for one of the actuators.
     *
     * @param scale of the aim's value
     * @param others whether the checks that are no limit of the search count too
     * @return owned by one caller; looks at the other checks, which cost most, only where a candidate would be the best so far
     */
    ToDoubleFunction<double[]> over(int actuator, Aim aim, double scale, boolean others) {
        double[] passed = {Double.POSITIVE_INFINITY};
        return p -> {
            if (stop.getAsBoolean()) {
                return 2 * OUTSIDE;
            }
            List<Vec2> at = places(p, false);
            double outside = task.outside(at);
            if (outside > 0) {
                return OUTSIDE * (1 + outside);
            }
            double motion = motion(evaluator.reach(at), actuator);
            if (motion > 0) {
                return motion;
            }
            Judgement judged = evaluator.judged(at, actuator);
            double load = load(judged, aim, scale);
            if (!others || judged.utilisation() > task.wants().utilisation() || load >= passed[0]) {
                return load;
            }
            double violation = evaluator.violation(at, actuator);
            passed[0] = violation > 0 ? passed[0] : load;
            return load + violation;
        };
    }

    /** The places of coordinates, on their holes; rounded: on whole marks. */
    List<Vec2> places(double[] p, boolean rounded) {
        List<Vec2> at = new ArrayList<>();
        for (int i = 0; i < task.grounds().size(); i++) {
            Vec2 raw = new Vec2(p[2 * i], p[2 * i + 1]);
            at.add(task.grounds().get(i).snap(rounded ? new Vec2(round(raw.x()), round(raw.y())) : raw));
        }
        return at;
    }

    private double round(double x) {
        return Math.rint(x / task.mark()) * task.mark();
    }

    static double[] coordinates(List<Vec2> at) {
        double[] p = new double[2 * at.size()];
        for (int i = 0; i < at.size(); i++) {
            p[2 * i] = at.get(i).x();
            p[2 * i + 1] = at.get(i).y();
        }
        return p;
    }

    /** A candidate as such; null when it is not allowed, or does not fit. */
    @Nullable
    Candidate candidate(List<Vec2> at, int actuator) {
        if (task.outside(at) > 0 || motion(evaluator.reach(at), actuator) > 0) {
            return null;
        }
        Judgement judged = evaluator.judged(at, actuator);
        return judged.utilisation() <= task.wants().utilisation() ? candidate(at, actuator, judged) : null;
    }

    /** A candidate that fits. */
    Candidate candidate(List<Vec2> at, int actuator, Judgement judged) {
        return new Candidate(
                task.seats(at),
                task.listed().get(actuator),
                judged.utilisation(),
                judged.governing(),
                judged.force(),
                judged.time(),
                task.price(actuator));
    }

    /** The best coordinates near a guess; null when none were found. */
    double @Nullable [] least(
            ToDoubleFunction<double[]> cost, List<Vec2> guess, double step, long seed, int generations) {
        if (task.grounds().isEmpty()) {
            return null;
        }
        List<Vec2> low = task.grounds().stream().map(PinRegion::low).toList();
        List<Vec2> high = task.grounds().stream().map(PinRegion::high).toList();
        return Evolution.least(cost, coordinates(guess), coordinates(low), coordinates(high), step, seed, generations);
    }
}
