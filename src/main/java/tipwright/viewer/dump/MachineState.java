// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.outline.MachinePose;

/**
 * The machine at one tilt in one load case.
 *
 * @param tilt rad
 * @param bodies where each body of the linkage is; number 0 is the frame
 * @param tank where the tank is
 * @param framePin of the actuator, m
 * @param tankPin the actuator's moving pin, m
 * @param length of the actuator, m
 * @param arm dL/dtilt, m per rad
 * @param fill what is in the tank, its surface in the tank's axes; null: nothing that has a surface
 * @param mass of all that turns, kg
 * @param centroid of it in space, m
 * @param rest forces at rest, without friction
 * @param raise forces while it tips
 * @param lower forces while it goes back
 * @param out what has left the tank, m3
 * @param pours what leaves, opening by opening
 */
public record MachineState(
        double tilt,
        List<BodyPosition> bodies,
        BodyPosition tank,
        Vec2 framePin,
        Vec2 tankPin,
        double length,
        double arm,
        @Nullable Fill fill,
        double mass,
        Vec3 centroid,
        ShownForces rest,
        ShownForces raise,
        ShownForces lower,
        double out,
        List<Pour> pours) {
    /** Copies the list. */
    public MachineState {
        bodies = List.copyOf(bodies);
        pours = List.copyOf(pours);
    }

    /**
     * The same for outlines.
     *
     * @param shut whether the doors stay shut whatever the tilt
     */
    public MachinePose configuration(boolean shut) {
        return new MachinePose(tilt, bodies, framePin, tankPin, fill, shut);
    }
}
