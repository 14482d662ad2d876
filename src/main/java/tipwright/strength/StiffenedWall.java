// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A strip of a flat wall with its stiffener, as a beam between two rests that it can turn on.
 *
 * <p>The panel between stiffeners is a {@link PlateUnderPressure} of its own. Source: elementary beam theory; the wall helps with 15 times its
 * thickness times sqrt(235 MPa / yield) on each side of the bar, at most to half way to the next (EN 1993-1-5 9.1, from memory).
 *
 * @param bar the stiffener
 * @param wall thickness of the wall, m
 * @param spacing from stiffener to stiffener, m
 * @param span between the rests, m
 * @param modulus of elasticity, Pa
 * @param yield of the wall, Pa
 */
public record StiffenedWall(StiffenerBar bar, double wall, double spacing, double span, double modulus, double yield) {
    /** @throws IllegalArgumentException if a dimension is not above 0 */
    public StiffenedWall {
        Precondition.positive("wall", wall);
        Precondition.positive("spacing", spacing);
        Precondition.positive("span", span);
        Precondition.positive("modulus", modulus);
        Precondition.positive("yield", yield);
    }

    /** Width of the wall that bends along with the bar, m. */
    public double helpingWidth() {
        return Math.min(spacing, 30 * wall * Math.sqrt(235e6 / yield));
    }

    /** Distance of the neutral line from the wall's face on the bar's side, towards the bar, m. */
    public double neutral() {
        double strip = helpingWidth() * wall;
        return (bar.area() * bar.middle() - strip * wall / 2) / (bar.area() + strip);
    }

    /** Second moment of bar and wall together, m4. */
    public double inertia() {
        double strip = helpingWidth() * wall;
        double y = neutral();
        return bar.inertia()
                + bar.area() * Math.pow(bar.middle() - y, 2)
                + strip * wall * wall / 12
                + strip * Math.pow(y + wall / 2, 2);
    }

    /** Least section modulus, m3: that of the bar's edge or of the wall's far face. */
    public double modulusOfSection() {
        double y = neutral();
        return inertia() / Math.max(bar.height() - y, y + wall);
    }

    /**
     * Greatest bending moment, N m, under a pressure that changes evenly along the bar.
     *
     * @param one pressure at one rest, Pa, 0 or more
     * @param other pressure at the other, Pa, 0 or more
     */
    public double moment(double one, double other) {
        Precondition.notNegative("pressure", one);
        Precondition.notNegative("pressure", other);
        double low = Math.min(one, other) * spacing;
        double rise = Math.max(one, other) * spacing - low;
        double push = span * (3 * low + rise) / 6;
        // Where the shear is nothing: push - low x - rise x^2 / (2 span) = 0, in the form that holds for rise = 0 too.
        double root = Math.sqrt(low * low + 2 * rise * push / span);
        double x = root + low == 0 ? 0 : 2 * push / (low + root);
        return push * x - low * x * x / 2 - rise * x * x * x / (6 * span);
    }

    /** Greatest bending stress, Pa; pressures as in {@link #moment}. */
    public double stress(double one, double other) {
        return moment(one, other) / modulusOfSection();
    }

    /** Most that it gives way, m: the sum of the greatest under the even and the rising part, at most 0.1 % too much. */
    public double moved(double one, double other) {
        double low = Math.min(one, other) * spacing;
        double rise = Math.max(one, other) * spacing - low;
        return (5.0 / 384 * low + 0.006522 * rise) * Math.pow(span, 4) / (modulus * inertia());
    }
}
