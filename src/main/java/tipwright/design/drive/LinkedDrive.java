// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.joint.NamedPin;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Copy;

/** A mechanism with links between actuator and tank, whose pins are given by name. */
sealed interface LinkedDrive extends Drive permits BellCrank, FourBar, Knuckle, SlidingPin, SlidingBase {
    /** Those pins that something is known of. */
    List<NamedPin> pins();

    @Override
    default @Nullable PinJoint pinJoint(String name) {
        return NamedPin.find(pins(), name);
    }

    @Override
    default Drive withPin(String name, PinJoint joint) {
        return (Drive) Copy.with((Record) this, "pins", NamedPin.put(pins(), name, joint));
    }
}
