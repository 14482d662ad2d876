// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.Uncertain;

/**
 * How sure the verdict of a design is.
 *
 * @param passes samples in which no check fails
 * @param samples all of them
 * @param governing title of the check that is nearest to turning over; null when no check depends on what may be off
 * @param used its utilisation with every value as written
 * @param spread standard deviation of that utilisation, to first order
 * @param influences the values that may be off, the one that moves the governing check most first
 * @param wanted standard doubt of the first of them, SI, with which the governing check passes in 98 of 100; NaN: no measuring
 *     of it alone brings that
 */
public record Sureness(
        int passes,
        int samples,
        @Nullable String governing,
        double used,
        double spread,
        List<Influence> influences,
        double wanted) {
    /** Copies the list. */
    public Sureness {
        influences = List.copyOf(influences);
    }

    /**
     * What one value does.
     *
     * @param change of the governing check's utilisation by one standard doubt of the value
     */
    public record Influence(Uncertain value, double change) {}
}
