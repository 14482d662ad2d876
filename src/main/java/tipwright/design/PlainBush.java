// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import org.jspecify.annotations.Nullable;
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
        @Measured(value = Kind.LENGTH, above = "0 mm") double bore,
        @Measured(value = Kind.LENGTH, above = "0 mm") double length,
        @Measured(value = Kind.PRESSURE, above = "0 Pa") @Nullable Double pressure,
        @Measured(value = Kind.PRESSURE_VELOCITY, above = "0 Pa m/s") @Nullable Double pressureVelocity,
        @Nullable Double price)
        implements Bearing {

    @Override
    public double usualFriction() {
        return 0.15;
    }
}
