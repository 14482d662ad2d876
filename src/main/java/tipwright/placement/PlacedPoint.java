// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.geometry.Vec2;

/**
 * Where one place of the mechanism is put.
 *
 * @param name as in the design file
 * @param drawn where the design has it, m
 * @param at where it is put, m, tank stowed
 */
public record PlacedPoint(String name, Vec2 drawn, Vec2 at) {

    /** The design with its places where they are put, and another actuator. */
    public static Design moved(Design design, List<PlacedPoint> seats, Actuator actuator) {
        Vec2 drawn = design.pivot().at();
        Vec2 pivot = place(seats, drawn);
        Design there =
                pivot.equals(drawn) ? design : design.withPivot(design.pivot().movedTo(pivot));
        Design moved =
                there.withDrive(design.drive().moved(p -> place(seats, p)).with(actuator));
        return FollowingParts.of(moved, design, p -> place(seats, p));
    }

    /** Whether the design lets the place be there: within its zone and clear of what is in the way; no zone: anywhere. */
    public boolean allowed(Design design) {
        Mounts mounts = design.mounts();
        Zone zone = mounts == null ? null : mounts.zone(name);
        return mounts == null
                || zone == null
                || new PinRegion(zone, drawn, mounts.keepOuts(), mounts.wants().clearance()).outside(at) == 0;
    }

    private static Vec2 place(List<PlacedPoint> seats, Vec2 drawn) {
        for (PlacedPoint seat : seats) {
            if (seat.drawn.equals(drawn)) {
                return seat.at;
            }
        }
        return drawn;
    }
}
