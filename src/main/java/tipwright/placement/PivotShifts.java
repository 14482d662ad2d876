// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** The smallest moves of a pivot without a zone that let something fit, each tried before it is told. */
final class PivotShifts {
    private static final int GENERATIONS = 30;
    private static final double STEP = 0.06;
    private static final int STARTS = 2;
    private static final double[] SHIFTS = {0.01, 0.02, 0.03, 0.04, 0.06, 0.08, 0.1, 0.13, 0.16, 0.2, 0.25, 0.3};

    private final Task task;
    private final CandidateEvaluator evaluator;
    private final Starts starts;
    private final long seed;

    PivotShifts(Task task, CandidateEvaluator evaluator, Starts starts, long seed) {
        this.task = task;
        this.evaluator = evaluator;
        this.starts = starts;
        this.seed = seed;
    }

    /** What they are, no more than one each way. */
    List<NearMiss> say(WorkerPool pool) {
        List<NearMiss> misses = new ArrayList<>();
        if (task.names().contains(Skeleton.PIVOT)) {
            return misses;
        }
        List<Callable<@Nullable NearMiss>> work = List.of(
                () -> least(new Vec2(0, -1), "lower"),
                () -> least(new Vec2(0, 1), "higher"),
                () -> least(new Vec2(-1, 0), "further from the dump side"),
                () -> least(new Vec2(1, 0), "nearer to the dump side"));
        for (@Nullable NearMiss miss : pool.all(work)) {
            if (miss != null) {
                misses.add(miss);
            }
        }
        return misses;
    }

    /** The least shift one way that opens it, by halving; null when not even the furthest does. */
    private @Nullable NearMiss least(Vec2 way, String words) {
        int good = SHIFTS.length - 1;
        if (!fits(way.times(shift(good)))) {
            return null;
        }
        int bad = -1;
        while (good - bad > 1) {
            int middle = (good + bad) / 2;
            if (fits(way.times(shift(middle)))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        double shift = shift(good);
        return new NearMiss(shift, "the pivot " + NearMiss.length(shift, task.mark()) + " " + words);
    }

    /** One of the shifts on a mark of the tape, m. */
    private double shift(int which) {
        double mark = Math.max(task.mark(), Marks.step(UnitSystem.METRIC));
        return Math.rint(SHIFTS[which] / mark) * mark;
    }

    private boolean fits(Vec2 by) {
        Design drawn = task.design();
        Vec2 pivot = drawn.pivot().at();
        PlacedPoint seat = new PlacedPoint(Skeleton.PIVOT, pivot, pivot.plus(by));
        Design shifted = PlacedPoint.moved(
                drawn, List.of(seat), drawn.drive().actuators().get(0).actuator());
        Task there = new Task(shifted, task.wants(), task.names(), task.grounds(), task.listed(), task.mark());
        CandidateEvaluator judge = evaluator.on(there);
        CandidateCost cost = new CandidateCost(there, judge, () -> false);
        for (int a = 0; a < task.listed().size(); a++) {
            for (int s = 0; s < Math.min(STARTS, starts.of(a).size()); s++) {
                double[] found = cost.least(
                        cost.over(a, Aim.UTILISATION, 1, true),
                        starts.of(a).get(s).at(),
                        STEP,
                        seed,
                        GENERATIONS);
                List<Vec2> at = found == null ? null : cost.places(found, true);
                if (at != null && cost.candidate(at, a) != null && judge.violation(at, a) == 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
