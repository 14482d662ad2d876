// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Bisection;
import tipwright.geometry.Filled;

/** Works out whether the tank empties, and at which tilt it would. */
final class Residues {
    private static final double STEP = Math.toRadians(1);

    private Residues() {}

    static Emptying of(
            Design design, Contents contents, Heap heap, double[] tilts, LoadCase draining, @Nullable LoadCase heaped) {
        double allowed = design.limits().residue();
        Emptying.Residue cake = heaped == null ? null : residue(heaped, allowed, tilts, heap::kept);
        return new Emptying(residue(draining, allowed, tilts, tilt -> volume(contents.liquidAtLip(tilt))), cake);
    }

    private static double volume(@Nullable Filled filled) {
        return filled == null ? Double.POSITIVE_INFINITY : filled.moments().volume();
    }

    private static Emptying.Residue residue(LoadCase load, double allowed, double[] tilts, DoubleUnaryOperator kept) {
        double left = load.residual();
        double share = load.contents() > 0 ? left / load.contents() : 0;
        return new Emptying.Residue(left, share, tiltNeeded(load, allowed * load.contents(), tilts, kept));
    }

    private static @Nullable Double tiltNeeded(LoadCase load, double goal, double[] tilts, DoubleUnaryOperator kept) {
        double before = 0;
        for (int i = 0; i < tilts.length; i++) {
            if (load.states().get(i).volume() <= goal) {
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
