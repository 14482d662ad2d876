// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
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
        implements Steel {
    private Stretched stretched() {
        double outside = PipeSize.named(size).map(PipeSize::outside).orElse(Double.NaN);
        return new Stretched(from, to, outside, outside);
    }

    /** Area of the section, m2. */
    public double area() {
        return PipeSize.named(size).map(PipeSize::area).orElse(Double.NaN);
    }

    @Override
    public double mass() {
        return DENSITY * area() * stretched().length();
    }

    @Override
    public Vec3 centre() {
        return stretched().middle();
    }

    @Override
    public List<Vec2> outline() {
        return stretched().outline();
    }

    @Override
    public List<Double> across() {
        return stretched().across();
    }
}
