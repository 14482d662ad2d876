// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A round bar or tube.
 *
 * @param diameter outside, m
 * @param bore m; 0: a solid bar
 */
@Choice("round")
public record RoundSection(
        @Note("Outside") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Inside diameter of a tube") @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double bore)
        implements Section {
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
