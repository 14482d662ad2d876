// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;

/**
 * A place of the machine that is drilled or welded: the one list that paper, phone, search and fixes number and name places by.
 *
 * @param number from 1 on: the pivot, the actuator's ends, then the others
 * @param key as in the design file; of names that are one place the first
 * @param at m, stowed
 * @param slide whether it is the middle of a carriage, not a pin
 * @param joint what is known of its pin; null: nothing, or the bearings hold it
 */
public record NumberedPlace(int number, String key, Vec2 at, boolean slide, @Nullable PinJoint joint) {
    /** Nearer than this two places are one, m. */
    private static final double SAME = 1e-6;

    /** Its name as a person reads it. */
    public String name() {
        return NameId.words(key);
    }

    /** Its number and its name. */
    public String words() {
        return number + " " + name();
    }

    /** Whether a point is here. */
    public boolean is(Vec2 point) {
        return at.minus(point).norm() < SAME;
    }

    /** Whether it is the axis of the two bearings. */
    public boolean pivot() {
        return key.equals(Skeleton.PIVOT);
    }

    /** All places of a design. */
    public static List<NumberedPlace> of(Design design) {
        Vec2 pivot = design.pivot().at();
        Drive drive = design.drive();
        List<NumberedPlace> all = new ArrayList<>();
        drive.places(pivot).forEach((key, at) -> {
            int known = at(all, at);
            PinJoint joint = joint(drive, key);
            if (known >= 0) {
                NumberedPlace first = all.get(known);
                all.set(
                        known,
                        new NumberedPlace(
                                first.number,
                                first.key,
                                first.at,
                                first.slide,
                                first.joint == null && !first.pivot() ? joint : first.joint));
                return;
            }
            boolean slide = drive.skeleton(pivot).joints().stream()
                    .anyMatch(j -> j instanceof Joint.Slide && j.at().equals(at));
            all.add(new NumberedPlace(all.size() + 1, key, at, slide, joint));
        });
        return List.copyOf(all);
    }

    /** Which of them is at a point, from 0; -1: none. */
    public static int at(List<NumberedPlace> all, Vec2 point) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).is(point)) {
                return i;
            }
        }
        return -1;
    }

    private static @Nullable PinJoint joint(Drive drive, String key) {
        if (key.equals(Skeleton.PIVOT)) {
            return null;
        }
        return key.equals(Drive.FRAME_PIN)
                ? drive.framePinJoint()
                : key.equals(drive.rodPinName()) ? drive.tankPinJoint() : drive.pinJoint(key);
    }
}
