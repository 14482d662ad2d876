// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Guide;
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
 * The actuator pushes a carriage along a rail of the frame, and a link goes from the carriage to the tank: a frame pin that
 * slides. Bodies: tank, carriage, link. Joints: rail, slider-pin, tank-pin; all points in m, stowed.
 *
 * @param along direction of the rail, any length
 */
@Choice("sliding-pin")
public record SlidingPin(
        @Note("Where the actuator is pinned to the frame") @Measured(Kind.LENGTH) Vec2 framePin,
        @Note("Where the actuator is pinned to the carriage") @Measured(Kind.LENGTH) Vec2 rodPin,
        @Note("Where the link is pinned to the carriage") @Measured(Kind.LENGTH) Vec2 sliderPin,
        @Note("Where the link is pinned to the tank") @Measured(Kind.LENGTH) Vec2 tankPin,
        @Note("Middle of the carriage on its rail") @Measured(Kind.LENGTH) Vec2 carriage,
        @Note("Direction of the rail") @Measured(Kind.RATIO) Vec2 along,
        @Note("The rail that the carriage slides on") Guide guide,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pins by name, to check them") @Preset List<NamedPin> pins)
        implements LinkedDrive {
    private static final String RAIL = "rail";

    @Override
    public Skeleton skeleton(Vec2 pivot) {
        return new Skeleton(
                List.of("frame", "tank", "carriage", "link"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 1, pivot),
                        new Joint.Slide(RAIL, 0, 2, carriage, along),
                        new Joint.Pin("slider-pin", 2, 3, sliderPin),
                        new Joint.Pin("tank-pin", 3, 1, tankPin)),
                new Strut("actuator", 0, framePin, 2, rodPin));
    }

    @Override
    public @Nullable Guide guide(String slide) {
        return slide.equals(RAIL) ? guide : null;
    }
}
