// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A rope that a winch winds: it pulls, and goes slack where it would have to push.
 *
 * @param closed pin to pin with the rope wound in, m
 * @param stroke length of rope that is wound, m
 * @param pull N
 * @param hold N
 * @param diameter m
 */
@Choice("rope")
public record Rope(
        @Note("From where it leaves the winch to its hook, wound in") @Measured(value = Kind.LENGTH, above = "0 mm")
                double closed,
        @Note("How much of it is wound") @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Note("Rated pull of rope and winch, the lesser") @Measured(value = Kind.FORCE, above = "0 N") double pull,
        @Note("Rated force at rest, of the winch's brake or pawl")
                @Measured(value = Kind.FORCE, above = "0 N")
                @Nullable
                Double hold,
        @Note("Of the rope") @Measured(value = Kind.LENGTH, preset = "6 mm", above = "0 mm") double diameter,
        @Note("Price, in any currency, number only") @Nullable Double price)
        implements Actuator {
    @Override
    public String noun() {
        return "rope";
    }

    @Override
    public double ratedPush() {
        return 0;
    }

    @Override
    public double ratedPull() {
        return pull;
    }

    @Override
    public @Nullable Double ratedHold() {
        return hold;
    }

    @Override
    public @Nullable Rod rod() {
        return null;
    }

    @Override
    public @Nullable Tube tube() {
        return null;
    }

    @Override
    public @Nullable Double duty() {
        return null;
    }
}
