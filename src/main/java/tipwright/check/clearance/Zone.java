// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.List;

/**
 * Where a part begins and ends along the pivot axis.
 *
 * @param from m
 * @param to m, not less than from
 */
record Zone(double from, double to) {
    private static final double TOUCH = 1e-6;

    /** All the way across. */
    static final Zone ALL = new Zone(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** As given in a design; empty: all the way across. */
    static Zone of(List<Double> z) {
        return z.isEmpty() ? ALL : new Zone(Math.min(z.get(0), z.get(1)), Math.max(z.get(0), z.get(1)));
    }

    /** Round a middle. */
    static Zone around(double z, double half) {
        return new Zone(z - half, z + half);
    }

    /** Whether both have some of the axis in common; touching is not enough. */
    boolean overlaps(Zone o) {
        return from < o.to - TOUCH && o.from < to - TOUCH;
    }

    /** What both have in common. */
    Zone and(Zone o) {
        return new Zone(Math.max(from, o.from), Math.min(to, o.to));
    }
}
