// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import java.util.Map;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.NamedPin;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;
import tipwright.quantity.Kind;

/**
 * The actuator straightens a knee: it pushes the middle pin of two links, the lower one on the frame and the upper one on the
 * tank. Bodies: tank, lower, upper. Pins: foot-pin, knee, tank-pin; all points in m, stowed.
 */
@Choice("knuckle")
public record Knuckle(
        @Note("Where the actuator is pinned to the frame") @Measured(Kind.LENGTH) Vec2 framePin,
        @Note("The middle pin, where both links and the actuator meet") @Measured(Kind.LENGTH) Vec2 knee,
        @Note("Where the lower link is pinned to the frame") @Measured(Kind.LENGTH) Vec2 footPin,
        @Note("Where the upper link is pinned to the tank") @Measured(Kind.LENGTH) Vec2 tankPin,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pins by name, to check them") @Preset List<NamedPin> pins)
        implements LinkedDrive {
    @Override
    public Skeleton skeleton(Vec2 pivot) {
        return new Skeleton(
                List.of("frame", "tank", "lower", "upper"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 1, pivot),
                        new Joint.Pin("foot-pin", 0, 2, footPin),
                        new Joint.Pin("knee", 2, 3, knee),
                        new Joint.Pin("tank-pin", 3, 1, tankPin)),
                new Strut("actuator", 0, framePin, 2, knee));
    }

    @Override
    public Map<String, Vec2> places(Vec2 pivot) {
        Map<String, Vec2> places = LinkedDrive.super.places(pivot);
        places.remove(ROD_PIN);
        return places;
    }
}
