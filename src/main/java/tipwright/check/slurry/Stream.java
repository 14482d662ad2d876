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

    /**
     * Where it passes the line through a receiver's two edges.
     *
     * @param lip m
     * @param velocity m/s
     * @param gravity m/s2, as it pulls in the side view
     * @return 0 at the near edge, 1 at the far one; NaN when it never gets there
     */
    public static double lands(Receiver receiver, Vec2 lip, Vec2 velocity, Vec2 gravity) {
        Vec2 mouth = receiver.far().minus(receiver.near());
        double length = mouth.norm();
        Vec2 along = mouth.times(1 / length);
        Vec2 inward = new Vec2(along.y(), -along.x());
        if (inward.dot(gravity) < 0) {
            inward = inward.times(-1);
        }
        double depth = lip.minus(receiver.near()).dot(inward);
        if (depth >= 0) {
            return lip.minus(receiver.near()).dot(along) / length;
        }
        // depth + v t + g t^2 / 2 = 0, the later of the two times.
        double half = 0.5 * gravity.dot(inward);
        double speed = velocity.dot(inward);
        double root = speed * speed - 4 * half * depth;
        if (!(half > 0) || root < 0) {
            return Double.NaN;
        }
        double t = (-speed + Math.sqrt(root)) / (2 * half);
        Vec2 p = lip.plus(velocity.times(t)).plus(gravity.times(t * t / 2));
        return p.minus(receiver.near()).dot(along) / length;
    }
}
