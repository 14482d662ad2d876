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
 * @param hose bulk modulus by which the hose between cylinder and valve widens, Pa; null: the valve sits at the cylinder
 * @param cushion length over which the cylinder slows down before its end, m; null: none
 * @param saddleStiffness of what the stowed tank lies on, N/m
 * @param saddleRating what that bears, N
 * @param torsion stiffness of the cradle against twist about the pivot axis between its two actuators, N m/rad
 * @param never what cannot happen on this machine
 */
public record WhatIf(
        @Note("A lock valve on the cylinder port keeps the oil in when a hose bursts") @Preset("false")
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
        @Note(
                        "Stiffness of tank, pins and frame together where the rod pushes; left out: stiff with a cylinder, else not checked")
                @Measured(value = Kind.STIFFNESS, above = "0 N/mm")
                @Nullable
                Double structure,
        @Note(
                        "How the hose from cylinder to valve widens: pressure that would double what it holds; about 0.1 to 0.5 GPa;"
                                + " left out: the valve sits at the cylinder")
                @Measured(value = Kind.PRESSURE, above = "0 bar")
                @Nullable
                Double hose,
        @Note("Length over which the cylinder's cushion slows it down before its end; left out: none")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Nullable
                Double cushion,
        @Note("How hard the saddle or its pads are where the stowed tank lands on it")
                @Measured(value = Kind.STIFFNESS, above = "0 N/mm")
                @Nullable
                Double saddleStiffness,
        @Note("Force that the saddle bears") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double saddleRating,
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
