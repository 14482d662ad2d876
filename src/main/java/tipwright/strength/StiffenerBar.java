// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A bar welded to a wall to stiffen it; square to the wall.
 *
 * @param area m2
 * @param inertia second moment about its own middle, m4
 * @param middle distance of its centroid from the wall's face, m
 * @param height distance of its far edge from the wall's face, m
 */
public record StiffenerBar(double area, double inertia, double middle, double height) {
    /** @throws IllegalArgumentException if a dimension is not above 0 */
    public StiffenerBar {
        Precondition.positive("area", area);
        Precondition.positive("inertia", inertia);
        Precondition.positive("middle", middle);
        Precondition.positive("height", height);
    }

    /** A flat bar on its edge: thickness and height, m. */
    public static StiffenerBar flat(double thickness, double height) {
        return new StiffenerBar(thickness * height, thickness * height * height * height / 12, height / 2, height);
    }

    /** A rectangular tube with square corners, m. */
    public static StiffenerBar tube(double height, double width, double wall) {
        double area = height * width - (height - 2 * wall) * (width - 2 * wall);
        double inertia = new RectangularTube(height, width, wall).inertia();
        return new StiffenerBar(area, inertia, height / 2, height);
    }

    /** An angle with one leg square to the wall and its toe on it, m. */
    public static StiffenerBar angle(double height, double width, double wall) {
        double web = wall * (height - wall);
        double flange = wall * width;
        double middle = (web * (height - wall) / 2 + flange * (height - wall / 2)) / (web + flange);
        double inertia = wall * Math.pow(height - wall, 3) / 12
                + web * Math.pow(middle - (height - wall) / 2, 2)
                + width * Math.pow(wall, 3) / 12
                + flange * Math.pow(height - wall / 2 - middle, 2);
        return new StiffenerBar(web + flange, inertia, middle, height);
    }
}
