// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The mechanism over a range of tilts.
 *
 * @param postures one for each tilt that is reached, in order
 * @param halt why it stops short; null when it reaches the last tilt
 */
public record Motion(List<Posture> postures, @Nullable Halt halt) {
    /** Copies the list. */
    public Motion {
        postures = List.copyOf(postures);
    }
}
