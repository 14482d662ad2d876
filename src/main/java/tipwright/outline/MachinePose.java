// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;

/**
 * Where everything is at one tilt.
 *
 * @param tilt rad
 * @param bodies where each body of the mechanism is [body]
 * @param framePin of the actuator, m
 * @param tankPin the actuator's moving pin, m
 * @param fill what is in the tank; null: nothing that has a surface
 * @param shut whether the doors stay shut whatever the tilt
 */
public record MachinePose(
        double tilt, List<BodyPosition> bodies, Vec2 framePin, Vec2 tankPin, @Nullable Fill fill, boolean shut) {
    /** Copies the list. */
    public MachinePose {
        bodies = List.copyOf(bodies);
    }

    /** Without contents; the doors open at their tilts. */
    public static MachinePose of(Pose pose) {
        return new MachinePose(pose.tilt(), pose.bodies(), pose.framePin(), pose.tankPin(), null, false);
    }

    /** With the contents of a load case. */
    public static MachinePose of(Row row) {
        Pose pose = row.pose();
        return new MachinePose(
                pose.tilt(),
                pose.bodies(),
                pose.framePin(),
                pose.tankPin(),
                row.load().fill(),
                false);
    }

    /** The same with every door shut. */
    public MachinePose doorsShut() {
        return new MachinePose(tilt, bodies, framePin, tankPin, fill, true);
    }

    /** Where a point of a body is, m; the point as stowed. */
    Vec2 place(int body, Vec2 stowed) {
        return bodies.get(body).place(stowed);
    }

    /** Where a point of a part's own axes is, m. */
    Vec3 place(MachinePart part, Vec3 own) {
        Vec2 p = axes(part).place(own.xy());
        return new Vec3(p.x(), p.y(), own.z());
    }

    /** Where a part's own axes are. */
    public BodyPosition axes(MachinePart part) {
        return part.alongActuator()
                ? alongActuator(framePin, tankPin, part.kind() == PartKind.TUBE)
                : bodies.get(part.body());
    }

    /**
     * The axes of an actuator's tube, from its fixed pin, x towards the moving pin; or of its rod, from the moving pin, x away from
     * the fixed pin.
     */
    public static BodyPosition alongActuator(Vec2 framePin, Vec2 tankPin, boolean tube) {
        Vec2 u = tankPin.minus(framePin);
        return new BodyPosition("actuator", tube ? framePin : tankPin, -Math.atan2(u.y(), u.x()));
    }
}
