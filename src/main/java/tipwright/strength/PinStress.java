// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.design.joint.PinJoint;

/**
 * Stress in a round pin.
 *
 * <p>Bending sigma = 32 M / (pi d^3), shear tau = 4 V / (3 A), combined sqrt(sigma^2 + 3 tau^2), taken as if both were largest in
 * one place. Double shear between two cheeks a apart from a lug b by a gap g, evenly spread loads: M = F (a/4 + g/2 + b/8), V =
 * F/2. Single shear: the offset (a + b)/2 + g shared by both plates, M = F ((a + b)/2 + g) / 2, V = F. A ball joint in the lug bears
 * no moment, so the cheek bears all of it, by a pressure in a straight line: with h = b/2 + g and k = a + 2 h largest
 * M = F (h + a^2/(6 k) - a^3/(54 k^2)). Source: J. E. Shigley,
 * Mechanical Engineering Design, problem 3-40 (double shear); von Mises; single shear from memory, with a ball joint statics.
 */
public final class PinStress {
    private PinStress() {}

    /** Combined stress in a joint's pin under a force in N, Pa. */
    public static double combined(PinJoint joint, double force) {
        return combined(joint.diameter(), moment(joint, force), shearForce(joint, force));
    }

    /** Bending moment in a joint's pin under a force in N, N m. */
    public static double moment(PinJoint joint, double force) {
        if (joint.shear() == PinJoint.Shear.DOUBLE) {
            return force * (joint.cheek() / 4 + joint.gap() / 2 + joint.lug() / 8);
        }
        double cheek = joint.cheek();
        double out = joint.lug() / 2 + joint.gap();
        if (joint.leans() == null) {
            return force * (cheek / 2 + out) / 2;
        }
        double length = cheek + 2 * out;
        return force * (out + cheek * cheek / (6 * length) - cheek * cheek * cheek / (54 * length * length));
    }

    /** Shear force in each loaded section of a joint's pin under a force in N, N. */
    public static double shearForce(PinJoint joint, double force) {
        return joint.shear() == PinJoint.Shear.DOUBLE ? force / 2 : force;
    }

    /**
     * Combined stress of a round bar, Pa.
     *
     * @param diameter m
     * @param moment N m
     * @param shear N
     */
    public static double combined(double diameter, double moment, double shear) {
        double sigma = bending(diameter, moment);
        double tau = shear(diameter, shear);
        return Math.sqrt(sigma * sigma + 3 * tau * tau);
    }

    /** Bending stress of a round bar, Pa; moment in N m. */
    public static double bending(double diameter, double moment) {
        return 32 * moment / (Math.PI * Math.pow(diameter, 3));
    }

    /** Largest shear stress of a round bar, Pa; shear force in N. */
    public static double shear(double diameter, double shear) {
        return 4 * shear / (3 * Math.PI * diameter * diameter / 4);
    }
}
