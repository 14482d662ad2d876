// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A flat bar.
 *
 * @param width m
 * @param thickness m
 * @param from one end, at the middle of the section, m, stowed
 * @param to the other end
 */
@Choice("flat")
public record Flat(
        @Note("In the side view") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("As bought: 16 ga, 3/16 plate, 5 mm") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                double thickness,
        @Note("One end, at the middle of the section, tank stowed") @Measured(Kind.LENGTH) Vec3 from,
        @Note("The other end") @Measured(Kind.LENGTH) Vec3 to)
        implements LongSteel {
    @Override
    public Stretched stretched() {
        return new Stretched(from, to, width, thickness);
    }

    @Override
    public double area() {
        return width * thickness;
    }
}
