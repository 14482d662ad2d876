// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * The piston rod or screw tube.
 *
 * @param diameter outside, m
 * @param bore inside diameter of a hollow rod, m
 * @param length m
 * @param yield Pa
 * @param modulus Young's modulus, Pa
 */
public record Rod(
        @Note("Outside") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Inside diameter of a hollow rod") @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double bore,
        @Note("Of the rod itself") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable Double length,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "355 MPa", above = "0 Pa")
                double yield,
        @Note("Young's modulus; 205 GPa for steel") @Measured(value = Kind.PRESSURE, preset = "205 GPa", above = "0 Pa")
                double modulus) {

    /** Second moment of area, m4. */
    public double inertia() {
        return Math.PI * (Math.pow(diameter, 4) - Math.pow(bore, 4)) / 64;
    }

    /** Cross-section, m2. */
    public double area() {
        return Math.PI * (diameter * diameter - bore * bore) / 4;
    }
}
