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
 */
public record Use(
        @Note("How often it tips and comes back in an hour")
                @Measured(value = Kind.RATIO, atLeast = "0", atMost = "1000")
                @Nullable
                Double dumpsPerHour) {}
