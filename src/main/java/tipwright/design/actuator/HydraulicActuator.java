// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * A hydraulic cylinder.
 *
 * @param bore m
 * @param closed pin to pin when closed, m
 * @param stroke m
 * @param reliefPressure Pa
 * @param flow of the pump, m3/s
 */
@Choice("hydraulic")
public record HydraulicActuator(
        @Note("Inside diameter of the cylinder")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Sold(value = "cylinder", usual = "50 mm")
                double bore,
        @Note("The rod or screw tube, to check buckling") Rod rod,
        @Note("Pin to pin when closed") @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Note("How far it goes out") @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Note("What the relief valve is set to") @Measured(value = Kind.PRESSURE, above = "0 bar")
                double reliefPressure,
        @Note("Of the pump") @Measured(value = Kind.FLOW, above = "0 L/min") @Nullable Double flow,
        @Note("single: oil only pushes; double: it pulls too") @Preset("double") Acting acting,
        @Note("Rated force at rest") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Note("The body, to check buckling") @Nullable Tube tube,
        @Note("Share of the time that it may run")
                @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %")
                @Nullable
                Double duty,
        @Note("Efficiency: how much of the rated force reaches the rod")
                @Measured(value = Kind.RATIO, preset = "95 %", above = "0 %", atMost = "100 %")
                double efficiency,
        @Note("Price, in any currency, number only") @Nullable Double price)
        implements Actuator, Cylinder {

    /** Whether oil can also pull the rod in. */
    public enum Acting {
        SINGLE,
        DOUBLE
    }

    /** Piston area, m2. */
    public double boreArea() {
        return Math.PI * bore * bore / 4;
    }

    /** Piston area less the rod's, m2. */
    public double annulusArea() {
        return boreArea() - Math.PI * rod.diameter() * rod.diameter() / 4;
    }

    @Override
    public double oilArea(double length, boolean out) {
        return out ? boreArea() : acting == Acting.SINGLE ? 0 : annulusArea();
    }

    @Override
    public String noun() {
        return "hydraulic cylinder";
    }

    @Override
    public double ratedPush() {
        return reliefPressure * boreArea() * efficiency;
    }

    @Override
    public double ratedPull() {
        return acting == Acting.SINGLE ? 0 : reliefPressure * annulusArea() * efficiency;
    }

    @Override
    public @Nullable Double ratedHold() {
        return hold;
    }
}
