// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What is wanted of the mounts.
 *
 * @param tilt rad; null: the design's own
 * @param time to raise the tank against the heaviest load at each tilt, s; null: any
 * @param utilisation largest allowed of every check
 * @param clearance between pin centres and keep-outs, m
 */
public record Wants(
        @Note("How far it must tip; left out: tilt.to")
                @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "175 deg")
                @Nullable
                Double tilt,
        @Note("Longest time to raise the tank against the heaviest load at each tilt; left out: any")
                @Measured(value = Kind.TIME, above = "0 s")
                @Nullable
                Double time,
        @Note("Largest utilisation allowed of any check that depends on the mounts")
                @Measured(value = Kind.RATIO, preset = "100 %", atLeast = "10 %", atMost = "100 %")
                double utilisation,
        @Note("From the centre of a pin to a keep-out, at least")
                @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double clearance,
        @Note("The weld tolerance asked about: how far each pin may end up from where it is drawn")
                @Measured(value = Kind.LENGTH, preset = "5 mm", atLeast = "0.1 mm", atMost = "100 mm")
                double weld) {}
