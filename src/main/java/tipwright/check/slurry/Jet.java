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
import tipwright.load.Gravity;

/**
 * What shoots square out of an opening, v = sqrt(2 g h) at every point of the rim, h its depth under the surface: a point higher up is
 * slower but falls longer, and reaches farther where the head is larger than the fall. Source: Torricelli (elementary).
 *
 * @param place where a point of the tank as stowed is at the tilt, m
 */
record Jet(Opening opening, double tilt, double turn, UnaryOperator<Vec3> place) {
    private static final int PARTS = 16;
    private static final int MANY = 32;

    /**
     * Offers what leaves the rim.
     *
     * @param up unit vector against gravity in the tank's axes
     * @param level of the surface along it, m
     */
    void offer(
            LandingSpot spot, Vec3 up, double level, @Nullable String loadCase, @Nullable MotionDirection direction) {
        Vec2 out = out(opening, turn).xy();
        Vec3 lip = opening.lipPoint(up);
        double deep = level - up.dot(lip);
        if (!(deep > 0)) {
            return;
        }
        double fast = Math.sqrt(2 * Gravity.G * deep);
        Vec3 from = place.apply(lip);
        spot.offer(tilt, from, out.times(fast), fast, loadCase, direction);
        double lowest = spot.lands(from, out.times(fast));
        List<Vec3> rim = rim();
        boolean drowned = rim.stream().allMatch(p -> up.dot(p) < level);
        double way = Math.signum(spot.along(out));
        for (Vec3 p : rim) {
            double depth = level - up.dot(p);
            double v = Math.sqrt(2 * Gravity.G * Math.max(0, depth));
            Vec3 there = place.apply(p);
            // beside an open surface what is high up is drawn down over the lip: it counts where it reaches farther
            // than that
            if (depth > 0 && (drowned || way * (spot.lands(there, out.times(v)) - lowest) > 0)) {
                spot.offer(tilt, there, out.times(v), v, loadCase, direction);
            }
        }
    }

    /** Unit vector square out of an opening at a turn of the tank, rad. */
    static Vec3 out(Opening opening, double turn) {
        Vec3 area = opening.areaVector().unit();
        Vec3 normal = opening.normal();
        return (normal == null || area.dot(normal) >= 0 ? area : area.times(-1)).tilted(turn);
    }

    /** Points along the rim, close together. */
    private List<Vec3> rim() {
        List<Vec3> corners = opening.rimPoints();
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
