// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A hand pump for hydraulic cylinders; lets down through its release valve.
 *
 * @param perStroke m3
 * @param strokesPerMinute of a steady worker
 * @param relief the most pressure that it makes, Pa; null: the cylinder's relief pressure
 * @param orifice the release valve; null: its opening is not known and the time to lower is not computed
 * @param returnLine what the oil meets on its way back; null: nothing but the orifice
 * @param handTravel way of the hand for each stroke, m; null: not known
 * @param efficiency share of the hand's work that reaches the oil
 */
@Choice("hand-pump")
public record HandPump(
        @Note("Oil for each stroke of the handle, out and back") @Measured(value = Kind.VOLUME, above = "0 L")
                double perStroke,
        @Note("Strokes a minute one person can keep up")
                @Measured(value = Kind.RATIO, preset = "30", above = "0", atMost = "120")
                double strokesPerMinute,
        @Note("The most pressure it makes") @Measured(value = Kind.PRESSURE, above = "0 bar") @Nullable Double relief,
        @Note("The release valve, fully open") @Nullable Orifice orifice,
        @Note("The hose that the oil goes back through by gravity, the oil and the seals") @Nullable
                ReturnLine returnLine,
        @Note("How far the hand moves for each stroke, out and back")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Nullable
                Double handTravel,
        @Note("Share of the hand's work that reaches the oil")
                @Measured(value = Kind.RATIO, preset = "80 %", above = "0 %", atMost = "100 %")
                double efficiency)
        implements Supply {}
