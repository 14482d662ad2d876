// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * How hard the road pulls at what stands on a vehicle, as multiples of its weight; forward, rearward and sideways each by itself.
 *
 * @param forward when braking
 * @param rearward when setting off
 * @param sideways in a bend
 * @param up share of the weight that lifts it, where nothing else keeps it down
 * @param down what presses it on its rest at the same time
 */
public record RoadLoad(double forward, double rearward, double sideways, double up, double down) {
    /** Against the breaking strength of what holds it. Source: 49 CFR 393.102 (a), (b) (read at fmcsa.dot.gov). */
    public static final RoadLoad US_BREAKING = new RoadLoad(0.8, 0.5, 0.5, 0.2, 1);

    /** Against the working load limit of what holds it. Source: 49 CFR 393.102 (read at fmcsa.dot.gov). */
    public static final RoadLoad US_WORKING = new RoadLoad(0.435, 0.5, 0.25, 0.2, 1);

    /** Source: European practice on load securing (public guide of the German insurers, read); some countries ask 1.0 forward. */
    public static final RoadLoad EUROPE = new RoadLoad(0.8, 0.5, 0.5, 0, 1);

    /** Sideways for what may tip over. Source: EN 12195-1 (from memory). */
    public static final double EUROPE_TIPPING = 0.6;

    /** The greatest of the three along the ground. */
    public double greatest() {
        return Math.max(forward, Math.max(rearward, sideways));
    }
}
