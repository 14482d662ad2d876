// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What the oil meets on its way back by gravity, beside the valve.
 *
 * @param bore of hose or pipe, m
 * @param length of it, m
 * @param grade of the oil: its viscosity at 40 C in mm2/s, of an oil of viscosity index 100
 * @param seals pressure in the cylinder at which it begins to move without load, Pa; null: not known
 * @param margin times that which the empty tank must make
 */
public record ReturnLine(
        @Note("Inside diameter of the hose or pipe that the oil goes back through")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                double bore,
        @Note("Length of that hose or pipe") @Measured(value = Kind.LENGTH, atLeast = "0 m") double length,
        @Note("Viscosity grade of the oil: 46 for VG 46")
                @Measured(value = Kind.RATIO, preset = "46", atLeast = "15", atMost = "150")
                double grade,
        @Note("Pressure in the cylinder at which its seals let it begin to move")
                @Measured(value = Kind.PRESSURE, atLeast = "0 bar")
                @Nullable
                Double seals,
        @Note("Times the seals' pressure that the empty tank must make")
                @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "1", atMost = "10")
                double margin) {}
