// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * The coldest day that it has to work on.
 *
 * @param lowest temperature of the day, K
 * @param oil viscosity grade of the oil, m2/s at 40 C over 1e-6; null when not known
 * @param thickest oil that the pump may start with, m2/s
 */
public record Cold(
        @Note("Coldest that it has to work at")
                @Measured(value = Kind.TEMPERATURE, atLeast = "-60 degC", atMost = "40 degC")
                double lowest,
        @Note("Grade of the oil: 32 for VG 32") @Measured(value = Kind.RATIO, atLeast = "5", atMost = "1000") @Nullable
                Double oil,
        @Note("Thickest oil that the pump may start with, from its maker")
                @Measured(value = Kind.VISCOSITY, preset = "1000 mm2/s", atLeast = "50 mm2/s", atMost = "10000 mm2/s")
                double thickest) {}
