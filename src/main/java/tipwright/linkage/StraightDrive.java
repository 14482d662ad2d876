// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import tipwright.geometry.Vec2;

/**
 * The straight drive in closed form: beside the general solver as a check on it, and for the search.
 *
 * <p>With B the tank pin at the tilt and A the frame pin: L = |B - A|, dL/dtilt = (B - A) . B' / L. Source: elementary
 * (cosine rule).
 *
 * @param pivot m
 * @param framePin m
 * @param tankPin m, stowed
 */
public record StraightDrive(Vec2 pivot, Vec2 framePin, Vec2 tankPin) {
    /** Length of the actuator, m, at a tilt in rad. */
    public double length(double tilt) {
        return pinAt(tilt).minus(framePin).norm();
    }

    /** dL/dtilt, m per rad. */
    public double arm(double tilt) {
        Vec2 b = pinAt(tilt);
        Vec2 line = b.minus(framePin);
        return line.dot(rate(b)) / line.norm();
    }

    /**
     * Actuator force in balance with a force on the tank, N; positive pushes.
     *
     * @param at where the force acts, in space, m
     * @param force N
     */
    public double balance(double tilt, Vec2 at, Vec2 force) {
        return -force.dot(rate(at)) / arm(tilt);
    }

    /** Force of the tank on its pivot, N, when the actuator pushes with 'push' and 'force' acts on the tank. */
    public Vec2 pivotForce(double tilt, double push, Vec2 force) {
        Vec2 line = pinAt(tilt).minus(framePin).unit();
        return line.times(push).plus(force);
    }

    /** The tank pin at a tilt, m. */
    public Vec2 pinAt(double tilt) {
        return tankPin.tiltedAbout(pivot, tilt);
    }

    private Vec2 rate(Vec2 p) {
        return new Vec2(p.y() - pivot.y(), pivot.x() - p.x());
    }
}
