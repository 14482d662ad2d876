// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * Cross-section of a rectangular tube with square corners.
 *
 * @param height outside, m
 * @param width outside, m
 * @param wall m
 */
public record RectangularTube(double height, double width, double wall) {
    /** Second moment against bending in the direction of the height, m4. Source: elementary beam theory. */
    public double inertia() {
        return second(width, height);
    }

    /** Second moment against bending in the direction of the width, m4. */
    public double inertiaAcross() {
        return second(height, width);
    }

    /** Section modulus against bending in the direction of the height, m3. */
    public double modulus() {
        return inertia() / (height / 2);
    }

    /** Section modulus against bending in the direction of the width, m3. */
    public double modulusAcross() {
        return inertiaAcross() / (width / 2);
    }

    /** Shear stress of a torque in N m, Pa. Source: as {@link TorsionSection#closed}. */
    public double torsion(double torque) {
        return TorsionSection.tube(height, width, wall).stress(torque);
    }

    /** Mean shear stress in the two walls that a force in the direction of the height is carried by, Pa. */
    public double shear(double force) {
        return force / (2 * height * wall);
    }

    /** Mean shear stress in the two walls that a force in the direction of the width is carried by, Pa. */
    public double shearAcross(double force) {
        return force / (2 * width * wall);
    }

    private double second(double b, double h) {
        double inner = Math.max(0, b - 2 * wall);
        double hollow = Math.max(0, h - 2 * wall);
        return (b * h * h * h - inner * hollow * hollow * hollow) / 12;
    }
}
