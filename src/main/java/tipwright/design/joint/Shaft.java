// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * The pivot shaft or stubs.
 *
 * @param diameter m
 * @param yield Pa
 * @param overhang from the middle of the bearing to where the tank grips the shaft, m
 * @param carriedAt where the tank grips a shaft that goes through both bearings, z, m; empty: stubs with an overhang
 */
public record Shaft(
        @Note("Of the shaft or stubs")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Sold(value = "bore", usual = "40 mm")
                double diameter,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield,
        @Note("From the middle of a bearing to where the tank grips the shaft")
                @Measured(value = Kind.LENGTH, atLeast = "0 mm")
                double overhang,
        @Note("Where the tank grips a shaft that goes through both bearings: two places along the pivot")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                @Preset
                List<Double> carriedAt) {}
