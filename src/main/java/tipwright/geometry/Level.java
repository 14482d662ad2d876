// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** Finds how high a solid must be filled to hold a volume. */
public final class Level {
    private static final double CLOSE = 1e-10;
    private static final int LIMIT = 200;

    private Level() {}

    /**
     * The plane below which the solid holds a volume; see {@link #filling}.
     *
     * @return the plane, touching the solid from below for no volume, from above for all of it
     */
    public static Plane holding(Solid solid, Vec3 normal, double volume, double guess) {
        return filling(solid, normal, volume, guess).plane();
    }

    /** What a body holds below planes of one direction. */
    public interface Body {
        /** Volume properties below the plane; the section is the derivative of volume by level. */
        Moments below(Plane plane);
    }

    /**
     * The plane below which the solid holds a volume, within 1e-10 of the whole volume, and what is below it.
     *
     * <p>Newton's method with the cut's area as slope, kept inside a bracket that bisection narrows.
     *
     * @param normal upward unit vector of the plane
     * @param volume m3; nothing or less gives the lowest point's plane, the whole or more the highest point's
     * @param guess level of a plane nearby, m, or NaN
     * @throws IllegalArgumentException if the volume or the normal is not a number
     */
    public static Filled filling(Solid solid, Vec3 normal, double volume, double guess) {
        return filling(solid::below, solid.extent(normal), solid.whole(), normal, volume, guess);
    }

    /**
     * The same for any body.
     *
     * @param range of its heights along the normal, m
     * @param whole all of it
     * @param normal upward unit vector of the plane
     * @param volume m3; nothing or less gives the lowest point's plane, the whole or more the highest point's
     * @param guess level of a plane nearby, m, or NaN
     * @throws IllegalArgumentException if the volume or the range is not a number
     */
    public static Filled filling(Body solid, Range range, Moments whole, Vec3 normal, double volume, double guess) {
        if (Double.isNaN(volume) || Double.isNaN(range.span())) {
            throw new IllegalArgumentException("a level needs a volume and a normal, not " + volume + ", " + normal);
        }
        if (volume <= 0) {
            return new Filled(new Plane(normal, range.low()), Moments.NOTHING);
        }
        if (volume >= whole.volume()) {
            return new Filled(new Plane(normal, range.high()), whole);
        }
        double low = range.low();
        double high = range.high();
        double level = guess > low && guess < high ? guess : low + rise(volume / whole.volume()) * (high - low);
        double before = high - low;
        for (int i = 0; ; i++) {
            Plane plane = new Plane(normal, level);
            Moments wet = solid.below(plane);
            double error = wet.volume() - volume;
            if (error > 0) {
                high = level;
            } else {
                low = level;
            }
            double middle = 0.5 * (low + high);
            if (i >= LIMIT) {
                throw new NotConvergedException("did not converge: the level of " + volume + " m3 of slurry");
            }
            boolean stuck = middle <= low || middle >= high;
            if (Math.abs(error) <= CLOSE * whole.volume() || stuck) {
                return new Filled(plane, wet);
            }
            double next = level - step(wet, volume, whole.volume());
            // bisect when Newton leaves the bracket or does not halve its step
            double step = Math.abs(next - level);
            boolean good = next > low && next < high && step <= 0.5 * before;
            level = good ? next : middle;
            before = good ? step : high - low;
        }
    }

    /** Height share to begin with, from the volume share: for round things, which hold little near their ends. */
    private static double rise(double share) {
        double half = 0.5 * Math.pow(2 * Math.min(share, 1 - share), 0.6);
        return share < 0.5 ? half : 1 - half;
    }

    /** Newton's step down, m: for the volume itself, near empty or full for its root, which is straighter there. */
    private static double step(Moments wet, double volume, double whole) {
        double share = volume / whole;
        if (share < 0.2) {
            return 2 * (wet.volume() - Math.sqrt(volume * wet.volume())) / wet.section();
        }
        if (share > 0.8) {
            double dry = Math.max(0, whole - wet.volume());
            return 2 * (Math.sqrt((whole - volume) * dry) - dry) / wet.section();
        }
        return (wet.volume() - volume) / wet.section();
    }
}
