// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.Arrays;
import java.util.NavigableSet;
import java.util.TreeSet;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Slurry;

/**
 * The tilts at which a design is worked out: those of its steps, and both sides of each tilt at which the contents change at once.
 * A side is so close to its tilt that nothing else differs.
 */
public final class TiltGrid {
    /** How far the near side of a tilt lies before it, rad. */
    public static final double SIDE = 1e-7;

    /** Tilts this close are one, rad. */
    static final double SAME = 1e-9;

    private TiltGrid() {}

    /** The tilts of a design, rad, rising. */
    public static double[] of(Design design) {
        return with(design.tilt().tilts(), changes(design));
    }

    /** Where the contents change at once: an opening opens, a stuck cake lets go, half of it does. */
    private static double[] changes(Design design) {
        Slurry slurry = design.slurry();
        TreeSet<Double> all = new TreeSet<>();
        for (Opening opening : design.tank().openings()) {
            all.add(opening.opensAt());
        }
        if (slurry.cakeShare() > 0) {
            all.add(slurry.release());
            all.add(HalfCake.parts(design));
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Tilts with both sides of others put in; one that is there already is not put in twice.
     *
     * @param tilts rad, rising
     * @param changes rad, any order; those outside the tilts are left out
     */
    public static double[] with(double[] tilts, double... changes) {
        double first = tilts[0];
        double last = tilts[tilts.length - 1];
        TreeSet<Double> all = new TreeSet<>();
        for (double tilt : tilts) {
            all.add(tilt);
        }
        for (double change : changes) {
            if (change > first + SIDE && change <= last + SAME) {
                put(all, change - SIDE);
                put(all, Math.min(change, last));
            }
        }
        double[] sorted = new double[all.size()];
        Arrays.setAll(sorted, i -> all.pollFirst());
        return sorted;
    }

    private static void put(NavigableSet<Double> all, double tilt) {
        Double before = all.floor(tilt);
        Double after = all.ceiling(tilt);
        boolean below = before != null && tilt - before < SAME;
        boolean above = after != null && after - tilt < SAME;
        if (!below && !above) {
            all.add(tilt);
        }
    }

    /**
     * Whether two neighbours of a grid are the two sides of one tilt.
     *
     * @param before rad
     * @param after rad
     */
    public static boolean sides(double before, double after) {
        return after - before < 10 * SIDE;
    }
}
