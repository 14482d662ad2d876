// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.Map;

/**
 * What happens when a weld is off, or the load is another than thought.
 *
 * @param tolerance how far each coordinate may be off, m
 * @param utilisation as drawn
 * @param governing which limit that is
 * @param swings largest first
 * @param worstCorner largest utilisation with every coordinate off by the tolerance, either way
 * @param cornerLimit which limit that is
 * @param runs of the Monte Carlo
 * @param chance that any limit is passed with every coordinate anywhere within the tolerance
 * @param chances by limit, where not 0
 * @param largest tolerance that keeps every limit in every corner, m; 0: it fails as drawn
 */
public record Tolerance(
        double tolerance,
        double utilisation,
        Limit governing,
        List<Swing> swings,
        double worstCorner,
        Limit cornerLimit,
        int runs,
        double chance,
        Map<Limit, Double> chances,
        double largest) {

    /** Copies the lists. */
    public Tolerance {
        swings = List.copyOf(swings);
        chances = Map.copyOf(chances);
    }

    /**
     * What one figure does to the utilisations.
     *
     * @param name of the figure
     * @param size how far it is moved: m for places, a share for density, fill and weight
     * @param place whether it is a place
     * @param low largest utilisation with the figure lower
     * @param high largest utilisation with the figure higher
     * @param slopes change of each limit's utilisation over size, by central difference
     */
    public record Swing(String name, double size, boolean place, double low, double high, Map<Limit, Double> slopes) {
        /** Copies the map. */
        public Swing {
            slopes = Map.copyOf(slopes);
        }

        /** How much it moves the largest utilisation at most. */
        public double reach(double drawn) {
            return Math.max(Math.abs(low - drawn), Math.abs(high - drawn));
        }
    }
}
