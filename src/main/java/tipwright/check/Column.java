// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import org.jspecify.annotations.Nullable;
import tipwright.design.Rod;
import tipwright.design.Tube;

/**
 * Buckling load of an actuator as a column pinned at both ends.
 *
 * <p>One section: Euler P = pi^2 E I / L^2, or Johnson P = A Sy (1 - Sy (L/k)^2 / (4 pi^2 E)) where L/k is under sqrt(2 pi^2 E /
 * Sy). Rod and tube: lowest root of sin(k1 L1) cos(k2 L2) / k1 + cos(k1 L1) sin(k2 L2) / k2 = 0, k = sqrt(P / E I). Source:
 * elastic column theory, as in R. C. Hibbeler, Mechanics of Materials, chapter 13; J. B. Johnson's parabola as in V. M. Faires,
 * Design of Machine Elements; the stepped form from beam theory (from memory).
 */
public final class Column {
    private Column() {}

    /**
     * Buckling load of one section, N.
     *
     * @param length pin to pin, m
     * @param area m2
     * @param inertia m4
     * @param modulus Pa
     * @param yield Pa
     */
    public static double uniform(double length, double area, double inertia, double modulus, double yield) {
        double slenderness = length / Math.sqrt(inertia / area);
        double change = Math.sqrt(2 * Math.PI * Math.PI * modulus / yield);
        if (slenderness < change) {
            return area * yield * (1 - yield * slenderness * slenderness / (4 * Math.PI * Math.PI * modulus));
        }
        return Math.PI * Math.PI * modulus * inertia / (length * length);
    }

    /**
     * Elastic buckling load of two sections in line, pinned at the far ends, N.
     *
     * @param stiffness1 E I of the first, N m2
     * @param length1 m
     * @param stiffness2 E I of the second, N m2
     * @param length2 m
     */
    public static double stepped(double stiffness1, double length1, double stiffness2, double length2) {
        // Before either section holds half a wave there is exactly one root: none while both hold less than a quarter
        // wave.
        double high = Math.PI * Math.PI * Math.min(stiffness1 / (length1 * length1), stiffness2 / (length2 * length2));
        double low = high / 4;
        for (int i = 0; i < 200 && high - low > 1e-13 * high; i++) {
            double middle = 0.5 * (low + high);
            if (determinant(middle, stiffness1, length1, stiffness2, length2) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static double determinant(double p, double ei1, double l1, double ei2, double l2) {
        double k1 = Math.sqrt(p / ei1);
        double k2 = Math.sqrt(p / ei2);
        return Math.sin(k1 * l1) * Math.cos(k2 * l2) / k1 + Math.cos(k1 * l1) * Math.sin(k2 * l2) / k2;
    }

    /**
     * Buckling load of a rod at a pin-to-pin length, N: stepped with its tube where that is known, never more than the bare rod's
     * yield; else the rod over the whole length.
     */
    public static double actuator(Rod rod, @Nullable Tube tube, double length) {
        if (tube == null || tube.length() >= length) {
            return uniform(length, rod.area(), rod.inertia(), rod.modulus(), rod.yield());
        }
        double free = length - tube.length();
        double elastic = stepped(rod.modulus() * rod.inertia(), free, rod.modulus() * tube.inertia(), tube.length());
        double equal = Math.PI * Math.sqrt(rod.modulus() * rod.inertia() / elastic);
        return uniform(equal, rod.area(), rod.inertia(), rod.modulus(), rod.yield());
    }
}
