// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import tipwright.design.Design;
import tipwright.design.tank.Attached;
import tipwright.design.tank.DoorMass;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Wall;
import tipwright.design.tank.Weighed;
import tipwright.geometry.Skin;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The tank without its contents.
 *
 * @param mass of wall and attached parts, kg
 * @param centroid m, stowed
 */
public record EmptyTank(double mass, Vec3 centroid) {
    /**
     * Weight of the empty tank: as weighed, or from the wall's thickness over the real surface of the interior less the openings;
     * plus the attached parts and any door that is not among them. The wall is taken as thin: its area is that of the interior.
     *
     * Where a hook scale has held it, the centre is moved so that the moments about the pivot are those that were measured.
     *
     * @param interior the tank's inside, as made by its interior
     */
    public static EmptyTank of(Design design, Solid interior) {
        EmptyTank drawn = drawn(design.tank(), interior);
        return HookScale.corrected(
                drawn, design.tank().weighed(), design.pivot().at());
    }

    /** With so much more first moment of its mass, kg m. */
    EmptyTank with(Vec3 moved) {
        return mass > 0 ? new EmptyTank(mass, centroid.plus(moved.times(1 / mass))) : this;
    }

    /** How far the pulls of a hook scale move its centre from where wall and parts put it, m, stowed; nothing where there are none. */
    public static Vec2 movedByHook(Design design) {
        Solid interior = design.tank().interior().solid();
        return of(design, interior)
                .centroid()
                .minus(drawn(design.tank(), interior).centroid())
                .xy();
    }

    /** The same without what a hook scale says. */
    static EmptyTank drawn(Tank tank, Solid interior) {
        double mass = 0;
        Vec3 first = Vec3.ZERO;
        Weighed weighed = tank.mass();
        Wall wall = tank.wall();
        if (weighed != null) {
            mass = weighed.empty();
            first = weighed.centre().times(mass);
        } else if (wall != null) {
            double perArea = wall.thickness() * wall.density();
            Skin skin = interior.skin();
            mass = perArea * skin.area();
            first = skin.centroid().times(mass);
            for (Opening opening : tank.openings()) {
                double cut = perArea * opening.areaVector().norm();
                mass -= cut;
                first = first.minus(opening.middle().times(cut));
            }
        }
        for (Opening opening : tank.openings()) {
            DoorMass door = DoorMass.of(tank, opening);
            if (door != null && !door.counted()) {
                mass += door.mass();
                first = first.plus(door.centre().times(door.mass()));
            }
        }
        for (Attached part : tank.attached()) {
            mass += part.mass();
            first = first.plus(part.centre().times(part.mass()));
        }
        return new EmptyTank(mass, mass > 0 ? first.times(1 / mass) : Vec3.ZERO);
    }
}
