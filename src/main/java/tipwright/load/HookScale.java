// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.List;
import tipwright.design.tank.HookReading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The centre of the empty tank by pulls of a hook scale. At a tilt, the pull's moment about the pivot is the weight times how far the
 * centre is to the dump side of it: one tilt gives the centre along one line, two give it in the side view. Source: balance of
 * moments.
 */
final class HookScale {
    /** Tilts nearer to each other than this tell one line only. */
    private static final double APART = Math.toRadians(10);

    private HookScale() {}

    static EmptyTank corrected(EmptyTank drawn, List<HookReading> readings, Vec2 pivot) {
        if (readings.isEmpty() || !(drawn.mass() > 0)) {
            return drawn;
        }
        Vec2 d = drawn.centroid().xy().minus(pivot);
        double weight = drawn.mass() * Gravity.G;
        double cc = 0;
        double cs = 0;
        double ss = 0;
        double bc = 0;
        double bs = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (HookReading reading : readings) {
            double c = Math.cos(reading.tilt());
            double s = Math.sin(reading.tilt());
            double off = reading.moment(pivot) / weight - (c * d.x() + s * d.y());
            cc += c * c;
            cs += c * s;
            ss += s * s;
            bc += c * off;
            bs += s * off;
            least = Math.min(least, reading.tilt());
            most = Math.max(most, reading.tilt());
        }
        Vec2 move;
        if (most - least > APART) {
            double determinant = cc * ss - cs * cs;
            move = new Vec2((ss * bc - cs * bs) / determinant, (cc * bs - cs * bc) / determinant);
        } else {
            move = new Vec2(bc, bs).times(1 / (cc + ss));
        }
        Vec3 at = drawn.centroid();
        return new EmptyTank(drawn.mass(), new Vec3(at.x() + move.x(), at.y() + move.y(), at.z()));
    }
}
