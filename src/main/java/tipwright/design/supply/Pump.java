// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A power pack: a pump with its motor and relief valve, for all cylinders together.
 *
 * @param flow m3/s; all cylinders share it
 * @param relief setting of the relief valve, Pa; null: that of the cylinder
 * @param motorPower at the pump's shaft, W
 * @param efficiency of the pump, oil power over shaft power
 * @param motorEfficiency shaft power over power drawn
 * @param lowering how the tank comes back; null: by the cylinder's own weight where it is single acting, else by power
 * @param counterbalance Pa
 * @param pilotRatio of the counterbalance valve
 * @param valveFlow the most that valve and hoses take, m3/s
 * @param returnLine what the oil meets on its way back by gravity; null: nothing but the orifice
 */
@Choice("pump")
public record Pump(
        @Note("For all cylinders together") @Measured(value = Kind.FLOW, above = "0 L/min") double flow,
        @Note("Setting of the relief valve; left out: the cylinder's own relief-pressure")
                @Measured(value = Kind.PRESSURE, above = "0 bar")
                @Nullable
                Double relief,
        @Note("Of the motor or engine, at the pump's shaft") @Measured(value = Kind.POWER, above = "0 W") @Nullable
                Double motorPower,
        @Note("Oil power over shaft power")
                @Measured(value = Kind.RATIO, preset = "80 %", above = "0 %", atMost = "100 %")
                double efficiency,
        @Note("Shaft power over power drawn")
                @Measured(value = Kind.RATIO, preset = "80 %", above = "0 %", atMost = "100 %")
                double motorEfficiency,
        @Note("How it comes back; left out: gravity where the cylinder is single acting, else power-down") @Nullable
                Lowering lowering,
        @Note("The orifice or valve that lets the oil back by gravity") @Nullable Orifice orifice,
        @Note("Setting of the counterbalance valve") @Measured(value = Kind.PRESSURE, above = "0 bar") @Nullable
                Double counterbalance,
        @Note("Pilot ratio of the counterbalance valve: 3 for 3:1")
                @Measured(value = Kind.RATIO, preset = "3", atLeast = "1", atMost = "20")
                double pilotRatio,
        @Note("The most flow that valve and hoses take, either way")
                @Measured(value = Kind.FLOW, above = "0 L/min")
                @Nullable
                Double valveFlow,
        @Note("The hose that the oil goes back through by gravity, the oil and the seals") @Nullable
                ReturnLine returnLine)
        implements Supply {

    /** How the tank comes back. */
    public enum Lowering {
        POWER_DOWN,
        GRAVITY,
        COUNTERBALANCE
    }
}
