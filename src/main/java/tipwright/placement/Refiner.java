// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.Drive;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/**
 * Moves the pins of a good candidate to the best place near it, to 0.1 mm, with a charge for what is outside a zone or over a
 * limit.
 */
final class Refiner implements Polish {
    private static final int GENERATIONS = 150;
    private static final double ROUND = 1e-4;
    private static final double OUTSIDE = 50;
    private static final double OVER = 20;

    private final Task task;
    private final long seed;
    private final double step;
    private final List<Ground> grounds;
    private final double[] utilisations = new double[Judge.LIMITS];
    private Vec2 pivot;
    private TiltLoads loads;
    private List<Judge> judges;

    /**
     * A refiner.
     *
     * @param step how far to look around a candidate at first, m
     */
    Refiner(Task task, long seed, double step) {
        this.step = step;
        this.task = task;
        this.seed = seed;
        grounds = List.of(task.frame(), task.tank(), task.pivot());
        pivot = task.loads().pivot();
        loads = task.loads();
        judges = task.judges();
    }

    @Override
    public Spot refine(Spot start, Aim aim) {
        int[] free = free();
        double[] guess = point(start, free);
        Spot rounded = at(start, guess, free);
        Spot best = rounded == null ? start : rounded;
        if (free.length == 0) {
            return best;
        }
        double[] low = new double[2 * free.length];
        double[] high = new double[low.length];
        for (int i = 0; i < low.length; i++) {
            Vec2 a = grounds.get(free[i / 2]).low();
            Vec2 b = grounds.get(free[i / 2]).high();
            low[i] = i % 2 == 0 ? a.x() : a.y();
            high[i] = i % 2 == 0 ? b.x() : b.y();
        }
        double scale = Math.max(1e-9, start.cost(aim));
        double[] found =
                Evolution.least(p -> cost(start, p, free, aim, scale), guess, low, high, step, seed, GENERATIONS);
        if (found == null) {
            return best;
        }
        Spot end = at(start, found, free);
        return end != null && end.betterThan(best, aim) ? end : best;
    }

    /** Which of frame pin, tank pin and pivot move; springs are worked out for the grid's pivots only. */
    private int[] free() {
        boolean springs = !task.design().assists().isEmpty();
        return IntStream.range(0, 3)
                .filter(i -> grounds.get(i).free() && !(i == 2 && springs))
                .toArray();
    }

    private double cost(Spot start, double[] p, int[] free, Aim aim, double scale) {
        Vec2[] pins = pins(start, p, free, false);
        double outside = 0;
        for (int i = 0; i < 3; i++) {
            outside += grounds.get(i).outside(pins[i]);
        }
        Spot spot = work(start, pins);
        double over = Math.max(0, spot.utilisation() - task.wants().utilisation());
        double cost = aim == Aim.PRICE ? spot.utilisation() : spot.cost(aim) / scale;
        return Math.min(1e9, cost + OUTSIDE * outside + OVER * over);
    }

    @Override
    public Spot rounded(Spot spot) {
        int[] free = free();
        Spot rounded = at(spot, point(spot, free), free);
        return rounded == null ? spot : rounded;
    }

    private static double[] point(Spot spot, int[] free) {
        Vec2[] drawn = pins(spot);
        double[] point = new double[2 * free.length];
        for (int i = 0; i < free.length; i++) {
            point[2 * i] = drawn[free[i]].x();
            point[2 * i + 1] = drawn[free[i]].y();
        }
        return point;
    }

    /** The candidate on whole tenths of a millimetre; null when that is not allowed. */
    private @Nullable Spot at(Spot start, double[] p, int[] free) {
        Vec2[] pins = pins(start, p, free, true);
        for (int i = 0; i < 3; i++) {
            if (grounds.get(i).outside(pins[i]) > 0) {
                return null;
            }
        }
        Spot spot = work(start, pins);
        return spot.utilisation() <= task.wants().utilisation() ? spot : null;
    }

    private static Vec2[] pins(Spot spot) {
        return new Vec2[] {spot.place(Drive.FRAME_PIN), spot.place(Drive.TANK_PIN), spot.place(Skeleton.PIVOT)};
    }

    private Vec2[] pins(Spot start, double[] p, int[] free, boolean round) {
        Vec2[] pins = pins(start);
        for (int i = 0; i < free.length; i++) {
            Vec2 raw = new Vec2(p[2 * i], p[2 * i + 1]);
            Vec2 at = round ? new Vec2(round(raw.x()), round(raw.y())) : raw;
            pins[free[i]] = grounds.get(free[i]).snap(at);
        }
        return pins;
    }

    private static double round(double x) {
        return Math.rint(x / ROUND) * ROUND;
    }

    /** Works a candidate out with the actuator of another. */
    Spot work(Spot like, Vec2... pins) {
        if (!pins[2].equals(pivot)) {
            pivot = pins[2];
            loads = task.loadsAt(pivot);
            judges = task.judgesFor(loads);
        }
        for (Judge judge : judges) {
            if (judge.listed.equals(like.actuator())) {
                Detail detail = new Detail(loads, judge.pinRadii);
                detail.run(pins[0], pins[1], judge.housing);
                judge.exact(detail, utilisations);
                return Chunk.spot(task, judge, detail, pins[0], pins[1], utilisations);
            }
        }
        throw new IllegalArgumentException(
                "no such actuator in this task: " + like.actuator().name());
    }
}
