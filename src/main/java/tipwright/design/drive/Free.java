// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Guide;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Choice;
import tipwright.design.key.Copy;
import tipwright.design.key.Counted;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.linkage.Strut;

/**
 * Any planar mechanism: bodies, pins and slides by name. The frame and the tank are there already; one pin is named 'pivot' and
 * sits in the two bearings.
 *
 * @param bodies names of the bodies beside frame and tank
 * @param from the actuator's fixed end
 * @param to the actuator's moving end
 */
@Choice("free")
public record Free(
        @Note("Names of the links, cranks and carriages beside frame and tank") @Preset List<String> bodies,
        @Note("The pins; the one named pivot sits in the bearings") @Counted(atLeast = 1, atMost = 40)
                List<FreePin> pins,
        @Note("The slides") @Preset @Counted(atMost = 20) List<FreeSlide> slides,
        @Note("Where the actuator's fixed end is") Anchor from,
        @Note("Where the actuator's moving end is") Anchor to,
        @Note("The actuators, side by side") @Counted(atLeast = 1, atMost = 8) List<PlacedActuator> actuators,
        @Note("The pin at the actuator's fixed end, to check it") @Nullable PinJoint framePinJoint,
        @Note("The pin at the actuator's moving end, to check it") @Nullable PinJoint rodPinJoint)
        implements Drive {
    private static final String FRAME = "frame";
    private static final String TANK = "tank";

    /** Every body by number: frame, tank, then the others. */
    public List<String> allBodies() {
        List<String> all = new ArrayList<>(List.of(FRAME, TANK));
        all.addAll(bodies);
        return all;
    }

    @Override
    public Skeleton skeleton(Vec2 pivot) {
        List<String> all = allBodies();
        List<Joint> joints = new ArrayList<>();
        for (FreePin p : pins) {
            Vec2 at = p.at() == null ? pivot : p.at();
            joints.add(new Joint.Pin(p.name(), number(all, p.between(), 0), number(all, p.between(), 1), at));
        }
        for (FreeSlide s : slides) {
            joints.add(new Joint.Slide(
                    s.name(), number(all, s.between(), 0), number(all, s.between(), 1), s.at(), s.along()));
        }
        Strut strut = new Strut("actuator", all.indexOf(from.body()), from.at(), all.indexOf(to.body()), to.at());
        return new Skeleton(all, 1, joints, strut);
    }

    private static int number(List<String> all, List<String> between, int which) {
        return all.indexOf(between.get(which));
    }

    @Override
    public Drive withPin(String name, PinJoint joint) {
        if (pins.stream().anyMatch(p -> p.name().equals(name))) {
            List<FreePin> put = pins.stream()
                    .map(p -> p.name().equals(name) ? Copy.with(p, "joint", joint) : p)
                    .toList();
            return Copy.with(this, "pins", put);
        }
        return Copy.with(this, name.equals(FRAME_PIN) ? "framePinJoint" : "rodPinJoint", joint);
    }

    @Override
    public @Nullable PinJoint pinJoint(String name) {
        for (FreePin p : pins) {
            if (p.name().equals(name)) {
                return p.joint();
            }
        }
        return name.equals(FRAME_PIN) ? framePinJoint : name.equals(ROD_PIN) ? rodPinJoint : null;
    }

    @Override
    public String slideKey(String slide) {
        return slide;
    }

    @Override
    public String pinKey(String name) {
        return name.equals(FRAME_PIN) || name.equals(ROD_PIN)
                ? "drive: free." + name + "-joint"
                : "drive: free.pins: joint of '" + name + "'";
    }

    @Override
    public boolean paired(String joint) {
        return pins.stream().anyMatch(p -> p.name().equals(joint) && p.bothSides());
    }

    @Override
    public @Nullable Guide guide(String slide) {
        for (FreeSlide s : slides) {
            if (s.name().equals(slide)) {
                return s.guide();
            }
        }
        return null;
    }
}
