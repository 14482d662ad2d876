// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Bisection;
import tipwright.geometry.Filled;
import tipwright.geometry.Vec3;

/**
 * Works out whether the tank empties, and at which tilt it would. What lies in a hollow of the inside counts with what is below the
 * lip, where anything has come to its deepest place: such a hollow is taken to be full.
 */
final class Residues {
    private static final double STEP = Math.toRadians(1);

    private Residues() {}

    static Emptying of(
            Design design, Contents contents, Heap heap, double[] tilts, LoadCase draining, @Nullable LoadCase heaped) {
        double allowed = design.limits().residue();
        double repose = design.slurry().repose();
        Emptying.Residue cake = heaped == null
                ? null
                : residue(
                        heaped,
                        allowed,
                        tilts,
                        heap::kept,
                        hollows(contents, heaped, tilt -> contents.heapNormal(tilt, repose)));
        DoubleUnaryOperator pools = hollows(contents, draining, contents::up);
        Emptying.Residue liquid = residue(draining, allowed, tilts, tilt -> volume(contents.liquidAtLip(tilt)), pools);
        return new Emptying(liquid, cake, pocket(draining, tilts, pools));
    }

    private static Emptying.Pocket pocket(LoadCase draining, double[] tilts, DoubleUnaryOperator pools) {
        Emptying.Pocket most = Emptying.Pocket.NONE;
        for (int i = 0; i < tilts.length; i++) {
            double more =
                    pools.applyAsDouble(tilts[i]) - draining.states().get(i).volume();
            if (more > most.share() * draining.contents()) {
                most = new Emptying.Pocket(more / draining.contents(), tilts[i]);
            }
        }
        return most;
    }

    /** What hollows keep of a load at a tilt, m3, under surfaces that are square to a direction: worked out once for each tilt. */
    private static DoubleUnaryOperator hollows(Contents contents, LoadCase load, DoubleFunction<Vec3> normal) {
        Map<Double, Double> known = new HashMap<>();
        return asked -> known.computeIfAbsent(
                asked,
                tilt -> Math.min(
                        load.contents(), contents.hollows(tilt, normal.apply(tilt), place -> load.states().stream()
                                .anyMatch(s ->
                                        s.fill() != null && s.fill().surface().height(place) < 0))));
    }

    private static double volume(@Nullable Filled filled) {
        return filled == null ? Double.POSITIVE_INFINITY : filled.moments().volume();
    }

    private static Emptying.Residue residue(
            LoadCase load, double allowed, double[] tilts, DoubleUnaryOperator kept, DoubleUnaryOperator hollows) {
        double left = Math.max(load.residual(), hollows.applyAsDouble(tilts[tilts.length - 1]));
        double share = load.contents() > 0 ? left / load.contents() : 0;
        double goal = allowed * load.contents();
        return new Emptying.Residue(left, share, tiltNeeded(load, goal, tilts, kept, hollows));
    }

    private static @Nullable Double tiltNeeded(
            LoadCase load, double goal, double[] tilts, DoubleUnaryOperator plain, DoubleUnaryOperator hollows) {
        DoubleUnaryOperator kept = tilt -> {
            double below = plain.applyAsDouble(tilt);
            return below > goal ? below : Math.max(below, hollows.applyAsDouble(tilt));
        };
        double before = 0;
        for (int i = 0; i < tilts.length; i++) {
            if (load.states().get(i).volume() <= goal && hollows.applyAsDouble(tilts[i]) <= goal) {
                return bisect(kept, goal, before, tilts[i]);
            }
            before = tilts[i];
        }
        for (double tilt = before + STEP; tilt <= Math.PI + 1e-9; tilt += STEP) {
            if (kept.applyAsDouble(tilt) <= goal) {
                return bisect(kept, goal, tilt - STEP, tilt);
            }
        }
        return null;
    }

    private static double bisect(DoubleUnaryOperator kept, double goal, double low, double high) {
        String what = "the tilt, rad, at which no more is left in the tank than wanted";
        return Bisection.between(high, low, 1e-5, what, tilt -> kept.applyAsDouble(tilt) <= goal)
                .good();
    }
}
