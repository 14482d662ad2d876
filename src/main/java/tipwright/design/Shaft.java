// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.quantity.Kind;

/**
 * The pivot shaft or stubs.
 *
 * @param diameter m
 * @param yield Pa
 * @param overhang from the middle of the bearing to where the tank grips the shaft, m
 */
public record Shaft(
        @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa") double yield,
        @Note("From the middle of a bearing to where the tank grips the shaft")
                @Measured(value = Kind.LENGTH, atLeast = "0 mm")
                double overhang) {}
