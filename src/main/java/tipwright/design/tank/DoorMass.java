// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec3;

/**
 * What a door weighs and where its weight is while it is shut.
 *
 * @param mass kg
 * @param centre m, stowed
 * @param counted whether it is one of the attached parts, or was on the scale with the empty tank
 */
public record DoorMass(double mass, Vec3 centre, boolean counted) {
    /**
     * That of the door over an opening: as the door itself tells, else as the attached part of the opening's name does; null where
     * neither does. The centre is that of the part, else the middle of the opening.
     */
    public static @Nullable DoorMass of(Tank tank, Opening opening) {
        Door door = opening.door();
        if (door == null) {
            return null;
        }
        Double told = door.mass();
        for (Attached part : tank.attached()) {
            if (part.name().equals(opening.name())) {
                return new DoorMass(told == null ? part.mass() : told, part.centre(), true);
            }
        }
        return told == null ? null : new DoorMass(told, opening.middle(), tank.mass() != null);
    }
}
