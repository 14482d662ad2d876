// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * Coefficients of friction.
 *
 * @param pivot in the bearings; null: by the kind of bearing
 * @param pins in the actuator's pins. Source of the preset: common practice, no source
 */
public record Friction(
        @Note("Coefficient in the bearings; left out: by their kind")
                @Measured(value = Kind.RATIO, atLeast = "0", atMost = "1")
                @Nullable
                Double pivot,
        @Note("Coefficient in the actuator's pins")
                @Measured(value = Kind.RATIO, preset = "0.15", atLeast = "0", atMost = "1")
                double pins) {}
