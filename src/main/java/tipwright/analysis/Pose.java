// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Where the linkage is at one tilt.
 *
 * @param tilt rad
 * @param length of the actuator, pin to pin, m
 * @param arm effective moment arm dL/dtilt, m per rad; positive: it grows as the tank tips
 * @param transmission angle between the actuator's line and the arm to its moving pin, rad, 0 to pi/2
 * @param swing direction of the actuator from its frame pin, rad from +x towards +y
 * @param framePin m
 * @param tankPin the actuator's moving pin, m, at this tilt
 * @param bodies where each body of the mechanism is [body]
 * @param tank number of the tank among them
 */
public record Pose(
        double tilt,
        double length,
        double arm,
        double transmission,
        double swing,
        Vec2 framePin,
        Vec2 tankPin,
        List<BodyPosition> bodies,
        int tank) {
    /** Copies the list. */
    public Pose {
        bodies = List.copyOf(bodies);
    }

    /** Where a point of the tank is in space, m; the point as stowed. */
    public Vec3 place(Vec3 stowed) {
        Vec2 p = bodies.get(tank).place(stowed.xy());
        return new Vec3(p.x(), p.y(), stowed.z());
    }
}
