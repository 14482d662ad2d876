// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * An angle section; the rounding of its root and toes is left out, which is 1 to 2 % of it.
 *
 * @param legs outside, one for both or two, m
 * @param thickness m
 * @param from one end, at the middle of the section, m, stowed
 * @param to the other end
 */
@Choice("angle")
public record Angle(
        @Note("Outside, one for both legs or two: in the side view, along the pivot")
                @Counted(atLeast = 1, atMost = 2)
                @Measured(value = Kind.LENGTH, above = "0 mm")
                List<Double> legs,
        @Note("As bought: 16 ga, 3/16 plate, 5 mm") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                double thickness,
        @Note("One end, at the middle of the section, tank stowed") @Measured(Kind.LENGTH) Vec3 from,
        @Note("The other end") @Measured(Kind.LENGTH) Vec3 to)
        implements LongSteel {
    @Override
    public Stretched stretched() {
        return new Stretched(from, to, legs.get(0), legs.get(legs.size() - 1));
    }

    @Override
    public double area() {
        return (legs.get(0) + legs.get(legs.size() - 1) - thickness) * thickness;
    }
}
