// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;

/**
 * A hydraulic cylinder.
 *
 * @param bore m
 * @param closed pin to pin when drawn in, m
 * @param stroke m
 * @param reliefPressure Pa
 * @param flow of the pump, m3/s
 */
@Choice("hydraulic")
public record HydraulicActuator(
        @Measured(value = Kind.LENGTH, above = "0 mm") double bore,
        Rod rod,
        @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Measured(value = Kind.PRESSURE, above = "0 bar") double reliefPressure,
        @Measured(value = Kind.FLOW, above = "0 L/min") @Nullable Double flow,
        @Preset("double") Acting acting,
        @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Nullable Tube tube,
        @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %") @Nullable Double duty,
        @Measured(value = Kind.RATIO, preset = "95 %", above = "0 %", atMost = "100 %") double efficiency,
        @Nullable Double price)
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
