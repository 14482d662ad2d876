// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A flat round end under even pressure.
 *
 * <p>Source: linear theory of thin plates, S. Timoshenko and S. Woinowsky-Krieger (from memory). Holds while the end gives way by no
 * more than about half its thickness.
 *
 * @param radius to where it is held, m
 * @param thickness m
 * @param modulus of elasticity, Pa
 * @param poisson Poisson's ratio
 * @param clamped whether the edge cannot turn; a flat end on a thin shell lies between the two
 */
public record CircularPlate(double radius, double thickness, double modulus, double poisson, boolean clamped) {
    /** @throws IllegalArgumentException if a dimension is not above 0 */
    public CircularPlate {
        Precondition.positive("radius", radius);
        Precondition.positive("thickness", thickness);
        Precondition.positive("modulus", modulus);
        Precondition.times("Poisson's ratio", poisson, 0, 0.499);
    }

    /** Of steel: modulus 200 GPa, Poisson's ratio 0.3 (common practice, no source). */
    public static CircularPlate steel(double radius, double thickness, boolean clamped) {
        return new CircularPlate(radius, thickness, 200e9, 0.3, clamped);
    }

    /**
     * What a pressure does to it.
     *
     * @param pressure Pa
     */
    public PlateBending under(double pressure) {
        double slender = radius / thickness;
        double q = Math.abs(pressure);
        double stiffness = modulus * Math.pow(thickness, 3) / (12 * (1 - poisson * poisson));
        double rigid = q * Math.pow(radius, 4) / (64 * stiffness);
        double moved = clamped ? rigid : rigid * (5 + poisson) / (1 + poisson);
        double direct = q * slender * slender * (clamped ? 0.75 : 3 * (3 + poisson) / 8);
        // In the middle both directions are alike; at a clamped edge the stress around is poisson times the one across.
        double equivalent = clamped ? direct * Math.sqrt(1 - poisson + poisson * poisson) : direct;
        return new PlateBending(direct, equivalent, moved, 0, moved <= thickness / 2);
    }
}
