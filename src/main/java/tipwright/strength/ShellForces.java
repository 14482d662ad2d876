// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * What goes through the wall of a shell at one place.
 *
 * @param nx force along the axis, N/m, tension positive
 * @param nphi force around, N/m
 * @param nxphi shear in the wall, N/m
 * @param mx moment that bends the wall along the axis, N m/m, positive where it stretches the outer face
 * @param mphi moment that bends it around
 * @param mxphi twisting moment
 * @param moved how far the wall moves outwards, m
 */
public record ShellForces(double nx, double nphi, double nxphi, double mx, double mphi, double mxphi, double moved) {

    /** Stress around the shell on its outer face (face 1) or its inner one (face -1), Pa. */
    public double around(double wall, int face) {
        return nphi / wall + face * 6 * mphi / (wall * wall);
    }

    /** Stress along the shell on its outer face (face 1) or its inner one (face -1), Pa. */
    public double along(double wall, int face) {
        return nx / wall + face * 6 * mx / (wall * wall);
    }

    /** Shear on one face, as {@link #along}, Pa. */
    double shear(double wall, int face) {
        return nxphi / wall + face * 6 * mxphi / (wall * wall);
    }

    /** Equivalent stress, Pa, the greater of both faces. Source: von Mises, plane stress. */
    public double equivalent(double wall) {
        return Math.max(equivalent(wall, 1), equivalent(wall, -1));
    }

    private double equivalent(double wall, int face) {
        double a = along(wall, face);
        double b = around(wall, face);
        double shear = shear(wall, face);
        return Math.sqrt(a * a - a * b + b * b + 3 * shear * shear);
    }
}
