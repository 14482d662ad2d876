// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/** Your own limits: gaps, angles, leftovers. Source of the presets: common practice, no source. */
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
        @Note("From this percentage used a check is marked close")
                @Measured(value = Kind.RATIO, preset = "85 %", atLeast = "0 %", atMost = "100 %")
                double close,
        @Note("Gap wanted between what moves and what it passes")
                @Measured(value = Kind.LENGTH, preset = "20 mm", atLeast = "0 mm")
                double clearance,
        @Note("Radius round a pin within which the parts that it joins may touch")
                @Measured(value = Kind.LENGTH, preset = "80 mm", atLeast = "0 mm")
                double pinZone,
        @Note("Angle at which the unit may hang from its lifting eye")
                @Measured(value = Kind.ANGLE, preset = "5 deg", above = "0 deg", atMost = "45 deg")
                double hang,
        @Note("Bending of the cross member, as a share of its span")
                @Measured(value = Kind.RATIO, preset = "0.3 %", above = "0 %", atMost = "10 %")
                double deflection,
        @Note("From where the load lands to the edge of what it falls into")
                @Measured(value = Kind.LENGTH, preset = "100 mm", atLeast = "0 mm")
                double landing,
        @Note("Force that a hand may need on a crank or handle")
                @Measured(value = Kind.FORCE, preset = "200 N", above = "0 N")
                double handForce,
        @Note("Power that a worker keeps up for minutes") @Measured(value = Kind.POWER, preset = "75 W", above = "0 W")
                double handPower) {}
