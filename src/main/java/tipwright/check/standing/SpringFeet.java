// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.around.Footing;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/**
 * A machine on feet or tyres that give: it leans towards the softer and the more loaded ones, so that its weights move out that way,
 * which makes it lean more. Found by going round until nothing changes; where that has no end it tips over. Source: statics of a
 * stiff frame on springs that only press (any text on structures).
 *
 * @param feet x and z, m
 * @param springs stiffness of each, N/m
 * @param y height of their undersides, m
 */
record SpringFeet(List<Vec2> feet, List<Double> springs, double y) {
    private static final int ROUNDS = 200;
    private static final double CLOSE = 1e-10;
    /** How often what is loose runs after, and less than what it need not any more. */
    private static final int RUNS = 50;

    private static final double SETTLED = 1e-7;

    /** Null where nothing gives. */
    static @Nullable SpringFeet of(Footing footing, double y) {
        List<Double> springs = footing.springs();
        return springs.isEmpty() ? null : new SpringFeet(footing.outline(), springs, y);
    }

    /**
     * How it comes to rest.
     *
     * @param up unit vector against gravity in its own axes
     * @param masses as they lie then
     * @param loads on each foot, N
     */
    record Rest(Vec3 up, List<Mass> masses, List<Double> loads) {
        /** Copies the lists. */
        Rest {
            masses = List.copyOf(masses);
            loads = List.copyOf(loads);
        }
    }

    /**
     * Where it comes to rest; null when it tips over. What is loose in the tank runs after as it leans, which makes it lean more.
     *
     * @param masses by the unit vector against gravity
     * @param up unit vector against gravity while nothing gives
     * @param blow moment of the wind about the ground along x and z, N m, the way it blows
     */
    @Nullable
    Rest rest(Function<Vec3, List<Mass>> masses, Vec3 up, Vec2 blow) {
        Vec3 lies = up;
        for (int round = 0; round < RUNS; round++) {
            Rest found = still(masses.apply(lies), up, blow);
            if (found == null || found.up().minus(lies).norm() < SETTLED) {
                return found;
            }
            lies = found.up();
        }
        return null;
    }

    private @Nullable Rest still(List<Mass> masses, Vec3 up, Vec2 blow) {
        Vec3 now = up;
        for (int round = 0; round < ROUNDS; round++) {
            double press = 0;
            Vec2 first = blow;
            for (Mass m : masses) {
                double weight = m.kg() * Gravity.G * now.y();
                press += weight;
                first = first.plus(foot(m, now).times(weight));
            }
            SupportLoads.OnSprings stands = SupportLoads.onSprings(feet, springs, press, first.times(1 / press));
            if (stands == null) {
                return null;
            }
            Vec2 lean = stands.lean();
            Vec3 next = new Vec3(up.x() / up.y() - lean.x(), 1, up.z() / up.y() - lean.y()).unit();
            if (next.minus(now).norm() < CLOSE) {
                return new Rest(next, masses, stands.loads());
            }
            now = next;
        }
        return null;
    }

    private Vec2 foot(Mass m, Vec3 up) {
        double height = m.at().y() - y;
        return new Vec2(m.at().x() - height * up.x() / up.y(), m.at().z() - height * up.z() / up.y());
    }
}
