// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * How the machine is used.
 *
 * @param dumpsPerHour how often it tips and comes back in an hour; null when not known
 * @param hoursAYear hours of such use in a year; null when not known
 * @param years that it is to last; null when not known
 */
public record Use(
        @Note("How often it dumps and comes back in an hour")
                @Measured(value = Kind.RATIO, atLeast = "0", atMost = "1000")
                @Nullable
                Double dumpsPerHour,
        @Note("Hours of such use in a year") @Measured(value = Kind.RATIO, atLeast = "0", atMost = "8784") @Nullable
                Double hoursAYear,
        @Note("Years that it is to last") @Measured(value = Kind.RATIO, atLeast = "0", atMost = "200") @Nullable
                Double years) {
    /** Dumps over its life; null when not known. */
    public @Nullable Double dumps() {
        return dumpsPerHour == null || hoursAYear == null || years == null ? null : dumpsPerHour * hoursAYear * years;
    }
}
