// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Note;

/**
 * What is known of one pin of a mechanism.
 *
 * @param pin its name in the mechanism
 * @param joint its dimensions
 */
public record NamedPin(@Note("Name of the pin, such as frame-pin") String pin, @Note("Its dimensions") PinJoint joint) {
    /** The pin's dimensions by name; null when it is not in the list. */
    public static @Nullable PinJoint find(List<NamedPin> pins, String name) {
        for (NamedPin p : pins) {
            if (p.pin().equals(name)) {
                return p.joint();
            }
        }
        return null;
    }

    /** The list with these dimensions of a pin, in place of those that it had. */
    public static List<NamedPin> put(List<NamedPin> pins, String name, PinJoint joint) {
        List<NamedPin> all = new ArrayList<>();
        boolean there = false;
        for (NamedPin p : pins) {
            there |= p.pin().equals(name);
            all.add(p.pin().equals(name) ? new NamedPin(name, joint) : p);
        }
        if (!there) {
            all.add(new NamedPin(name, joint));
        }
        return List.copyOf(all);
    }
}
