// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.MotionDirection;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * What shoots square out of an opening, v = sqrt(2 g h) at every point of the rim, h its depth under the surface: a point higher up is
 * slower but falls longer, and reaches farther where the head is larger than the fall. Source: Torricelli (elementary).
 */
final class Jet {
    private static final int PARTS = 16;
    private static final int MANY = 32;

    private final Opening opening;
    private final Vec3 out;
    private final List<Vec3> rim;

    Jet(Opening opening) {
        this.opening = opening;
        out = opening.outward();
        rim = rim(opening.rimPoints());
    }

    /**
     * The tank at one moment.
     *
     * @param tilt rad
     * @param turn of the tank, rad
     * @param place where a point of the tank as stowed is, m
     * @param up unit vector against gravity in the tank's axes
     * @param level of the surface along it, m
     */
    record Standing(double tilt, double turn, UnaryOperator<Vec3> place, Vec3 up, double level) {}

    /** Square out of the opening in the side view at a turn of the tank, rad. */
    Vec2 straight(double turn) {
        return out.tilted(turn).xy();
    }

    /** Offers what leaves the rim. */
    void offer(LandingSpot spot, Standing s, @Nullable String loadCase, @Nullable MotionDirection direction) {
        Vec3 lip = opening.lipPoint(s.up());
        double deep = s.level() - s.up().dot(lip);
        if (!(deep > 0)) {
            return;
        }
        Vec2 straight = straight(s.turn());
        double fast = Stream.under(deep);
        Vec3 from = s.place().apply(lip);
        spot.offer(s.tilt(), from, straight.times(fast), fast, loadCase, direction);
        double lowest = spot.lands(from, straight.times(fast));
        double way = Math.signum(spot.along(straight));
        boolean drowned = true;
        for (Vec3 p : rim) {
            drowned &= s.up().dot(p) < s.level();
        }
        for (Vec3 p : rim) {
            double depth = s.level() - s.up().dot(p);
            if (depth > 0) {
                double v = Stream.under(depth);
                Vec3 there = s.place().apply(p);
                // beside an open surface what is high up is drawn down over the lip: it counts where it reaches farther
                // than that
                if (drowned || way * (spot.lands(there, straight.times(v)) - lowest) > 0) {
                    spot.offer(s.tilt(), there, straight.times(v), v, loadCase, direction);
                }
            }
        }
    }

    /** Points along the rim, close together. */
    private static List<Vec3> rim(List<Vec3> corners) {
        int parts = corners.size() > MANY ? 1 : PARTS;
        List<Vec3> all = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vec3 a = corners.get(i);
            Vec3 b = corners.get((i + 1) % corners.size());
            for (int k = 0; k < parts; k++) {
                all.add(a.plus(b.minus(a).times((double) k / parts)));
            }
        }
        return all;
    }
}
