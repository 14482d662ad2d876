// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.BodyPosition;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** How a door stands: shut until its opening opens; then one that hinges above hangs free, or a little further out, any other stands open. */
public final class DoorSwing {
    private static final double AJAR = Math.toRadians(14);
    private static final double WIDE = Math.toRadians(105);
    private static final double HAIR = 1e-9;
    private static final double LEVEL = 0.7;
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
        return opener(opening, door).applyAsDouble(tank);
    }

    /** The same for many places of the tank. */
    public static ToDoubleFunction<BodyPosition> opener(Opening opening, Door door) {
        return opener(opening, door, AJAR);
    }

    /** The same of a door that hangs plumb where it hangs. */
    public static ToDoubleFunction<BodyPosition> plumb(Opening opening, Door door) {
        return opener(opening, door, 0);
    }

    private static ToDoubleFunction<BodyPosition> opener(Opening opening, Door door, double ajar) {
        Vec3 hinge = door.hinge();
        Vec3 middle = opening.middle();
        Vec3 out = opening.areaVector().unit();
        // which way about the hinge axis moves the middle outwards
        double sense = Math.signum(door.hingeAxis().cross(middle.minus(hinge)).dot(out));
        boolean level = Math.abs(door.hingeAxis().z()) > LEVEL;
        Vec2 down = middle.minus(hinge).xy();
        // square to the shut door in the side view, outwards
        Vec2 square = new Vec2(-down.y(), down.x());
        Vec2 outwards = square.dot(out.xy()) < 0 ? square.times(-1) : square;
        return tank -> {
            Vec2 lies = down.tilted(tank.turn());
            double plumb = Math.atan2(-outwards.tilted(tank.turn()).y(), -lies.y());
            return sense * (level && lies.y() < 0 ? Math.max(0, plumb) + ajar : WIDE);
        };
    }

    /** A point of the shut door after the swing. Source: Rodrigues' rotation formula (from memory). */
    static Vec3 swung(Vec3 p, Door door, double angle) {
        Vec3 k = door.hingeAxis().unit();
        Vec3 v = p.minus(door.hinge());
        double c = Math.cos(angle);
        return door.hinge()
                .plus(v.times(c))
                .plus(k.cross(v).times(Math.sin(angle)))
                .plus(k.times(k.dot(v) * (1 - c)));
    }
}
