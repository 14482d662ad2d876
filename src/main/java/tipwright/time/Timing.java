// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Extreme;

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

    /**
     * What of it belongs to one half of a verdict; the normal dump stays the first of its cycles.
     *
     * @param normal all goes as meant; else something goes wrong
     * @param normalTo tilt up to which the load of a name belongs to the normal dump, rad
     */
    public Timing half(boolean normal, ToDoubleFunction<String> normalTo) {
        return new Timing(
                cycles.stream()
                        .map(c -> c.half(normal, normalTo.applyAsDouble(c.load())))
                        .toList(),
                missing,
                lost);
    }

    /** The normal dump; null when the time is not known. */
    public @Nullable Cycle dump() {
        return cycles.isEmpty() ? null : cycles.get(0);
    }

    /** The dump of a load case; null when there is none. */
    public @Nullable Cycle of(String load) {
        return cycles.stream().filter(c -> c.load().equals(load)).findFirst().orElse(null);
    }

    /** Where something is largest over all moments of all dumps; nowhere, and 0, when it is never more than 0. */
    public Extreme largest(ToDoubleFunction<Moment> value) {
        Extreme.Search search = Extreme.Search.above(0);
        cycles.forEach(c -> c.offer(search, value));
        return search.found();
    }

    /** Where something is smallest over all moments of all dumps; a value that is infinite does not count. */
    public Extreme smallest(ToDoubleFunction<Moment> value) {
        Extreme.Search search = Extreme.Search.smallest();
        cycles.forEach(c -> c.offer(search, value));
        return search.found();
    }
}
