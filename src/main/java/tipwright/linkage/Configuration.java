// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import tipwright.geometry.Vec2;

/**
 * All bodies at one tilt, with their rates. Arrays are not to be changed.
 *
 * @param tilt rad
 * @param q place of each moving body, [3 * (body - 1) + (x, y, angle)]: a point p of it, as stowed, is at (x, y) + R(angle) p;
 *     m, m, rad (positive clockwise in the side view)
 * @param rates dq/dtilt
 * @param onA actuator's pin on its body a, m
 * @param onB actuator's pin on its body b, m
 * @param length of the actuator, m
 * @param arm dL/dtilt, m per rad
 * @param pinSpeed speed of one actuator pin against the other, m per rad of tilt
 */
@SuppressWarnings("ArrayRecordComponent")
public record Configuration(
        double tilt, double[] q, double[] rates, Vec2 onA, Vec2 onB, double length, double arm, double pinSpeed) {

    /** Angle between the actuator's line and the arm of its moving pin, rad, 0 to pi/2: sin = |arm| / pin speed. */
    public double transmission() {
        return pinSpeed <= 0 ? 0 : Math.asin(Math.min(1, Math.abs(arm) / pinSpeed));
    }

    /** Unit vector from the actuator's pin on a to the one on b. */
    public Vec2 line() {
        return onB.minus(onA).times(1 / length);
    }

    /** Where a point of a body is; the point as stowed, m. */
    public Vec2 place(int body, Vec2 stowed) {
        if (body == 0) {
            return stowed;
        }
        int i = 3 * (body - 1);
        return stowed.tilted(q[i + 2]).plus(new Vec2(q[i], q[i + 1]));
    }

    /** Turn of a body, rad, positive clockwise. */
    public double turn(int body) {
        return body == 0 ? 0 : q[3 * (body - 1) + 2];
    }

    /** Turn of a body per turn of the tank. */
    public double turnRate(int body) {
        return body == 0 ? 0 : rates[3 * (body - 1) + 2];
    }

    /** Turn of the actuator's line per turn of the tank, positive clockwise. */
    public double lineRate(Strut strut) {
        Vec2 relative = velocity(strut.b(), strut.onB()).minus(velocity(strut.a(), strut.onA()));
        return -line().cross(relative) / length;
    }

    /** Motion in a joint per rad of tilt: turn of b against a at a pin, positive clockwise; way of b along the line at a slide, m. */
    public double jointRate(Joint joint) {
        if (joint instanceof Joint.Slide slide) {
            Vec2 step = velocity(joint.b(), joint.at()).minus(velocity(joint.a(), joint.at()));
            Vec2 gap = place(joint.b(), joint.at()).minus(place(joint.a(), joint.at()));
            Vec2 carried = new Vec2(gap.y(), -gap.x()).times(turnRate(joint.a()));
            return slide.direction().unit().tilted(turn(joint.a())).dot(step.minus(carried));
        }
        return turnRate(joint.b()) - turnRate(joint.a());
    }

    /** Velocity of a point of a body, m per rad of tilt; the point as stowed. */
    public Vec2 velocity(int body, Vec2 stowed) {
        if (body == 0) {
            return Vec2.ZERO;
        }
        int i = 3 * (body - 1);
        Vec2 fromOrigin = place(body, stowed).minus(new Vec2(q[i], q[i + 1]));
        return new Vec2(rates[i] + fromOrigin.y() * rates[i + 2], rates[i + 1] - fromOrigin.x() * rates[i + 2]);
    }
}
