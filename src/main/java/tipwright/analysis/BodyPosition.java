// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Where a body is at one tilt.
 *
 * @param body its name
 * @param origin where the datum would be if it moved with the body, m
 * @param turn rad, positive clockwise in the side view
 */
public record BodyPosition(String body, Vec2 origin, double turn) {
    /** Where a point of the body is, m; the point as stowed. */
    public Vec2 place(Vec2 stowed) {
        return stowed.tilted(turn).plus(origin);
    }

    /** Where a point of the body is, m; the point as stowed. */
    public Vec3 place(Vec3 stowed) {
        Vec2 p = place(stowed.xy());
        return new Vec3(p.x(), p.y(), stowed.z());
    }

    /** Where a point of space lies in the stowed body, m. */
    public Vec2 stowed(Vec2 placed) {
        return placed.minus(origin).tilted(-turn);
    }

    /**
     * A share of the way to the next place: the body turns evenly about the pole of its displacement, which is exact for the tank on
     * a fixed pivot; other bodies do not turn quite evenly with the tilt, which puts them off by up to some 0.3 mm at 1 degree a step,
     * falling with its square. Source: plane kinematics, pole of a finite displacement (from memory).
     *
     * @param share 0: here, 1: there
     */
    public BodyPosition towards(BodyPosition next, double share) {
        double by = Math.IEEEremainder(next.turn - turn, 2 * Math.PI);
        if (Math.abs(by) < 1e-9) {
            return new BodyPosition(body, origin.plus(next.origin.minus(origin).times(share)), turn + share * by);
        }
        Vec2 half = next.origin.minus(origin).times(0.5);
        double reach = 1 / Math.tan(by / 2);
        Vec2 pole = origin.plus(half).plus(new Vec2(half.y(), -half.x()).times(reach));
        return new BodyPosition(body, origin.tiltedAbout(pole, share * by), turn + share * by);
    }
}
