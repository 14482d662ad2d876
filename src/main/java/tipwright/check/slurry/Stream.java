// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;
import tipwright.load.Gravity;

/**
 * A stream that falls freely: p = lip + v t + g t^2/2, with v = sqrt(2 g h) square out of the opening from the slurry's head h over
 * the lip, or none where it just runs over. No drag, no break-up, no clinging to the tank. Source: Torricelli and free fall
 * (elementary).
 */
public final class Stream {
    private Stream() {}

    /** Speed under a head of so many metres, or after falling as far, m/s. Source: Torricelli. */
    static double under(double head) {
        return Math.sqrt(2 * Gravity.G * head);
    }

    /**
     * Speed of what slides down a slope from rest, m/s; 0 where friction holds it. Source: v^2 = 2 g L (sin a - tan b cos a), energy
     * and Coulomb's friction (elementary).
     *
     * @param length of the way, m
     * @param slope rad
     * @param friction angle, rad
     */
    public static double sliding(double length, double slope, double friction) {
        double pull = Math.sin(slope) - Math.tan(friction) * Math.cos(slope);
        return under(Math.max(0, length * pull));
    }

    /** Free fall to the line through a receiver's two edges, whose place is worked out once for many points. */
    public static final class Fall {
        private final Vec2 near;
        private final Vec2 along;
        private final Vec2 inward;
        private final Vec2 gravity;
        private final double length;
        private final double half;

        /**
         * To a receiver.
         *
         * @param gravity m/s2, as it pulls in the side view
         */
        public Fall(Receiver receiver, Vec2 gravity) {
            near = receiver.near();
            Vec2 mouth = receiver.far().minus(near);
            length = mouth.norm();
            along = mouth.times(1 / length);
            Vec2 square = new Vec2(along.y(), -along.x());
            inward = square.dot(gravity) < 0 ? square.times(-1) : square;
            this.gravity = gravity;
            half = 0.5 * gravity.dot(inward);
        }

        /** The same as with coordinates. */
        public double lands(Vec2 lip, Vec2 velocity) {
            return lands(lip.x(), lip.y(), velocity.x(), velocity.y());
        }

        /**
         * Where it passes the line.
         *
         * @param x of where it leaves, m
         * @param y m
         * @param alongX velocity, m/s
         * @param alongY m/s
         * @return 0 at the near edge, 1 at the far one; NaN when it never gets there
         */
        double lands(double x, double y, double alongX, double alongY) {
            double fromX = x - near.x();
            double fromY = y - near.y();
            double depth = fromX * inward.x() + fromY * inward.y();
            if (depth >= 0) {
                return (fromX * along.x() + fromY * along.y()) / length;
            }
            // depth + v t + g t^2 / 2 = 0, the later of the two times.
            double speed = alongX * inward.x() + alongY * inward.y();
            if (!(half > 0)) {
                return Double.NaN;
            }
            double root = speed * speed - 4 * half * depth;
            double t = (-speed + Math.sqrt(root)) / (2 * half);
            double endX = fromX + alongX * t + gravity.x() * t * t / 2;
            double endY = fromY + alongY * t + gravity.y() * t * t / 2;
            return (endX * along.x() + endY * along.y()) / length;
        }
    }
}
