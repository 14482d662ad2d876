// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * How it is dumped.
 *
 * @param cycleTime wanted for raise, emptying and return, s
 * @param hold time at full tilt after it has drained, s
 * @param drained it counts as drained when this share of the load, or less, is still to run out
 * @param cake how the settled solids let go
 * @param shock factor on the weight of a cake that slides at once
 */
public record Dump(
        @Note("Longest time allowed for one dump: up, drain, down")
                @Measured(value = Kind.TIME, above = "0 s")
                @Nullable
                Double cycleTime,
        @Note("Waiting at full tilt after it has drained") @Measured(value = Kind.TIME, preset = "0 s", atLeast = "0 s")
                double hold,
        @Note("Share of the load still to run out at which it counts as drained")
                @Measured(value = Kind.RATIO, preset = "0.5 %", above = "0 %", atMost = "20 %")
                double drained,
        @Note("How settled solids let go: steadily, or all in one slide") @Preset("steadily") Cake cake,
        @Note("Factor on the weight of a cake that slides at once; 2 for a load that is put on suddenly")
                @Measured(value = Kind.RATIO, preset = "2", atLeast = "1", atMost = "10")
                double shock) {

    /** How settled solids leave. */
    public enum Cake {
        STEADILY,
        ONE_SLIDE
    }
}
