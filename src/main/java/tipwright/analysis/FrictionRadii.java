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

/**
 * The law of friction and what it needs of a design: every solver asks here. A journal takes mu R d/2, a guide mu times the sum of
 * its contact forces. Source: Coulomb friction in a journal and in a guide, any text on statics (from memory). Immutable.
 */
public final class FrictionRadii {
    private static final double UNKNOWN_PIN = 0.025;

    private final Drive drive;
    private final double mu;
    private final double unknown;
    private final double[] bearings;

    private FrictionRadii(Design design, Actuator actuator) {
        drive = design.drive();
        mu = design.friction().pins();
        Rod rod = actuator.rod();
        unknown = rod == null ? UNKNOWN_PIN : rod.diameter();
        List<Support> supports = design.pivot().bearings();
        bearings = new double[supports.size()];
        for (int i = 0; i < bearings.length; i++) {
            Support s = supports.get(i);
            Double given = design.friction().pivot();
            double own = given == null ? s.bearing().usualFriction() : given;
            bearings[i] = own * s.bearing().bore() / 2;
        }
    }

    /** Those of a design as drawn. */
    public static FrictionRadii of(Design design) {
        return of(design, design.drive().actuators().get(0).actuator());
    }

    /** Those of a design with another actuator: a pin of which nothing is known is taken as thick as its rod. */
    public static FrictionRadii of(Design design, Actuator actuator) {
        return new FrictionRadii(design, actuator);
    }

    /** Friction radius of the actuator's pin at its fixed end, m. */
    public double framePin() {
        return pin(drive.framePinJoint());
    }

    /** Friction radius of the actuator's pin at its moving end, m. */
    public double rodPin() {
        return pin(drive.tankPinJoint());
    }

    /** Friction radius of a pin by its name, m. */
    double pin(String name) {
        return pin(drive.pinJoint(name));
    }

    private double pin(@Nullable PinJoint joint) {
        return mu * (joint == null ? unknown : joint.diameter()) / 2;
    }

    /** Friction radius of one of the two bearings, m. */
    public double bearing(int number) {
        return bearings[number];
    }

    /**
     * What rubs, with its sign: positive brakes the tipping, negative brakes the way back.
     *
     * @param rub N or N m, not negative
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     */
    public static double braking(double rub, int sense) {
        return sense * rub;
    }

    /**
     * Friction of a pin or a bearing.
     *
     * @param sense +1 while tipping, -1 on the way back, 0 at rest
     * @param radius of friction, m
     * @param load radial, N
     * @return N m, positive: it brakes the tipping
     */
    static double pin(int sense, double radius, double load) {
        return braking(radius * load, sense);
    }

    /** Friction of a guide in N, positive: it brakes the tipping; load across it in N, couple on it in N m. */
    static double slide(int sense, Guide guide, double load, double couple) {
        return braking(guide.friction() * guide.contact(load, couple), sense);
    }
}
