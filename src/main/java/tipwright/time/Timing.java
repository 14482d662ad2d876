// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The dump in time.
 *
 * @param cycles by load case: first 'draining', the normal dump; then 'held', where nothing leaves; where solids settle 'caked',
 *     'settled' and 'slid'; then the design's own fixed loads. All but the first unless the design leaves them out. Empty when the
 *     time is not known
 * @param missing the key that is missing when the time is not known; else null
 * @param lost whether nothing is missing in the file but the integration was given up; then {@code missing} says where
 */
public record Timing(List<Cycle> cycles, @Nullable String missing, boolean lost) {
    /** Copies the list. */
    public Timing {
        cycles = List.copyOf(cycles);
    }

    /** The normal dump; null when the time is not known. */
    public @Nullable Cycle dump() {
        return cycles.isEmpty() ? null : cycles.get(0);
    }

    /** The dump of a load case; null when there is none. */
    public @Nullable Cycle of(String load) {
        return cycles.stream().filter(c -> c.load().equals(load)).findFirst().orElse(null);
    }
}
