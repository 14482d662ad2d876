// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Extreme;
import tipwright.check.Checker;
import tipwright.check.Condition;
import tipwright.check.actuator.Ratings;
import tipwright.design.Design;
import tipwright.load.LoadTable;

/**
 * A drive that can only push, or only pull. How near part fills, wind and slopes bring it to turning is no share of its rating the other
 * way, which is nothing; so the conditions under which it is nearest as drawn are looked at themselves in every try. Immutable.
 *
 * @param pushes whether it can only push
 * @param nearest the conditions under which it is nearest to turning
 */
record OneWay(boolean pushes, List<Under> nearest) {
    private static final int MOST = 3;

    /** A condition, and what it loads the tank with. */
    record Under(Condition condition, LoadTable loads) {}

    /** That of a design as drawn; null where it can both push and pull. */
    static @Nullable OneWay of(Analysis drawn) throws CannotComputeException {
        boolean pulls = Ratings.pull(drawn.design()) > 0;
        if (pulls && !Ratings.byRope(drawn.design())) {
            return null;
        }
        List<Condition> all = Checker.conditions(drawn);
        double[] left = new double[all.size()];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < left.length; i++) {
            left[i] = left(all.get(i).blown(all.get(i).calm()), !pulls);
            order.add(i);
        }
        order.sort((a, b) -> Double.compare(left[a], left[b]));
        List<Under> nearest = new ArrayList<>();
        for (int i : order.subList(0, Math.min(MOST, order.size()))) {
            Condition there = all.get(i);
            nearest.add(new Under(there, Analyser.loads(there.calm().design())));
        }
        return new OneWay(!pulls, List.copyOf(nearest));
    }

    /** Which limit it passes when its force turns. */
    Limit limit() {
        return pushes ? Limit.PULL : Limit.PUSH;
    }

    /**
     * Whether its force turns in a try under one of these conditions.
     *
     * @param moved moves the pins of a design
     */
    boolean turns(CandidateEngine engine, UnaryOperator<Design> moved) {
        for (Under under : nearest) {
            try {
                Design there = moved.apply(under.condition.calm().design());
                if (left(under.condition.blown(engine.analyse(there, under.loads)), pushes) < 0) {
                    return true;
                }
            } catch (CannotComputeException impossible) {
                return true;
            }
        }
        return false;
    }

    /** The least force one way, N; below 0: it turns. */
    private static double left(Analysis analysis, boolean pushes) {
        return -Extreme.largest(analysis.cases(), (row, b) -> pushes ? -b.force() : b.force())
                .value();
    }
}
