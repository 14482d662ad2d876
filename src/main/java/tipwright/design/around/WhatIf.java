// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * What could go wrong, and how the machine is made against it. Source of the presets: common practice, no source.
 *
 * @param lockValve whether oil is locked in at the cylinder itself when a hose bursts
 * @param leakBore bore of the narrowest place on the oil's way out of a burst hose, m
 * @param fallSpeed fastest that the load may sink by itself, m/s
 * @param wheelDrop how far a wheel sinks, m
 * @param track between the wheels of an axle, m
 * @param wheelbase between the axles or from axle to coupling, m
 * @param runsAhead how far one of two actuators runs ahead of the other, m
 * @param gasLost share of their gas that old gas springs have lost
 * @param structure stiffness of tank, pins and frame together where the rod pushes, N/m
 * @param torsion stiffness of the cradle against twist about the pivot axis between its two actuators, N m/rad
 * @param never what cannot happen on this machine
 */
public record WhatIf(
        @Note("A lock valve screwed to the cylinder keeps the oil in when a hose bursts") @Preset("false")
                boolean lockValve,
        @Note("Narrowest bore on the oil's way out of a burst hose")
                @Measured(value = Kind.LENGTH, preset = "6 mm", above = "0 mm")
                double leakBore,
        @Note("Fastest that the load may sink by itself")
                @Measured(value = Kind.SPEED, preset = "100 mm/s", above = "0 mm/s")
                double fallSpeed,
        @Note("How far a wheel sinks") @Measured(value = Kind.LENGTH, preset = "50 mm", atLeast = "0 mm")
                double wheelDrop,
        @Note("Between the wheels of an axle") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable Double track,
        @Note("Between the axles, or from axle to coupling") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable
                Double wheelbase,
        @Note("How far one of two actuators runs ahead of the other")
                @Measured(value = Kind.LENGTH, preset = "5 mm", atLeast = "0 mm")
                double runsAhead,
        @Note("Share of their gas that old gas springs have lost")
                @Measured(value = Kind.RATIO, preset = "20 %", atLeast = "0 %", atMost = "100 %")
                double gasLost,
        @Note("Stiffness of tank, pins and frame together where the rod pushes; left out: stiff")
                @Measured(value = Kind.STIFFNESS, above = "0 N/mm")
                @Nullable
                Double structure,
        @Note("Stiffness of the cradle against twist between two actuators")
                @Measured(value = Kind.ANGULAR_STIFFNESS, above = "0 N m/deg")
                @Nullable
                Double torsion,
        @Note("What cannot happen on this machine; the verdict says that it was not looked at") @Preset
                List<Trouble> never) {
    /** Copies the list. */
    public WhatIf {
        never = List.copyOf(never);
    }
}
