// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.List;
import tipwright.geometry.Vec2;

/**
 * A planar mechanism with one degree of freedom, as drawn with the tank stowed.
 *
 * @param bodies names; number 0 is the frame, which does not move
 * @param tank number of the body that tilts
 * @param joints pins and slides; the one named 'pivot', if any, carries the tank in the bearings
 * @param actuator the member that drives it
 */
public record Skeleton(List<String> bodies, int tank, List<Joint> joints, Strut actuator) {
    public static final String PIVOT = "pivot";

    /** Copies the lists. */
    public Skeleton {
        bodies = List.copyOf(bodies);
        joints = List.copyOf(joints);
    }

    /** The tank turns on the pivot; the actuator goes straight from frame to tank. */
    public static Skeleton straight(Vec2 pivot, Vec2 framePin, Vec2 tankPin) {
        return new Skeleton(
                List.of("frame", "tank"),
                1,
                List.of(new Joint.Pin(PIVOT, 0, 1, pivot)),
                new Strut("actuator", 0, framePin, 1, tankPin));
    }
}
