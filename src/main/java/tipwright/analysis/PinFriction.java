// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.Drive;
import tipwright.design.PinJoint;
import tipwright.design.Rod;

/**
 * Friction of the actuator's end pins.
 *
 * @param framePin friction radius mu d/2 of the pin at the frame, m
 * @param tankPin friction radius of the pin at the tank, m
 */
record PinFriction(double framePin, double tankPin) {
    private static final double UNKNOWN_PIN = 0.025;

    static PinFriction of(Design design) {
        Drive drive = design.drive();
        double mu = design.friction().pins();
        double unknown = UNKNOWN_PIN;
        Rod rod = drive.actuators().get(0).actuator().rod();
        if (rod != null) {
            unknown = rod.diameter();
        }
        return new PinFriction(
                mu * diameter(drive.framePinJoint(), unknown) / 2, mu * diameter(drive.tankPinJoint(), unknown) / 2);
    }

    private static double diameter(@Nullable PinJoint joint, double unknown) {
        return joint == null ? unknown : joint.diameter();
    }
}
