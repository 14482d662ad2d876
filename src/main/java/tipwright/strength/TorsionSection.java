// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A section that is twisted. Only Saint-Venant's torsion: that the ends of an open section may be held from warping, which makes it
 * stiffer and adds stress along it, is left out.
 *
 * @param constant torsion constant J, m4
 * @param modulus torque over greatest shear stress, m3
 */
public record TorsionSection(double constant, double modulus) {
    /** @throws IllegalArgumentException if one is not above 0 */
    public TorsionSection {
        Precondition.positive("constant", constant);
        Precondition.positive("modulus", modulus);
    }

    /**
     * A closed thin section of even wall: J = 4 A^2 t / s, modulus 2 A t. Source: R. Bredt (from memory).
     *
     * @param enclosed area within the middle of the wall, m2
     * @param around length of the wall's middle, m
     * @param wall m
     */
    public static TorsionSection closed(double enclosed, double around, double wall) {
        Precondition.positive("enclosed", enclosed);
        Precondition.positive("around", around);
        Precondition.positive("wall", wall);
        return new TorsionSection(4 * enclosed * enclosed * wall / around, 2 * enclosed * wall);
    }

    /** A rectangular tube with square corners, outside sizes and wall in m. Source: as {@link #closed}. */
    public static TorsionSection tube(double height, double width, double wall) {
        double h = height - wall;
        double b = width - wall;
        return closed(h * b, 2 * (h + b), wall);
    }

    /** A round bar or tube, diameters in m, exact; a bar has no inside. Source: elementary theory of torsion. */
    public static TorsionSection round(double outside, double inside) {
        Precondition.notNegative("inside", inside);
        double j = Math.PI / 32 * (Math.pow(outside, 4) - Math.pow(inside, 4));
        return new TorsionSection(j, j / (outside / 2));
    }

    /**
     * A solid rectangle, m. Source: Saint-Venant's series (S. Timoshenko and J. Goodier, Theory of Elasticity, from memory).
     */
    public static TorsionSection rectangle(double one, double other) {
        double a = Math.max(one, other);
        double b = Math.min(one, other);
        Precondition.positive("side", b);
        double sum = 0;
        double edge = 0;
        for (int n = 1; n < 60; n += 2) {
            double x = n * Math.PI * a / (2 * b);
            sum += Math.tanh(x) / Math.pow(n, 5);
            edge += 1 / (n * n * Math.cosh(x));
        }
        double j = a * b * b * b / 3 * (1 - 192 / Math.pow(Math.PI, 5) * b / a * sum);
        // Shear at the middle of the long side: G theta b (1 - 8 / pi^2 sum).
        return new TorsionSection(j, j / (b * (1 - 8 / (Math.PI * Math.PI) * edge)));
    }

    /**
     * An open section of thin strips (angle, channel, I): J = sum of b t^3 / 3, modulus J over the thickest strip. Source: elementary
     * theory of torsion; without fillets.
     *
     * @param widths of the strips, m [strip]
     * @param walls of the strips, m [strip]
     */
    public static TorsionSection open(double[] widths, double[] walls) {
        double j = 0;
        double thickest = 0;
        for (int i = 0; i < widths.length; i++) {
            j += widths[i] * Math.pow(walls[i], 3) / 3;
            thickest = Math.max(thickest, walls[i]);
        }
        Precondition.positive("walls", thickest);
        return new TorsionSection(j, j / thickest);
    }

    /** Greatest shear stress of a torque in N m, Pa. */
    public double stress(double torque) {
        return torque / modulus;
    }

    /**
     * How far a torque twists a length of it, rad.
     *
     * @param torque N m
     * @param length m
     * @param shearModulus Pa, steel about 79 GPa
     */
    public double twist(double torque, double length, double shearModulus) {
        return torque * length / (shearModulus * constant);
    }
}
