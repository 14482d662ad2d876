// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.List;

/**
 * One load case over the tilts of its table.
 *
 * @param name as in the design's cases
 * @param normalTo up to this tilt, rad, it belongs to the normal dump; beyond it, it only comes about if something goes wrong.
 *     {@link #ALWAYS} and {@link #NEVER} are the ends
 * @param states [tilt]
 * @param contents volume at the first tilt before anything could leave, m3
 */
public record LoadCase(String name, double normalTo, List<LoadState> states, double contents) {
    /** Part of the normal dump at every tilt. */
    public static final double ALWAYS = Double.POSITIVE_INFINITY;

    /** Comes about only if something goes wrong. */
    public static final double NEVER = Double.NEGATIVE_INFINITY;

    /** Copies the list. */
    public LoadCase {
        states = List.copyOf(states);
    }

    /** The same by another name. */
    public LoadCase named(String other) {
        return new LoadCase(other, normalTo, states, contents);
    }

    /** The same with other states. */
    LoadCase with(List<LoadState> others) {
        return new LoadCase(name, normalTo, others, contents);
    }

    /** Volume left at the last tilt, m3. */
    public double residual() {
        return states.get(states.size() - 1).volume();
    }

    /**
     * Whether it belongs to the normal dump at a tilt.
     *
     * @param tilt rad
     */
    public boolean normalAt(double tilt) {
        return tilt <= normalTo + TiltGrid.SAME;
    }

    /** Whether it comes about only if something goes wrong, at every tilt. */
    public boolean upset() {
        return normalTo == NEVER;
    }
}
