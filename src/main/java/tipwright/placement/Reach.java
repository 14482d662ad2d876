// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.design.actuator.Actuator;

/**
 * What a candidate's motion alone tells.
 *
 * @param share of the tilts that it gets to, 0 to 1
 * @param shortest length of the actuator, m
 * @param longest m
 */
record Reach(double share, double shortest, double longest) {

    /** Of some lengths in m, at so many tilts wanted. */
    static Reach of(double[] lengths, int tilts) {
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        for (double length : lengths) {
            shortest = Math.min(shortest, length);
            longest = Math.max(longest, length);
        }
        return new Reach((double) lengths.length / tilts, shortest, longest);
    }

    /** By how much an actuator is too long when closed and too short drawn out, m; 0: it fits. */
    double misfit(Actuator actuator, double margin) {
        return Math.max(0, actuator.closed() + margin - shortest)
                + Math.max(0, longest + margin - actuator.closed() - actuator.stroke());
    }
}
