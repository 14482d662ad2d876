// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The mechanism over a range of tilts.
 *
 * @param configurations one for each tilt that is reached, in order
 * @param stop why it stops short; null when it reaches the last tilt
 */
public record Motion(List<Configuration> configurations, @Nullable SweepStop stop) {
    /** Copies the list. */
    public Motion {
        configurations = List.copyOf(configurations);
    }
}
