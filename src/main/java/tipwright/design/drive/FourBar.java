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
 * Two links carry the tank, so that it turns about a moving centre. The main links turn on the frame in the two bearings, at the
 * design's pivot. Each link is made twice, once on each side. Bodies: tank, main, second. Pins: main-tank-pin, second-frame-pin,
 * second-tank-pin; all points in m, stowed.
 */
@Choice("four-bar")
public record FourBar(
        @Note("Where the main links are pinned to the tank") @Measured(Kind.LENGTH) Vec2 mainTankPin,
        @Note("Where the second links are pinned to the frame") @Measured(Kind.LENGTH) Vec2 secondFramePin,
        @Note("Where the second links are pinned to the tank") @Measured(Kind.LENGTH) Vec2 secondTankPin,
        @Note("Where the actuator is pinned to the frame") @Measured(Kind.LENGTH) Vec2 framePin,
        @Note("Where the actuator's other end is pinned") @Measured(Kind.LENGTH) Vec2 rodPin,
        @Note("What the actuator pushes: the tank, the main or the second links") @Preset("tank") Pushes pushes,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pins by name, to check them") @Preset List<NamedPin> pins)
        implements LinkedDrive {
    /** The body at the actuator's moving end. */
    public enum Pushes {
        TANK(1),
        MAIN(2),
        SECOND(3);

        private final int body;

        Pushes(int body) {
            this.body = body;
        }
    }

    @Override
    public Skeleton skeleton(Vec2 pivot) {
        return new Skeleton(
                List.of("frame", "tank", "main", "second"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 2, pivot),
                        new Joint.Pin("main-tank-pin", 2, 1, mainTankPin),
                        new Joint.Pin("second-frame-pin", 0, 3, secondFramePin),
                        new Joint.Pin("second-tank-pin", 3, 1, secondTankPin)),
                new Strut("actuator", 0, framePin, pushes.body, rodPin));
    }

    @Override
    public boolean paired(String joint) {
        return joint.startsWith("main-") || joint.startsWith("second-");
    }
}
