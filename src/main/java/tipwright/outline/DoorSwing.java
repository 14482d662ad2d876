// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.BodyPosition;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;
import tipwright.load.HungDoor;

/** How a door stands: shut until its opening opens; then one that hinges above hangs free, or a little further out, any other stands open. */
public final class DoorSwing {
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final double AJAR = Math.toRadians(14);
    private static final double HAIR = 1e-9;
    private static final double LAP = 1.03;
    private static final double OFF = 0.022;
    private static final double PLATE = 0.012;

    private DoorSwing() {}

    /** Its plate when shut, a little larger than the opening, m. */
    public static Mesh plate(Opening opening) {
        Vec3 normal = opening.areaVector().unit();
        Vec3 middle = opening.middle();
        List<Vec3> outline = opening.rimPoints().stream()
                .map(p -> middle.plus(p.minus(middle).times(LAP)).plus(normal.times(OFF)))
                .toList();
        return Forms.plate(outline, normal, PLATE);
    }

    /**
     * How far it has swung about its hinge axis, rad.
     *
     * @param body number of the tank
     */
    public static double angle(Opening opening, Door door, int body, MachinePose now) {
        if (now.shut() || now.tilt() < opening.opensAt() - HAIR) {
            return 0;
        }
        return open(opening, door, now.bodies().get(body));
    }

    /** How far it has swung about its hinge axis when it is open, rad. */
    public static double open(Opening opening, Door door, BodyPosition tank) {
        return opener(opening, door, UP).applyAsDouble(tank);
    }

    /** The same for many places of the tank, where up is against gravity. */
    public static ToDoubleFunction<BodyPosition> opener(Opening opening, Door door, Vec3 up) {
        HungDoor hung = hung(opening, door);
        return tank -> hung.angle(up.tilted(-tank.turn()), AJAR);
    }

    /** The same of a door that hangs plumb where it hangs. */
    public static ToDoubleFunction<BodyPosition> plumb(Opening opening, Door door, Vec3 up) {
        HungDoor hung = hung(opening, door);
        return tank -> hung.angle(up.tilted(-tank.turn()), 0);
    }

    /** How far it swings at most where it is let go shut, rad. */
    public static ToDoubleFunction<BodyPosition> letGo(Opening opening, Door door, Vec3 up) {
        HungDoor hung = hung(opening, door);
        return tank -> hung.letGo(up.tilted(-tank.turn()));
    }

    private static HungDoor hung(Opening opening, Door door) {
        return HungDoor.of(opening, door, opening.middle());
    }
}
