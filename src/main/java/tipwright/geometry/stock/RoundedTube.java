// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import java.util.List;

/**
 * A rectangular tube as it is stocked, with round corners.
 *
 * <p>Source: EN 10219-2 for the radii, outside twice the wall and inside the wall up to 6 mm (from memory); geometry otherwise.
 *
 * @param height outside, m
 * @param width outside, m
 * @param wall m
 */
public record RoundedTube(double height, double width, double wall) {
    /** What US tube of A500 counts with of its nominal wall. Source: design examples of the tube makers (read). */
    public static final double US_DESIGN_WALL = 0.93;

    /** @throws IllegalArgumentException if the corners would not fit */
    public RoundedTube {
        if (!(wall > 0 && height >= 4 * wall && width >= 4 * wall)) {
            throw new IllegalArgumentException("the sides must be at least four walls");
        }
    }

    /** Area of the steel, m2: 2 t (B + H - 2 t) - 3 (4 - pi) t^2. */
    public double area() {
        return 2 * wall * (width + height - 2 * wall) - 3 * (4 - Math.PI) * wall * wall;
    }

    /** Mass of a metre, kg, at a density in kg/m3. */
    public double mass(double density) {
        return area() * density;
    }

    /** Sides of the sizes that US yards usually stock, m: {height, width}. Source: from memory. */
    public static List<double[]> usualSides() {
        return StockTable.lines("tube-sizes.csv").stream()
                .map(line -> new double[] {
                    Double.parseDouble(line[0]) * StockTable.INCH, Double.parseDouble(line[1]) * StockTable.INCH
                })
                .toList();
    }
}
