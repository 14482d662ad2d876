// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.List;
import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.PartKind;
import tipwright.outline.Room;

/**
 * The room that the dump takes up.
 *
 * @param low smallest x, y and z of anything at any tilt, m; y is the ground, or as drawn where the design gives none
 * @param high largest x, y and z, m
 * @param outline of the tank in the side view, stowed, convex, m
 * @param outermost the stowed points of the tank that sweep farthest, m
 */
public record Surroundings(Vec3 low, Vec3 high, List<Vec2> outline, List<Vec2> outermost) {
    private static final int LOOKS = 24;

    /** The room of a dump. */
    public static Surroundings of(DumpStates dump, MachineOutline machine) {
        List<Vec2> outline = machine.parts().stream()
                .filter(p -> p.kind() == PartKind.TANK)
                .findFirst()
                .orElseThrow()
                .form()
                .reach();
        Room room = machine.room();
        return new Surroundings(room.low(), room.high(), outline, outermost(dump, outline));
    }

    /** The corner that gets highest, and the one that reaches farthest to the dump side. */
    private static List<Vec2> outermost(DumpStates dump, List<Vec2> outline) {
        Vec2 highest = outline.get(0);
        Vec2 farthest = outline.get(0);
        double top = -1e9;
        double reach = -1e9;
        for (int k = 0; k <= LOOKS; k++) {
            double tilt = dump.first() + (dump.last() - dump.first()) * k / LOOKS;
            BodyPosition turned = dump.placements(tilt).get(dump.skeleton().tank());
            for (Vec2 p : outline) {
                Vec2 at = turned.place(p);
                if (at.y() > top) {
                    top = at.y();
                    highest = p;
                }
                if (at.x() > reach) {
                    reach = at.x();
                    farthest = p;
                }
            }
        }
        return highest.equals(farthest) ? List.of(highest) : List.of(highest, farthest);
    }

    /** Height of the ground as drawn, m. */
    public double ground() {
        return low.y();
    }

    /** Middle of the room, m. */
    public Vec3 middle() {
        return low.plus(high).times(0.5);
    }

    /** Half the diagonal of the room, m. */
    public double radius() {
        return high.minus(low).norm() / 2;
    }
}
