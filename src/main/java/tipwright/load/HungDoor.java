// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * How a door stands that is open: one that hinges above hangs from its hinge, any other stands a little further open than square to
 * its wall.
 *
 * @param door whose hinge it is
 * @param sense which way about the hinge axis moves its middle outwards, 1 or -1
 * @param hangs whether the hinge axis lies near to level along the pivot
 * @param down from the hinge to the middle of the shut door, which comes to lie under it, in the side view, m, stowed
 * @param outwards square to that, out of the tank
 */
public record HungDoor(Door door, double sense, boolean hangs, Vec2 down, Vec2 outwards) {
    private static final double WIDE = Math.toRadians(105);
    private static final double LEVEL = 0.7;
    private static final double STEEP = 0.7;

    /**
     * The door over an opening.
     *
     * @param middle what comes to lie straight under the hinge, m, stowed
     */
    public static HungDoor of(Opening opening, Door door, Vec3 middle) {
        Vec3 hinge = door.hinge();
        Vec3 out = opening.outward();
        double sense = Math.signum(door.hingeAxis().cross(middle.minus(hinge)).dot(out));
        boolean level = Math.abs(door.hingeAxis().unit().z()) > LEVEL;
        Vec2 down = middle.minus(hinge).xy();
        Vec2 square = new Vec2(-down.y(), down.x());
        return new HungDoor(door, sense, level, down, square.dot(out.xy()) < 0 ? square.times(-1) : square);
    }

    /**
     * How far it has swung about its hinge axis, rad.
     *
     * @param up against gravity, in the tank's axes
     * @param ajar how far it is kept out of plumb where it hangs, rad
     */
    public double angle(Vec3 up, double ajar) {
        return sense * (hangsAt(up) ? plumb(up) + ajar : WIDE);
    }

    /**
     * How far it swings at most where it is let go shut, rad: one that hangs goes as far beyond plumb as it was before it. Source:
     * energy of a pendulum without friction (from memory).
     *
     * @param up against gravity, in the tank's axes
     */
    public double letGo(Vec3 up) {
        return sense * (hangsAt(up) ? Math.min(Math.PI, 2 * plumb(up)) : WIDE);
    }

    /** One in an upright wall that hinges above hangs at every tilt; any other does where its hinge has come to lie above. */
    private boolean hangsAt(Vec3 up) {
        boolean above = down.y() < -STEEP * down.norm();
        return hangs && (above || -down.dot(up.xy()) > 0);
    }

    private double plumb(Vec3 up) {
        return Math.max(0, Math.atan2(-outwards.dot(up.xy()), -down.dot(up.xy())));
    }

    /** A point of the shut door after a swing, m, stowed. */
    public Vec3 swung(Vec3 p, double angle) {
        return p.plus(arm(p).moved(angle));
    }

    /** The arm on which a point of the shut door swings, m, stowed. */
    Arm arm(Vec3 p) {
        Vec3 k = door.hingeAxis().unit();
        Vec3 v = p.minus(door.hinge());
        return new Arm(v.minus(k.times(k.dot(v))), k.cross(v));
    }

    /**
     * From the hinge line to a point.
     *
     * @param straight square to the hinge line, m
     * @param ahead the way that the point begins to swing, as long, m
     */
    record Arm(Vec3 straight, Vec3 ahead) {
        /** How far a swing moves the point, m. Source: Rodrigues' rotation formula (from memory). */
        Vec3 moved(double angle) {
            return straight.times(Math.cos(angle) - 1).plus(ahead.times(Math.sin(angle)));
        }
    }
}
