// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Rod;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Guide;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Support;
import tipwright.linkage.Reactor;

/**
 * Friction of every joint, in proportion to what it bears: the one place that tells how much a joint rubs and which way. Pins: mu R d/2; slides: mu times the sum of the contact forces.
 * Source: Coulomb friction in a journal and in a guide, any text on statics (from memory). Owned by one balancer.
 */
public final class JointFriction {
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
        Actuator actuator = drive.actuators().get(0).actuator();
        framePin = pinRadius(design, drive.framePinJoint(), actuator);
        rodPin = pinRadius(design, drive.tankPinJoint(), actuator);
        pivot = mechanism.pivot();
        pinRadius = new double[mechanism.joints().size()];
        guides = new @Nullable Guide[pinRadius.length];
        for (int i = 0; i < pinRadius.length; i++) {
            String name = mechanism.joints().get(i).name();
            pinRadius[i] = pinRadius(design, drive.pinJoint(name), actuator);
            guides[i] = drive.guide(name);
        }
        List<Support> bearings = design.pivot().bearings();
        bearingRadius = new double[bearings.size()];
        for (int i = 0; i < bearingRadius.length; i++) {
            bearingRadius[i] = bearingRadius(design, bearings.get(i));
        }
    }

    /** Friction radius of a pin, m; one whose size is not known is taken as thick as the actuator's rod. */
    public static double pinRadius(Design design, @Nullable PinJoint joint, Actuator actuator) {
        Rod rod = actuator.rod();
        double unknown = rod == null ? UNKNOWN_PIN : rod.diameter();
        return design.friction().pins() * (joint == null ? unknown : joint.diameter()) / 2;
    }

    /** Friction radius of a bearing of the pivot, m. */
    public static double bearingRadius(Design design, Support support) {
        Double given = design.friction().pivot();
        double mu = given == null ? support.bearing().usualFriction() : given;
        return mu * support.bearing().bore() / 2;
    }

    /**
     * What rubs, with its sign: positive brakes the tipping, negative brakes the way back.
     *
     * @param rub N or N m, not negative
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     */
    static double braking(double rub, int sense) {
        return sense * rub;
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
                out[i] = braking(moment, sense);
            } else {
                double x = solved.jointX(i);
                double y = solved.jointY(i);
                double load = Math.sqrt(x * x + y * y);
                double rub =
                        guide == null ? pinRadius[i] * load : guide.friction() * guide.contact(load, solved.couple(i));
                out[i] = braking(rub, sense);
            }
        }
        double push = Math.abs(solved.force());
        out[guides.length] = braking(push * framePin, sense);
        out[guides.length + 1] = braking(push * rodPin, sense);
    }
}
