// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A round bar.
 *
 * @param diameter m
 * @param from one end, at the middle of the section, m, stowed
 * @param to the other end
 */
@Choice("bar")
public record Bar(
        @Note("Outside") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("One end, at the middle of the section, tank stowed") @Measured(Kind.LENGTH) Vec3 from,
        @Note("The other end") @Measured(Kind.LENGTH) Vec3 to)
        implements LongSteel {
    @Override
    public Stretched stretched() {
        return new Stretched(from, to, diameter, diameter);
    }

    @Override
    public double area() {
        return Math.PI / 4 * diameter * diameter;
    }
}
