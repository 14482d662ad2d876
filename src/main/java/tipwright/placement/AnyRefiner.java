// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/** Moves the places of a good candidate of any mechanism to the best near it, to 0.1 mm or to holes. */
final class AnyRefiner implements Polish {
    private static final int GENERATIONS = 25;
    private static final double STEP = 0.01;

    private final AnyTask task;
    private final AnyCost coarse;
    private final AnyCost fine;
    private final long seed;

    /**
     * A refiner.
     *
     * @param coarse looks for the way
     * @param fine tells what came of it, at every tilt
     */
    AnyRefiner(AnyTask task, AnyCost coarse, AnyCost fine, long seed) {
        this.task = task;
        this.coarse = coarse;
        this.fine = fine;
        this.seed = seed;
    }

    @Override
    public Spot refine(Spot start, Aim aim) {
        Spot first = at(AnyCost.coordinates(places(start)), start);
        Spot best = first == null ? start : first;
        double scale = Math.max(1e-9, start.cost(aim));
        int actuator = actuator(start);
        double[] found = Double.isFinite(scale)
                ? coarse.least(coarse.over(actuator, aim, scale), places(best), STEP, seed, GENERATIONS)
                : null;
        Spot end = found == null ? null : at(found, start);
        return end != null && end.betterThan(best, aim) ? end : best;
    }

    @Override
    public Spot rounded(Spot spot) {
        Spot rounded = at(AnyCost.coordinates(places(spot)), spot);
        return rounded == null ? spot : rounded;
    }

    private @Nullable Spot at(double[] p, Spot like) {
        return fine.spot(fine.places(p, true), actuator(like));
    }

    private int actuator(Spot spot) {
        return task.listed().indexOf(spot.actuator());
    }

    static List<Vec2> places(Spot spot) {
        return spot.seats().stream().map(Seat::at).toList();
    }
}
