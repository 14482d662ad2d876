// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Kind;

/**
 * The face of a rectangular tube under a bracket, a smaller tube or a plate that is welded to it.
 *
 * <p>The attached width is from a quarter to 0.85 of the face (range of EN 1993-1-8, public page, read), the face at most 35 walls wide.
 *
 * @param face width of the face, m ('b0')
 * @param wall m ('t0')
 * @param yield Pa
 */
public record TubeFace(double face, double wall, double yield) {
    /** Least share of the face that an attached patch may take for the rule to hold. */
    public static final double NARROWEST = 0.25;

    /** Greatest share; beyond it the side walls bear the load, which is another rule. */
    public static final double WIDEST = 0.85;

    /** @throws IllegalArgumentException if a dimension is not above 0, or the face is over 35 walls wide */
    public TubeFace {
        Precondition.positive("face", face);
        Precondition.positive("wall", wall);
        Precondition.positive("yield", yield);
        Precondition.times("face over wall of the tube", face / wall, 2, 35);
    }

    /**
     * Force square to the face at which it yields under a patch, N.
     *
     * <p>Source: EN 1993-1-8 table 7.11 and AISC 360 chapter K (example of a public page, read): f t^2 (2 eta / (1 - beta) + 4 / sqrt(1
     * - beta)) with beta = width / face and eta = length / face.
     *
     * @param width of the patch across the tube, m
     * @param length of the patch along the tube, m
     * @param stressed factor for push along the tube, see {@link #stressed}
     */
    public double yielding(double width, double length, double stressed) {
        double beta = width / face;
        Precondition.within("width of the bracket over the tube's face", Kind.RATIO, beta, NARROWEST, WIDEST);
        Precondition.positive("length", length);
        Precondition.within("the stressed share", Kind.RATIO, stressed, 0, 1);
        return stressed * yield * wall * wall * (2 * length / face / (1 - beta) + 4 / Math.sqrt(1 - beta));
    }

    /**
     * Force at which a patch punches through the face, N, along a line around it of which the ends count in part.
     *
     * <p>Source: EN 1993-1-8 table 7.11 (from memory): f / sqrt 3 times t times (2 length + 2 bep), bep = 10 width wall / face.
     */
    public double punching(double width, double length) {
        double counting = Math.min(width, 10 * width * wall / face);
        return yield / Math.sqrt(3) * wall * (2 * length + 2 * counting);
    }

    /**
     * Force square to the face at which it yields under a plate that stands along the tube, N.
     *
     * <p>Source: EN 1993-1-8 table 7.13 (from memory): f t^2 (2 length / face + 4 sqrt(1 - thickness / face)).
     *
     * @param thickness of the plate, m, at most a fifth of the face
     * @param length of the plate along the tube, m
     * @param stressed factor for push along the tube, see {@link #stressed}
     */
    public double underPlate(double thickness, double length, double stressed) {
        Precondition.within("thickness of the bracket over the tube's face", Kind.RATIO, thickness / face, 0, 0.2);
        Precondition.positive("length", length);
        Precondition.within("the stressed share", Kind.RATIO, stressed, 0, 1);
        return stressed * yield * wall * wall * (2 * length / face + 4 * Math.sqrt(1 - thickness / face));
    }

    /**
     * What push along the tube's face leaves of it, at most 1. Source: EN 1993-1-8 7.5 (from memory): 1.3 - 0.4 n / beta.
     *
     * @param use greatest push along the face over the yield, 0 or more; 0 for pull
     * @param width of the patch across the tube, m
     */
    public double stressed(double use, double width) {
        Precondition.within("the used share", Kind.RATIO, use, 0, 1);
        Precondition.positive("width", width);
        return use == 0 ? 1 : Math.max(0, Math.min(1, 1.3 - 0.4 * use * face / width));
    }
}
