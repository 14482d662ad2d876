// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A wall of even thickness over the whole surface of the interior.
 *
 * @param thickness m
 * @param density kg/m3
 * @param yield Pa
 * @param stiffeners of flat walls; null: none
 * @param rim of an open tank; null: none
 */
public record Wall(
        @Note("Thickness of the plate") @Measured(value = Kind.LENGTH, above = "0 mm", atMost = "200 mm", sheet = true)
                double thickness,
        @Note("Of the plate; 7850 kg/m3 for steel")
                @Measured(value = Kind.DENSITY, preset = "7850 kg/m3", above = "0 kg/m3")
                double density,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield,
        @Note("Flat bars on edge that stiffen flat walls") @Nullable Stiffeners stiffeners,
        @Note("Rectangular tube round the upper edge of an open tank") @Nullable Rim rim) {
    /**
     * Upright flat bars on edge, all alike.
     *
     * @param spacing from bar to bar, m
     * @param thickness m
     * @param height square to the wall, m
     */
    public record Stiffeners(
            @Note("From bar to bar") @Measured(value = Kind.LENGTH, above = "0 mm") double spacing,
            @Note("Thickness of the flat bar") @Measured(value = Kind.LENGTH, above = "0 mm") double thickness,
            @Note("Square to the wall") @Measured(value = Kind.LENGTH, above = "0 mm") double height) {}

    /**
     * A rectangular tube.
     *
     * @param height upright, m
     * @param width square to the wall, m
     * @param wall m
     */
    public record Rim(
            @Note("Upright") @Measured(value = Kind.LENGTH, above = "0 mm") double height,
            @Note("Square to the wall") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
            @Note("Thickness of its wall") @Measured(value = Kind.LENGTH, above = "0 mm") double wall) {}
}
