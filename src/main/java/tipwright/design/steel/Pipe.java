// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.geometry.stock.PipeSize;
import tipwright.quantity.Kind;

/**
 * A pipe by its nominal size and schedule.
 *
 * @param size such as '2 in schedule 40'
 * @param from one end, at the middle of the section, m, stowed
 * @param to the other end
 */
@Choice("pipe")
public record Pipe(
        @Note("Nominal size and schedule: 2 in schedule 40") String size,
        @Note("One end, at the middle of the section, tank stowed") @Measured(Kind.LENGTH) Vec3 from,
        @Note("The other end") @Measured(Kind.LENGTH) Vec3 to)
        implements LongSteel {
    @Override
    public Stretched stretched() {
        double outside = PipeSize.named(size).map(PipeSize::outside).orElse(Double.NaN);
        return new Stretched(from, to, outside, outside);
    }

    @Override
    public double area() {
        return PipeSize.named(size).map(PipeSize::area).orElse(Double.NaN);
    }
}
