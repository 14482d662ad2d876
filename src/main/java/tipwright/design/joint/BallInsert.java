// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * A ball insert in a housing.
 *
 * @param c0 basic static load rating, N (ISO 76)
 * @param c basic dynamic load rating, N (ISO 281)
 * @param housing the maker's figures for the housing by direction of load
 */
@Choice("ball-insert")
public record BallInsert(
        @Note("For the shaft") @Measured(value = Kind.LENGTH, above = "0 mm") double bore,
        @Note("Basic static load rating C0 from the catalogue (ISO 76)")
                @Measured(value = Kind.FORCE, above = "0 N")
                @Nullable
                Double c0,
        @Note("Basic dynamic load rating C from the catalogue (ISO 281)")
                @Measured(value = Kind.FORCE, above = "0 N")
                @Nullable
                Double c,
        @Note("Housing strength by the angle between the load and the direction into the base")
                @Counted(atMost = 20)
                @Preset
                List<HousingStrength> housing,
        @Note("Price, in any currency, number only") @Nullable Double price,
        @Note("What it holds along the shaft, from the maker; left out: 20 % of C")
                @Measured(value = Kind.FORCE, above = "0 N")
                @Nullable
                Double axial)
        implements Bearing {

    @Override
    public String noun() {
        return "ball bearing";
    }

    @Override
    public double usualFriction() {
        return 0.01;
    }
}
