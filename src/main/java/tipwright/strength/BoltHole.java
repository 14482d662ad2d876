// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * Holes for bolts. Source: EN 1090-2 table 11 (normal round holes), AISC 360 table J3.3 (standard holes of bolts in inches) and
 * EN 1993-1-8 table 3.3 (edge distances), all from memory.
 */
public final class BoltHole {
    private static final double SMALL = 0.0145;
    private static final double MIDDLE = 0.0245;
    private static final double INCH = 0.0254;

    /** From the middle of a hole to the edge of the plate, over the hole's diameter, where the design does not say. */
    public static final double EDGE = 1.5;

    /** The same at least, along the force and across it. */
    public static final double LEAST_EDGE = 1.2;

    private BoltHole() {}

    /**
     * Diameter of the hole for a bolt, m: 1 mm more up to M14, 2 mm up to M24, 3 mm above; of a bolt in inches 1/16 in more, from 1 in
     * on 1/8 in.
     */
    public static double diameter(double bolt) {
        if (BoltGroup.inInches(bolt)) {
            return bolt + (bolt < 0.99 * INCH ? INCH / 16 : INCH / 8);
        }
        return bolt + (bolt < SMALL ? 0.001 : bolt < MIDDLE ? 0.002 : 0.003);
    }
}
