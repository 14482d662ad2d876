// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.stock.PipeSize;
import tipwright.quantity.Kind;

/**
 * The actuator's body as a column: from the rear pin to the gland.
 *
 * @param outside diameter, m
 * @param inside diameter, m
 * @param length from the rear pin to the gland, m
 * @param pipe such as '2 in schedule 40'; null when the diameters are given
 */
@ExactlyOne({"outside", "pipe"})
@ExactlyOne({"inside", "pipe"})
public record Tube(
        @Note("Outside diameter; or give pipe") @Measured(value = Kind.LENGTH, above = "0 mm", given = true)
                double outside,
        @Note("Inside diameter; or give pipe") @Measured(value = Kind.LENGTH, atLeast = "0 mm", given = true)
                double inside,
        @Note("From the rear pin to the gland") @Measured(value = Kind.LENGTH, above = "0 mm") double length,
        @Note("Nominal size and schedule of a pipe: 2 in schedule 40") @Nullable String pipe) {
    /** Takes the sizes of the pipe. */
    public Tube {
        if (Double.isNaN(outside) && pipe != null) {
            outside = PipeSize.named(pipe).map(PipeSize::outside).orElse(Double.NaN);
            inside = PipeSize.named(pipe).map(PipeSize::inside).orElse(Double.NaN);
        }
    }

    /** By its diameters, m. */
    public Tube(double outside, double inside, double length) {
        this(outside, inside, length, null);
    }

    /** Second moment of area, m4. */
    public double inertia() {
        return Math.PI * (Math.pow(outside, 4) - Math.pow(inside, 4)) / 64;
    }
}
