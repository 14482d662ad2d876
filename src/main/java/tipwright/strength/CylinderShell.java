// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Text;

/**
 * A thin round shell between two ends that keep it round and let it stretch (rigid diaphragms).
 *
 * @param radius of the middle of the wall, m
 * @param wall m
 * @param length between the ends, m
 * @param modulus of elasticity, Pa
 * @param poisson Poisson's ratio
 */
public record CylinderShell(double radius, double wall, double length, double modulus, double poisson) {
    /** @throws IllegalArgumentException if a dimension is not above 0 or the wall is thicker than a fifth of the radius */
    public CylinderShell {
        Precondition.positive("radius", radius);
        Precondition.positive("wall", wall);
        Precondition.positive("length", length);
        Precondition.positive("modulus", modulus);
        if (wall > radius / 5) {
            throw new OutOfRangeException(Text.words("the wall is thicker than a fifth of the radius"));
        }
        Precondition.times("Poisson's ratio", poisson, 0, 0.499);
    }

    /** Of steel: modulus 200 GPa, Poisson's ratio 0.3 (common practice, no source). */
    public static CylinderShell steel(double radius, double wall, double length) {
        return new CylinderShell(radius, wall, length, 200e9, 0.3);
    }

    /** The same with another wall, m. */
    public CylinderShell withWall(double other) {
        return new CylinderShell(radius, other, length, modulus, poisson);
    }

    /** Bending stiffness of the wall, N m: E t^3 / (12 (1 - nu^2)). Source: plate theory. */
    double bendingStiffness() {
        return modulus * wall * wall * wall / (12 * (1 - poisson * poisson));
    }
}
