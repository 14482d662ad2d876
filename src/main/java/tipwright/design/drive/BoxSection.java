// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A rectangular tube.
 *
 * @param height outside, across the link in the side view, m
 * @param width outside, along the pivot axis, m
 * @param wall m
 */
@Choice("rectangular-tube")
public record BoxSection(
        @Note("Outside, across the link in the side view") @Measured(value = Kind.LENGTH, above = "0 mm") double height,
        @Note("Outside, along the pivot") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Thickness of its wall") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true) double wall)
        implements Section {
    @Override
    public double area() {
        return height * width - (height - 2 * wall) * (width - 2 * wall);
    }

    @Override
    public double inertia() {
        return second(width, height);
    }

    @Override
    public double inertiaAcross() {
        return second(height, width);
    }

    @Override
    public double depth() {
        return height;
    }

    @Override
    public double drilled(double hole) {
        return 2 * wall * hole;
    }

    @Override
    public double largestHole() {
        return height - 2 * wall;
    }

    private double second(double b, double h) {
        return (b * h * h * h - (b - 2 * wall) * Math.pow(h - 2 * wall, 3)) / 12;
    }
}
