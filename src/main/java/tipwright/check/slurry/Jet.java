// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
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

    /** Nearer than this, m, two points are one. */
    private static final double ONE = 1e-9;

    private final Opening opening;
    private final Vec3 out;
    private final List<Vec3> rim;

    /** Of points that lie behind one another in the side view one. */
    private final List<Vec3> seen;

    Jet(Opening opening) {
        this.opening = opening;
        out = opening.outward();
        rim = rim(opening.rimPoints());
        seen = seen(rim);
    }

    /**
     * The tank at one moment.
     *
     * @param tilt rad
     * @param tank where it is
     * @param up unit vector against gravity in the tank's axes
     * @param level of the surface along it, m
     */
    record Standing(double tilt, BodyPosition tank, Vec3 up, double level) {}

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
        double turn = s.tank().turn();
        Vec2 straight = straight(turn);
        double fast = Stream.under(deep);
        double lowest = spot.lands(s.tank().place(lip.xy()), straight.times(fast));
        spot.offer(s.tilt(), lowest, fast, loadCase, direction);
        double way = Math.signum(spot.along(straight));
        boolean drowned = true;
        for (Vec3 p : rim) {
            drowned &= s.up().dot(p) < s.level();
        }
        Vec2 origin = s.tank().origin();
        Vec2 alongX = new Vec2(1, 0).tilted(turn);
        Vec2 alongY = new Vec2(0, 1).tilted(turn);
        // on ground that leans sideways those behind one another are not equally deep
        for (Vec3 p : s.up().z() == 0 ? seen : rim) {
            double depth = s.level() - s.up().dot(p);
            if (depth > 0) {
                double v = Stream.under(depth);
                double x = origin.x() + alongX.x() * p.x() + alongY.x() * p.y();
                double y = origin.y() + alongX.y() * p.x() + alongY.y() * p.y();
                double lands = spot.lands(x, y, straight.x() * v, straight.y() * v);
                // beside an open surface what is high up is drawn down over the lip: it counts where it reaches farther
                // than that
                if (drowned || way * (lands - lowest) > 0) {
                    spot.offer(s.tilt(), lands, v, loadCase, direction);
                }
            }
        }
    }

    private static List<Vec3> seen(List<Vec3> rim) {
        Set<Vec2> met = new HashSet<>();
        List<Vec3> all = new ArrayList<>();
        for (Vec3 p : rim) {
            if (met.add(new Vec2(Math.rint(p.x() / ONE) + 0.0, Math.rint(p.y() / ONE) + 0.0))) {
                all.add(p);
            }
        }
        return all;
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
