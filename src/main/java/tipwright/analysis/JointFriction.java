// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.Rod;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Guide;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Support;
import tipwright.linkage.Reactor;

/**
 * Friction of every joint, in proportion to what it bears. Pins: mu R d/2; slides: mu times the sum of the contact forces.
 * Source: Coulomb friction in a journal and in a guide, any text on statics (from memory). Owned by one balancer.
 */
final class JointFriction {
    private static final double UNKNOWN_PIN = 0.025;

    /** Friction radius of the actuator's pin at its fixed end, m. */
    private final double framePin;
    /** Friction radius of the actuator's pin at its moving end, m. */
    private final double rodPin;

    private final int pivot;
    private final double[] pinRadius;
    private final @Nullable Guide[] guides;
    private final double[] bearingRadius;

    JointFriction(Design design, Mechanism mechanism) {
        Drive drive = design.drive();
        double mu = design.friction().pins();
        Rod rod = drive.actuators().get(0).actuator().rod();
        double unknown = rod == null ? UNKNOWN_PIN : rod.diameter();
        framePin = mu * diameter(drive.framePinJoint(), unknown) / 2;
        rodPin = mu * diameter(drive.tankPinJoint(), unknown) / 2;
        pivot = mechanism.pivot();
        pinRadius = new double[mechanism.joints().size()];
        guides = new @Nullable Guide[pinRadius.length];
        for (int i = 0; i < pinRadius.length; i++) {
            String name = mechanism.joints().get(i).name();
            pinRadius[i] = mu * diameter(drive.pinJoint(name), unknown) / 2;
            guides[i] = drive.guide(name);
        }
        List<Support> bearings = design.pivot().bearings();
        bearingRadius = new double[bearings.size()];
        for (int i = 0; i < bearingRadius.length; i++) {
            bearingRadius[i] = frictionRadius(design, bearings.get(i));
        }
    }

    private static double diameter(@Nullable PinJoint joint, double unknown) {
        return joint == null ? unknown : joint.diameter();
    }

    private static double frictionRadius(Design design, Support s) {
        Double given = design.friction().pivot();
        double mu = given == null ? s.bearing().usualFriction() : given;
        return mu * s.bearing().bore() / 2;
    }

    /**
     * Writes the friction of each joint under the forces found last, and in the actuator's two pins.
     *
     * @param bearings radial load of each bearing, N [bearing]
     * @param out N m at pins, N at slides, with the sign of sense [joint, then the fixed and the moving end]
     */
    void fill(Reactor solved, double[] bearings, int sense, double[] out) {
        for (int i = 0; i < guides.length; i++) {
            Guide guide = guides[i];
            if (i == pivot) {
                double moment = 0;
                for (int k = 0; k < bearingRadius.length; k++) {
                    moment += bearingRadius[k] * bearings[k];
                }
                out[i] = sense * moment;
            } else {
                double x = solved.jointX(i);
                double y = solved.jointY(i);
                double load = Math.sqrt(x * x + y * y);
                double rub =
                        guide == null ? pinRadius[i] * load : guide.friction() * guide.contact(load, solved.couple(i));
                out[i] = sense * rub;
            }
        }
        double push = sense * Math.abs(solved.force());
        out[guides.length] = push * framePin;
        out[guides.length + 1] = push * rodPin;
    }
}
