// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.stock.PipeSize;
import tipwright.quantity.Kind;

/**
 * A round bar or tube.
 *
 * @param diameter outside, m
 * @param bore m; 0: a solid bar
 * @param pipe such as '2 in schedule 40'; null when the diameter is given
 */
@Choice("round")
@ExactlyOne({"diameter", "pipe"})
public record RoundSection(
        @Note("Outside; or give pipe") @Measured(value = Kind.LENGTH, above = "0 mm", given = true) double diameter,
        @Note("Inside diameter of a tube") @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double bore,
        @Note("Nominal size and schedule of a pipe: 2 in schedule 40") @Nullable String pipe)
        implements Section {
    /** Takes the sizes of the pipe. */
    public RoundSection {
        if (Double.isNaN(diameter) && pipe != null) {
            diameter = PipeSize.named(pipe).map(PipeSize::outside).orElse(Double.NaN);
            bore = PipeSize.named(pipe).map(PipeSize::inside).orElse(Double.NaN);
        }
    }

    /** By its diameters, m. */
    public RoundSection(double diameter, double bore) {
        this(diameter, bore, null);
    }

    @Override
    public double area() {
        return Math.PI * (diameter * diameter - bore * bore) / 4;
    }

    @Override
    public double inertia() {
        return Math.PI * (Math.pow(diameter, 4) - Math.pow(bore, 4)) / 64;
    }

    @Override
    public double inertiaAcross() {
        return inertia();
    }

    @Override
    public double depth() {
        return diameter;
    }

    @Override
    public double drilled(double hole) {
        return strip(diameter / 2, hole / 2) - strip(bore / 2, Math.min(hole, bore) / 2);
    }

    @Override
    public double largestHole() {
        return diameter;
    }

    /** Area of a circle within a strip through its middle, m2; radius and half the strip's width in m. */
    private static double strip(double radius, double half) {
        return radius > 0
                ? 2 * (half * Math.sqrt(radius * radius - half * half) + radius * radius * Math.asin(half / radius))
                : 0;
    }
}
