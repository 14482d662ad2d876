// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A flat bar on edge.
 *
 * @param width across the link in the side view, m
 * @param thickness along the pivot axis, m
 */
@Choice("flat-bar")
public record FlatSection(
        @Note("Across the link in the side view") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Along the pivot") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true) double thickness)
        implements Section {
    @Override
    public double area() {
        return width * thickness;
    }

    @Override
    public double inertia() {
        return thickness * width * width * width / 12;
    }

    @Override
    public double inertiaAcross() {
        return width * thickness * thickness * thickness / 12;
    }

    @Override
    public double depth() {
        return width;
    }

    @Override
    public double drilled(double hole) {
        return hole * thickness;
    }

    @Override
    public double largestHole() {
        return width;
    }
}
