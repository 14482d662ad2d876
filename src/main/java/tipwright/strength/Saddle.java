// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Kind;

/**
 * One of two saddles under a lying drum, by Zick's coefficients.
 *
 * <p>Source: L. Zick, Welding Journal 1951, in the form of ASME VIII-2 4.15 (public Python module, read); table of the coefficients in
 * the Pressure Vessel Design Manual, p. 174 (read). Holds for contact angles from 120 to 180 degrees and shells without stiffening
 * rings; a saddle of less than 120 degrees is worse and no part of the table.
 *
 * @param angle of contact, rad
 * @param radius of the middle of the shell's wall, m
 * @param wall m
 * @param width of the saddle along the drum, m
 * @param length of the drum between its ends, m
 * @param overhang from the saddle's middle to the drum's end, m
 */
public record Saddle(double angle, double radius, double wall, double width, double length, double overhang) {
    /** @throws IllegalArgumentException outside the range of the rule */
    public Saddle {
        Precondition.within(
                "the angle that the saddle reaches round the tank", Kind.ANGLE, angle, Math.toRadians(119.99), Math.PI);
        Precondition.positive("radius", radius);
        Precondition.positive("wall", wall);
        Precondition.positive("width", width);
        Precondition.positive("length", length);
        Precondition.within("how far the tank reaches beyond the saddle", Kind.LENGTH, overhang, 0, length / 2);
    }

    private double beta() {
        return Math.PI - angle / 2;
    }

    private double alpha() {
        return 0.95 * beta();
    }

    /** For shear in the shell at the saddle. */
    public double k2() {
        double a = alpha();
        return Math.sin(a) / (Math.PI - a + Math.sin(a) * Math.cos(a));
    }

    /** For shear in a shell that its end keeps round. */
    public double k3() {
        double a = alpha();
        double n = Math.PI - a + Math.sin(a) * Math.cos(a);
        return Math.sin(a) / Math.PI * (a - Math.sin(a) * Math.cos(a)) / n;
    }

    /** For the pull in the end plate. */
    public double k4() {
        double a = alpha();
        return 0.375 * Math.sin(a) * Math.sin(a) / (Math.PI - a + Math.sin(a) * Math.cos(a));
    }

    /** For the push around at the bottom of the shell. */
    public double k5() {
        double a = alpha();
        return (1 + Math.cos(a)) / (Math.PI - a + Math.sin(a) * Math.cos(a));
    }

    /** For the bending around at the saddle's horn, without help of the end. */
    public double k6() {
        double b = beta();
        double s = Math.sin(b);
        double c = Math.cos(b);
        double ratio = s / b;
        double bracket = ratio * ratio - 0.5 - Math.sin(2 * b) / (4 * b);
        double top = 0.75 * c * ratio * ratio
                - 1.25 * s * c * c / b
                + 0.5 * c * c * c
                - 0.25 * ratio
                + 0.25 * c
                - b * s * bracket;
        return top / (2 * Math.PI * bracket);
    }

    /** The same with what help the end gives: a quarter up to half a radius from the end, nothing from a radius on. */
    public double k7() {
        double share = Math.min(1, Math.max(0.5, overhang / radius));
        return k6() * (1.5 * share - 0.5);
    }

    /**
     * Stress around the shell at the saddle's horn, Pa, negative for push.
     *
     * @param load on this saddle, N
     * @param rigid whether the saddle does not give with the shell: the bending counts double (PD 5500 commentary on a public page,
     *     read)
     */
    public double horn(double load, boolean rigid) {
        double direct = load / (4 * wall * helped());
        double bending = k7() * load / (wall * wall) * (length >= 8 * radius ? 1.5 : 12 * radius / length);
        return -direct - (rigid ? 2 : 1) * bending;
    }

    /**
     * Push around at the lowest point of the shell, Pa.
     *
     * @param welded whether the saddle is welded to the shell, which leaves a tenth
     */
    public double bottom(double load, boolean welded) {
        return k5() * load * (welded ? 0.1 : 1) / (wall * helped());
    }

    /** Shear in the shell at the saddle, Pa, for a drum with flat ends and the saddle more than half a radius from the end. */
    public double shear(double load) {
        return k2() * load / (radius * wall) * (length - 2 * overhang) / length;
    }

    /** Stress along the drum, Pa, half way between the saddles, from its bending as a beam of even weight with flat ends. */
    public double middle(double load) {
        double moment = load * length / 4 * (1 + 2 * radius * radius / (length * length) - 4 * overhang / length);
        return moment / (Math.PI * radius * radius * wall);
    }

    /** Saddle's width with the shell that helps it on both sides, m. */
    private double helped() {
        return width + 1.56 * Math.sqrt(radius * wall);
    }
}
