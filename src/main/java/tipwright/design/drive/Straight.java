// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Choice;
import tipwright.design.key.Copy;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;

/**
 * The actuator goes straight from the frame to the tank.
 *
 * @param framePin m, stowed
 * @param tankPin m, stowed
 */
@Choice("straight")
public record Straight(
        @Note("Where the actuator is pinned to the frame") @Measured(Kind.LENGTH) Vec2 framePin,
        @Note("Where the actuator is pinned to the tank, tank stowed") @Measured(Kind.LENGTH) Vec2 tankPin,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pin at the frame, to check it") @Nullable PinJoint framePinJoint,
        @Note("The pin at the tank, to check it") @Nullable PinJoint tankPinJoint)
        implements Drive {

    @Override
    public Skeleton skeleton(Vec2 pivot) {
        return Skeleton.straight(pivot, framePin, tankPin);
    }

    @Override
    public @Nullable PinJoint pinJoint(String name) {
        return switch (name) {
            case FRAME_PIN -> framePinJoint;
            case ROD_PIN -> tankPinJoint;
            default -> null;
        };
    }

    @Override
    public Drive withPin(String name, PinJoint joint) {
        return Copy.with(this, name.equals(FRAME_PIN) ? "framePinJoint" : "tankPinJoint", joint);
    }

    @Override
    public String pinKey(String name) {
        return "drive: " + (name.equals(FRAME_PIN) ? "frame-pin-joint" : "tank-pin-joint");
    }

    /** The same parts with the pins elsewhere. */
    public Straight movedTo(Vec2 frame, Vec2 tank) {
        return new Straight(frame, tank, actuators, framePinJoint, tankPinJoint);
    }

    @Override
    public String rodPinName() {
        return TANK_PIN;
    }

    @Override
    public boolean direct() {
        return true;
    }

    @Override
    public String zonesByExample() {
        return "'frame-pin:' and 'tank-pin:' zones, see the example silt-trailer";
    }
}
