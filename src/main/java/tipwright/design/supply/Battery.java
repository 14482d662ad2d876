// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * A battery, its cable and its fuse.
 *
 * @param voltage at rest, V
 * @param capacity C
 * @param usable share of the capacity that may be drawn between two charges
 * @param resistance inside the battery, ohm; makes the voltage sag
 * @param fuse A
 */
@Choice("battery")
public record Battery(
        @Note("At rest, charged") @Measured(value = Kind.VOLTAGE, above = "0 V") double voltage,
        @Note("As printed on it") @Measured(value = Kind.CHARGE, above = "0 Ah") @Nullable Double capacity,
        @Note("Share that may be drawn between two charges; lead-acid lasts with about half")
                @Measured(value = Kind.RATIO, preset = "50 %", above = "0 %", atMost = "100 %")
                double usable,
        @Note("Resistance inside the battery, which makes its voltage sag under load")
                @Measured(value = Kind.RESISTANCE, preset = "0 ohm", atLeast = "0 ohm")
                double resistance,
        @Note("The cable to the actuators, one for all of them") @Nullable Cable cable,
        @Note("The fuse in that cable")
                @Measured(value = Kind.CURRENT, above = "0 A")
                @Sold(value = "fuse", usual = "40 A")
                @Nullable
                Double fuse)
        implements Supply {

    /** Resistance from the battery's cells to the motors and back, ohm. */
    public double loop() {
        return resistance + (cable == null ? 0 : cable.resistance());
    }
}
