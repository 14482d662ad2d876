// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;

/**
 * An electric linear actuator; ratings are at the rod.
 *
 * @param closed pin to pin when drawn in, m
 * @param stroke m
 * @param push N
 * @param pull N
 * @param hold N
 * @param voltage V
 * @param duty rated share of on-time
 */
@Choice("electric")
public record ElectricActuator(
        @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Measured(value = Kind.FORCE, above = "0 N") double push,
        @Measured(value = Kind.FORCE, atLeast = "0 N") double pull,
        @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Nullable Speed speed,
        @Measured(value = Kind.VOLTAGE, above = "0 V") @Nullable Double voltage,
        @Nullable Current current,
        @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %") @Nullable Double duty,
        @Nullable Rod rod,
        @Nullable Tube tube,
        @Measured(value = Kind.RATIO, preset = "100 %", above = "0 %", atMost = "100 %") double efficiency,
        @Nullable Double price)
        implements Actuator {

    /**
     * Speed at the two known loads.
     *
     * @param noLoad m/s
     * @param rated m/s at the rated push
     */
    public record Speed(
            @Measured(value = Kind.SPEED, above = "0 mm/s") double noLoad,
            @Measured(value = Kind.SPEED, above = "0 mm/s") double rated) {}

    /**
     * Current at the two known loads.
     *
     * @param noLoad A
     * @param rated A at the rated push
     */
    public record Current(
            @Measured(value = Kind.CURRENT, atLeast = "0 A") double noLoad,
            @Measured(value = Kind.CURRENT, above = "0 A") double rated) {}

    @Override
    public double ratedPush() {
        return push;
    }

    @Override
    public double ratedPull() {
        return pull;
    }

    @Override
    public @Nullable Double ratedHold() {
        return hold;
    }
}
