// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Text;

/**
 * A flat rectangular wall, held along its edges, under a pressure that changes evenly from bottom to top.
 *
 * <p>Source: linear theory of thin plates, solved by Ritz's method ({@link PlateSolver}). It holds while the wall gives way by no more
 * than about half its thickness; beyond that the wall starts to hang like a skin, is less stressed than told, and pulls at its edges.
 *
 * @param width m
 * @param height m
 * @param thickness m
 * @param modulus of elasticity, Pa
 * @param poisson Poisson's ratio
 * @param sides how both upright edges are held
 * @param bottom how the lower edge is held
 * @param top how the upper edge is held
 * @param rim stiffness E I of a bar along a free upper edge, N m2; 0 without one
 */
public record PlateUnderPressure(
        double width,
        double height,
        double thickness,
        double modulus,
        double poisson,
        Edge sides,
        Edge bottom,
        Edge top,
        double rim) {
    /** How an edge is held. */
    public enum Edge {
        /** Not at all. */
        FREE(0),
        /** Cannot move, can turn. */
        SUPPORTED(1),
        /** Can neither move nor turn. */
        CLAMPED(2);

        /** Order of the zero that the wall's shape has at this edge. */
        final int order;

        Edge(int order) {
            this.order = order;
        }
    }

    /** @throws IllegalArgumentException if a dimension is not above 0, the shape is over 8 to 1, or the wall would fall down */
    public PlateUnderPressure {
        Precondition.positive("width", width);
        Precondition.positive("height", height);
        Precondition.positive("thickness", thickness);
        Precondition.positive("modulus", modulus);
        Precondition.notNegative("rim", rim);
        Precondition.times("Poisson's ratio", poisson, 0, 0.499);
        Precondition.times("height over width of the wall", height / width, 0.125, 8);
        boolean twoEdges = bottom != Edge.FREE && top != Edge.FREE;
        if (sides == Edge.FREE && !twoEdges && bottom != Edge.CLAMPED && top != Edge.CLAMPED) {
            throw new OutOfRangeException(Text.words("the wall is not held"));
        }
    }

    /** Of steel, 200 GPa and 0.3 (common practice, no source), without a rim. */
    public static PlateUnderPressure steel(
            double width, double height, double thickness, Edge sides, Edge bottom, Edge top) {
        return new PlateUnderPressure(width, height, thickness, 200e9, 0.3, sides, bottom, top, 0);
    }

    /** The same with another rim, E I in N m2. */
    public PlateUnderPressure withRim(double stiffness) {
        return new PlateUnderPressure(width, height, thickness, modulus, poisson, sides, bottom, top, stiffness);
    }

    /**
     * What a pressure does to the wall.
     *
     * @param low pressure at the bottom, Pa
     * @param high pressure at the top, Pa
     */
    public PlateBending under(double low, double high) {
        return new PlateSolver(this).solve(low, high);
    }

    /** Bending stiffness, N m. */
    double bendingStiffness() {
        return modulus * thickness * thickness * thickness / (12 * (1 - poisson * poisson));
    }
}
