// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a part begins and ends along the pivot axis.
 *
 * @param from m
 * @param to m, not less than from
 */
public record ZRange(double from, double to) {
    private static final double TOUCH = 1e-6;

    /** All the way across. */
    public static final ZRange ALL = new ZRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** As given in a design; empty: all the way across. */
    public static ZRange of(List<Double> z) {
        return z.isEmpty() ? ALL : new ZRange(Math.min(z.get(0), z.get(1)), Math.max(z.get(0), z.get(1)));
    }

    /** Round a middle. */
    public static ZRange around(double z, double half) {
        return new ZRange(z - half, z + half);
    }

    /** Whether both have some of the axis in common; touching is not enough. */
    public boolean overlaps(ZRange o) {
        return from < o.to - TOUCH && o.from < to - TOUCH;
    }

    /** The same, but for one that goes all the way across: as wide as the machine is. */
    public ZRange orAcross(ZRange across) {
        return equals(ALL) ? across : this;
    }

    /** What both have in common. */
    public ZRange and(ZRange o) {
        return new ZRange(Math.max(from, o.from), Math.min(to, o.to));
    }

    /** Grown by a thickness at both ends, m. */
    ZRange grown(double by) {
        return new ZRange(from - by, to + by);
    }

    /** From the smallest to the largest of both; ends that are not finite do not count. */
    ZRange with(ZRange o) {
        return new ZRange(
                Double.isInfinite(o.from) ? from : Math.min(from, o.from),
                Double.isInfinite(o.to) ? to : Math.max(to, o.to));
    }

    // a record's own would be spun when it is first asked for, and every check of the gaps asks

    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof ZRange z && Double.compare(from, z.from) == 0 && Double.compare(to, z.to) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(from) + Double.hashCode(to);
    }
}
