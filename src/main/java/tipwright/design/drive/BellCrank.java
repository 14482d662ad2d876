// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
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
 * The actuator turns a bell crank, and a link goes from the crank to the tank. Bodies: tank, crank, link. Pins: crank-pivot,
 * link-pin, tank-pin; all points in m, stowed.
 */
@Choice("bell-crank")
public record BellCrank(
        @Note("Where the actuator is pinned to the frame") @Measured(Kind.LENGTH) Vec2 framePin,
        @Note("Where the actuator is pinned to the crank") @Measured(Kind.LENGTH) Vec2 rodPin,
        @Note("Where the crank turns on the frame") @Measured(Kind.LENGTH) Vec2 crankPivot,
        @Note("Where the link is pinned to the crank") @Measured(Kind.LENGTH) Vec2 linkPin,
        @Note("Where the link is pinned to the tank") @Measured(Kind.LENGTH) Vec2 tankPin,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pins by name, to check them") @Preset List<NamedPin> pins)
        implements LinkedDrive {
    @Override
    public Skeleton skeleton(Vec2 pivot) {
        return new Skeleton(
                List.of("frame", "tank", "crank", "link"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 1, pivot),
                        new Joint.Pin("crank-pivot", 0, 2, crankPivot),
                        new Joint.Pin("link-pin", 2, 3, linkPin),
                        new Joint.Pin("tank-pin", 3, 1, tankPin)),
                new Strut("actuator", 0, framePin, 2, rodPin));
    }
}
