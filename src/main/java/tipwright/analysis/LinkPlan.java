// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec2;

/**
 * A link between two pins, which bears along their line.
 *
 * @param body its number
 * @param end the pin that the actuator is not at, m, stowed
 * @param other the other pin, m, stowed
 */
public record LinkPlan(int body, Vec2 end, Vec2 other) {
    /** Between its pins, m. */
    public double length() {
        return other.minus(end).norm();
    }

    /** Whether a joint is at the end without the actuator. */
    public boolean endAt(JointPlan joint) {
        return (joint.a() == body || joint.b() == body) && same(joint.at(), end);
    }

    static boolean same(Vec2 a, Vec2 b) {
        return a.minus(b).norm() < 1e-6;
    }
}
