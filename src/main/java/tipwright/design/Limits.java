// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.quantity.Kind;

/** House limits that are no safety factors. Source of the presets: common practice, no source. */
public record Limits(
        @Note("Stroke kept free at each end") @Measured(value = Kind.LENGTH, preset = "5 mm", atLeast = "0 mm")
                double strokeMargin,
        @Note("Angle between actuator and arm below which it warns")
                @Measured(value = Kind.ANGLE, preset = "25 deg", atLeast = "0 deg", atMost = "90 deg")
                double transmissionWarn,
        @Note("Angle between actuator and arm below which it fails")
                @Measured(value = Kind.ANGLE, preset = "10 deg", atLeast = "0 deg", atMost = "90 deg")
                double transmissionFail,
        @Note("Share of the load that may stay in the tank")
                @Measured(value = Kind.RATIO, preset = "2 %", atLeast = "0 %", atMost = "100 %")
                double residue,
        @Note("Utilisation from which a check is marked close")
                @Measured(value = Kind.RATIO, preset = "85 %", atLeast = "0 %", atMost = "100 %")
                double close) {}
