// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.random.SobolSequenceGenerator;
import tipwright.analysis.CannotComputeException;
import tipwright.geometry.Vec2;

/**
 * Candidates spread evenly over all zones at once: a Sobol sequence (S. Joe and F. Y. Kuo, Constructing Sobol sequences with better
 * two-dimensional projections, 2008, as in Hipparchus), shifted by the seed. The first candidate is what is drawn.
 */
final class EvenSpread {
    /** The places to fall back to: so many along the longer side of a zone's box. */
    private static final int ACROSS = 40;

    private final Task task;
    private final double[] shift;
    private final List<List<Vec2>> allowed = new ArrayList<>();

    /**
     * The candidates of a task.
     *
     * @throws CannotComputeException when no place is left in a zone
     */
    EvenSpread(Task task, long seed) throws CannotComputeException {
        this.task = task;
        shift = new SplittableRandom(seed).doubles(2L * task.grounds().size()).toArray();
        for (int i = 0; i < task.grounds().size(); i++) {
            PinRegion ground = task.grounds().get(i);
            Vec2 size = ground.high().minus(ground.low());
            List<Vec2> places = ground.places(Math.max(1e-4, Math.max(size.x(), size.y()) / ACROSS));
            if (places.isEmpty()) {
                throw new CannotComputeException(task.design().name() + ": mounts: "
                        + task.names().get(i) + ": "
                        + "no place is left in this zone: the keep-outs cover it, or no hole of its rows lies inside");
            }
            allowed.add(places);
        }
    }

    /** Some of the candidates, by number; every place of each is allowed, m. */
    List<List<Vec2>> candidates(int from, int to) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(shift.length);
        sobol.skipTo(from);
        List<List<Vec2>> all = new ArrayList<>();
        for (int i = from; i < to; i++) {
            double[] u = sobol.nextVector();
            List<Vec2> drawn = task.grounds().stream().map(PinRegion::drawn).toList();
            boolean first = i == 0 && task.outside(drawn) == 0;
            all.add(
                    first
                            ? drawn
                            : IntStream.range(0, allowed.size())
                                    .mapToObj(k -> place(k, share(u, 2 * k), share(u, 2 * k + 1)))
                                    .toList());
        }
        return all;
    }

    private double share(double[] u, int k) {
        double moved = u[k] + shift[k];
        return moved - Math.floor(moved);
    }

    /** The place of a zone's box; where that is not allowed, one of those that are. */
    private Vec2 place(int k, double right, double up) {
        PinRegion ground = task.grounds().get(k);
        Vec2 size = ground.high().minus(ground.low());
        Vec2 p = ground.snap(ground.low().plus(new Vec2(right * size.x(), up * size.y())));
        List<Vec2> others = allowed.get(k);
        return ground.outside(p) == 0 ? p : others.get((int) (right * others.size()));
    }
}
