// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * A block of candidates side by side, and the worst that each meets over the tilts. Mutable: owned by one search thread. Pins are
 * in m from the pivot; forces in N are 'with the drive': positive where the actuator pushes while it grows with the tilt (sign +1)
 * or pulls while it shrinks (sign -1).
 */
final class Lanes {
    /** Candidates in a block; all arrays together fit the first-level cache. */
    static final int SIZE = 256;

    /** Frame pin and tank pin (stowed) from the pivot, m. */
    final double[] frameX = new double[SIZE];

    final double[] frameY = new double[SIZE];
    final double[] tankX = new double[SIZE];
    final double[] tankY = new double[SIZE];
    /** +1: the actuator grows as the tank tips; -1: it shrinks. */
    final double[] sign = new double[SIZE];
    /** Shortest and longest length, m. */
    final double[] shortest = new double[SIZE];

    final double[] longest = new double[SIZE];
    /** Smallest arm with its sign, and smallest arm less the friction of the pins, m; 0 or less: dead centre, or locked. */
    final double[] arm = new double[SIZE];

    final double[] free = new double[SIZE];
    /** Largest and smallest force at rest, and while moving, N. */
    final double[] restMost = new double[SIZE];

    final double[] restLeast = new double[SIZE];
    final double[] most = new double[SIZE];
    final double[] least = new double[SIZE];
    /** Square of the largest radial load of bearings 1 and 2, N2. */
    final double[] bearing1 = new double[SIZE];

    final double[] bearing2 = new double[SIZE];

    /** At the tilt now looked at: direction of the drive, 1/(arm + friction), 1/(arm - friction), sideways share and 1 + q^2. */
    final double[] ux = new double[SIZE];

    final double[] uy = new double[SIZE];
    final double[] easy = new double[SIZE];
    final double[] hard = new double[SIZE];
    final double[] across = new double[SIZE];
    final double[] size = new double[SIZE];
    /** Under the load now looked at: weight on bearings 1 and 2 along and across the drive, N. */
    final double[] along1 = new double[SIZE];

    final double[] along2 = new double[SIZE];
    final double[] side1 = new double[SIZE];
    final double[] side2 = new double[SIZE];
    /** Moment with the friction of the bearings, first and second try, N m; force, its size and its square with sideways part. */
    final double[] moment = new double[SIZE];

    final double[] again = new double[SIZE];
    final double[] force = new double[SIZE];
    final double[] forceSize = new double[SIZE];
    final double[] square = new double[SIZE];

    /** Sets a candidate; pins from the pivot, m. */
    void set(int lane, double fx, double fy, double tx, double ty) {
        frameX[lane] = fx;
        frameY[lane] = fy;
        tankX[lane] = tx;
        tankY[lane] = ty;
    }

    /** Distance of the tank pin from the pivot, m. */
    double reach(int lane) {
        return Math.sqrt(tankX[lane] * tankX[lane] + tankY[lane] * tankY[lane]);
    }
}
