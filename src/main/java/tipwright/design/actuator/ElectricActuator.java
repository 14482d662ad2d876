// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * An electric linear actuator; moving, its ratings reach the rod by their efficiency.
 *
 * @param closed pin to pin when closed, m
 * @param stroke m
 * @param push N
 * @param pull N
 * @param hold N
 * @param voltage V
 * @param duty rated share of on-time
 */
@Choice("electric")
public record ElectricActuator(
        @Note("Pin to pin when closed") @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Note("How far it goes out") @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Note("Rated push") @Measured(value = Kind.FORCE, above = "0 N") double push,
        @Note("Rated pull") @Measured(value = Kind.FORCE, atLeast = "0 N") double pull,
        @Note("Rated force at rest") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Note("At no load and at the rated push") @Nullable Speed speed,
        @Note("Rated") @Measured(value = Kind.VOLTAGE, above = "0 V") @Nullable Double voltage,
        @Note("At no load and at the rated push") @Nullable Current current,
        @Note("Share of the time that it may run")
                @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %")
                @Nullable
                Double duty,
        @Note("The rod or screw tube, to check buckling") @Nullable Rod rod,
        @Note("The body, to check buckling") @Nullable Tube tube,
        @Note("Efficiency: how much of the rated force reaches the rod")
                @Measured(value = Kind.RATIO, preset = "100 %", above = "0 %", atMost = "100 %")
                double efficiency,
        @Note("Price, in any currency, number only") @Nullable Double price,
        @Note("Its screw, to see whether the load turns it back") @Nullable Screw screw,
        @Note("yes: a brake holds the screw when the motor is off") @Preset("false") boolean brake)
        implements Actuator {

    /**
     * Speed at the two known loads.
     *
     * @param noLoad m/s
     * @param rated m/s at the rated push
     */
    public record Speed(
            @Note("With no load") @Measured(value = Kind.SPEED, above = "0 mm/s") double noLoad,
            @Note("At the rated push") @Measured(value = Kind.SPEED, above = "0 mm/s") double rated) {}

    /**
     * Current at the two known loads.
     *
     * @param noLoad A
     * @param rated A at the rated push
     */
    public record Current(
            @Note("With no load") @Measured(value = Kind.CURRENT, atLeast = "0 A") double noLoad,
            @Note("At the rated push") @Measured(value = Kind.CURRENT, above = "0 A") double rated) {}

    /**
     * The screw's thread.
     *
     * @param diameter mean, m
     * @param lead travel for one turn, m
     * @param friction at the thread
     * @param flank half of the thread's angle, rad
     */
    public record Screw(
            @Note("Middle of the thread") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
            @Note("Travel for one turn") @Measured(value = Kind.LENGTH, above = "0 mm") double lead,
            @Note("Of the thread, greased, at its least")
                    @Measured(value = Kind.RATIO, preset = "0.08", atLeast = "0", atMost = "1")
                    double friction,
            @Note("Half of the thread's angle: 15 deg trapezoidal, 0 deg ball screw")
                    @Measured(value = Kind.ANGLE, preset = "15 deg", atLeast = "0 deg", atMost = "30 deg")
                    double flank) {}

    /** Times its rated load at which it stalls in any case. Source: common practice, no source. */
    public static final double OVERLOAD = 2;

    /**
     * How many times its rated load it gives before it stands still at its rated voltage: where the straight line through its two
     * known points ends. Source: linear load lines of a brushed motor.
     */
    public double stall() {
        return speed == null || speed.rated() >= speed.noLoad()
                ? OVERLOAD
                : Math.min(OVERLOAD, speed.noLoad() / (speed.noLoad() - speed.rated()));
    }

    @Override
    public String noun() {
        return "electric actuator";
    }

    @Override
    public double ratedPush() {
        return push * efficiency;
    }

    @Override
    public double ratedPull() {
        return pull * efficiency;
    }

    @Override
    public @Nullable Double ratedHold() {
        return hold;
    }
}
