// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.List;

/**
 * One load case over the tilts of its table.
 *
 * @param name as in the design's cases
 * @param about in plain words
 * @param states [tilt]
 * @param contents volume at the first tilt before anything could leave, m3
 */
public record LoadCase(String name, String about, List<LoadState> states, double contents) {
    /** Copies the list. */
    public LoadCase {
        states = List.copyOf(states);
    }

    /** Volume left at the last tilt, m3. */
    public double residual() {
        return states.get(states.size() - 1).volume();
    }
}
