// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.key.FromParts;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.linkage.Skeleton;

/**
 * Where the mounts may go, and what is wanted of them.
 *
 * @param framePin null: the frame pin stays where it is drawn
 * @param tankPin null: the tank pin stays where it is drawn
 * @param pivot null: the pivot stays where it is drawn
 * @param places zones of pins by name; every other pin stays where it is drawn
 */
public record Mounts(
        @Note("Where the frame pin may go; left out: where it is drawn") @Nullable Zone framePin,
        @Note("Where the tank pin may go, tank stowed; left out: where it is drawn") @Nullable Zone tankPin,
        @Note("Where the pivot may go; left out: where it is drawn") @Nullable Zone pivot,
        @Note("Where other pins of the mechanism may go, by name; left out: where they are drawn") @Preset
                List<PinZone> places,
        @Note("Where no pin may be") @Preset List<KeepOut> keepOuts,
        @Note("Actuators to choose from, by their names in the parts files; left out: the one that is drawn")
                @FromParts("actuators")
                @Preset
                List<ListedActuator> actuators,
        @Note("What is wanted of the answer") @Preset Wants wants) {

    /** Where a place of the mechanism may go, by its name; null: it stays where it is drawn. */
    public @Nullable Zone zone(String name) {
        Zone own =
                switch (name) {
                    case Drive.FRAME_PIN -> framePin;
                    case Drive.TANK_PIN -> tankPin;
                    case Skeleton.PIVOT -> pivot;
                    default -> null;
                };
        for (PinZone p : places) {
            own = own == null && p.pin().equals(name) ? p.zone() : own;
        }
        return own;
    }
}
