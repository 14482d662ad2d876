// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Kind;

/**
 * At what pressure from outside (or vacuum inside) a round shell caves in.
 *
 * <p>The wall must be thin (at most a twentieth of the diameter) and round within what the trade's codes allow (about 1 % of the
 * diameter); a dent or a flat spot is not in the rule.
 *
 * @param diameter outside, m
 * @param wall m
 * @param length between what keeps the shell round: ends or stiff rings, m
 * @param modulus of elasticity, Pa
 * @param poisson Poisson's ratio
 */
public record OutsidePressure(double diameter, double wall, double length, double modulus, double poisson) {
    /** What ASME VIII-1 leaves of the elastic pressure: a third (from memory). */
    public static final double SHARE = 1.0 / 3;

    /** @throws IllegalArgumentException outside the range of the rule */
    public OutsidePressure {
        Precondition.positive("diameter", diameter);
        Precondition.positive("length", length);
        Precondition.positive("modulus", modulus);
        Precondition.times("Poisson's ratio", poisson, 0, 0.499);
        Precondition.positive("wall", wall);
        Precondition.within("wall over diameter", Kind.RATIO, wall / diameter, 0, 0.05);
        Precondition.positive(
                "length over diameter less 0.45 sqrt(wall over diameter)",
                length / diameter - 0.45 * Math.sqrt(wall / diameter));
    }

    /** Of steel: modulus 200 GPa, Poisson's ratio 0.3 (common practice, no source). */
    public static OutsidePressure steel(double diameter, double wall, double length) {
        return new OutsidePressure(diameter, wall, length, 200e9, 0.3);
    }

    /**
     * Critical pressure of a short or medium shell, Pa: 2.42 E (t/D)^2.5 / ((1 - nu^2)^0.75 (L/D - 0.45 (t/D)^0.5)).
     *
     * <p>Source: Windenburg and Trilling, 1934 (public design note, read).
     */
    public double shortForm() {
        double slender = wall / diameter;
        double free = length / diameter - 0.45 * Math.sqrt(slender);
        return 2.42 * modulus * Math.pow(slender, 2.5) / (Math.pow(1 - poisson * poisson, 0.75) * free);
    }

    /**
     * Critical pressure of a very long shell, Pa: 2 E / (1 - nu^2) (t/D)^3.
     *
     * <p>Source: Roark, table 35 case 19a, after Saunders and Windenburg 1931 (public page, read), there with the mean radius.
     */
    public double longForm() {
        return 2 * modulus / (1 - poisson * poisson) * Math.pow(wall / diameter, 3);
    }

    /** Critical pressure, Pa: the larger of both forms. */
    public double critical() {
        return Math.max(shortForm(), longForm());
    }

    /** Pressure that may act, Pa: {@link #SHARE} of the critical one. */
    public double allowed() {
        return SHARE * critical();
    }
}
