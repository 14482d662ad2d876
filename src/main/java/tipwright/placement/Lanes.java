// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * A block of candidates side by side, and the worst that each meets over the tilts. Mutable: owned by one search thread. Pins are
 * in m from the pivot; forces in N are 'with the drive': positive where the actuator pushes while it grows with the tilt (sign +1)
 * or pulls while it shrinks (sign -1).
 *
 * <p>All in single precision: twice as many candidates at a time, and quicker roots. What a length and an arm may be off by for
 * that is {@link #lengthOff} and {@link #armOff}; forces up to 1e18 N can be squared.
 */
final class Lanes {
    /** Candidates in a block; the arrays that one load uses fit the first-level cache together. */
    static final int SIZE = 512;

    /**
     * Of all lengths that a length is made from, what it may be off by. With e = 2^-24 for each step: a pin and the sine and cosine
     * are rounded, turned and taken from each other, which is off by 7.1 e of the tank pin's distance and 2.8 e of the frame pin's;
     * square and root add 2 e. Sixteen e is more than these; a million random candidates are off by less than 3 e.
     */
    private static final double ROUNDING = 1e-6;

    /** Frame pin and tank pin (stowed) from the pivot, m. */
    final float[] frameX = new float[SIZE];

    final float[] frameY = new float[SIZE];
    final float[] tankX = new float[SIZE];
    final float[] tankY = new float[SIZE];
    /** +1: the actuator grows as the tank tips; -1: it shrinks. */
    final float[] sign = new float[SIZE];
    /** Shortest and longest length, m. */
    final float[] shortest = new float[SIZE];

    final float[] longest = new float[SIZE];
    /** Smallest arm with its sign, and smallest arm less the friction of the pins, m; 0 or less: dead centre, or locked. */
    final float[] arm = new float[SIZE];

    final float[] free = new float[SIZE];
    /** Largest and smallest force at rest, and while moving, N. */
    final float[] restMost = new float[SIZE];

    final float[] restLeast = new float[SIZE];
    final float[] most = new float[SIZE];
    final float[] least = new float[SIZE];
    /** Square of the largest radial load of bearings 1 and 2, N2. */
    final float[] bearing1 = new float[SIZE];

    final float[] bearing2 = new float[SIZE];

    /** At the tilt now looked at: direction of the drive; force per N m, and what the pins' friction adds to it, 1/m. */
    final float[] ux = new float[SIZE];

    final float[] uy = new float[SIZE];
    final float[] gain = new float[SIZE];
    final float[] extra = new float[SIZE];
    /** Sideways share of the force, and 1 + its square. */
    final float[] across = new float[SIZE];

    final float[] size = new float[SIZE];
    /** Under the load now looked at: weight on bearings 1 and 2 along and across the drive, N. */
    final float[] along1 = new float[SIZE];

    final float[] along2 = new float[SIZE];
    final float[] side1 = new float[SIZE];
    final float[] side2 = new float[SIZE];
    /** Moment with the friction of the bearings, first and second try, N m; force, N. */
    final float[] moment = new float[SIZE];

    final float[] again = new float[SIZE];
    final float[] force = new float[SIZE];

    /** Sets a candidate; pins from the pivot, m. */
    void set(int lane, double fx, double fy, double tx, double ty) {
        frameX[lane] = (float) fx;
        frameY[lane] = (float) fy;
        tankX[lane] = (float) tx;
        tankY[lane] = (float) ty;
    }

    /** Copies the pins of a candidate from another block. */
    void set(int lane, Lanes from, int there) {
        frameX[lane] = from.frameX[there];
        frameY[lane] = from.frameY[there];
        tankX[lane] = from.tankX[there];
        tankY[lane] = from.tankY[there];
    }

    /** Distance of the tank pin from the pivot, m. */
    double reach(int lane) {
        double x = tankX[lane];
        double y = tankY[lane];
        return Math.sqrt(x * x + y * y);
    }

    /** What shortest and longest may be off by, m; the frame pin is no farther from the pivot than reach and length together. */
    double lengthOff(int lane) {
        return ROUNDING * (2 * reach(lane) + longest[lane]);
    }

    /** What the arm may be off by, m: the direction is as far off as the length, over the length, and the arm as that at the reach. */
    double armOff(int lane) {
        return 2 * lengthOff(lane) * reach(lane) / shortest[lane];
    }
}
