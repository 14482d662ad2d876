// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * A plain bush.
 *
 * @param length m along the shaft
 * @param pressure allowed mean pressure, Pa
 * @param pressureVelocity allowed pressure times sliding speed, Pa m/s
 */
@Choice("bush")
public record PlainBush(
        @Note("For the shaft") @Measured(value = Kind.LENGTH, above = "0 mm") @Sold(value = "bore", usual = "40 mm")
                double bore,
        @Note("Along the shaft") @Measured(value = Kind.LENGTH, above = "0 mm") double length,
        @Note("Mean pressure that it bears") @Measured(value = Kind.PRESSURE, above = "0 Pa") @Nullable Double pressure,
        @Note("Pressure times sliding speed that it bears")
                @Measured(value = Kind.PRESSURE_VELOCITY, above = "0 Pa m/s")
                @Nullable
                Double pressureVelocity,
        @Note("Price, in any currency, number only") @Nullable Double price)
        implements Bearing {

    @Override
    public String noun() {
        return "plain bushing";
    }

    @Override
    public double usualFriction() {
        return 0.15;
    }
}
