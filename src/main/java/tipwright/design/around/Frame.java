// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * What stands still under the tank.
 *
 * @param mass of the frame with all that stands on it but the tank, kg
 * @param centre its centre of mass, m
 * @param liftingEye where the whole unit hangs when it is lifted, m
 * @param crossMember the tube that carries the actuator's frame pin; null: none is given
 * @param wheels that it stands on; null: none
 */
public record Frame(
        @Note("Mass of the frame and all on it, without tank and vehicle")
                @Measured(value = Kind.MASS, above = "0 kg")
                @Nullable
                Double mass,
        @Note("Its centre of mass") @Measured(Kind.LENGTH) @Nullable Vec3 centre,
        @Note("Rails, posts and cross members, to keep clear of") @Preset List<SidePart> members,
        @Note("Where the whole unit hangs when it is lifted") @Measured(Kind.LENGTH) @Nullable Vec3 liftingEye,
        @Note("The rectangular tube that carries the actuator's frame pin") @Nullable CrossMember crossMember,
        @Note("The wheels that it stands on: an obstacle to what tips, and drawn") @Nullable Wheels wheels) {
    /** The same with another tube under the frame pin. */
    public Frame withCrossMember(CrossMember other) {
        return new Frame(mass, centre, members, liftingEye, other, wheels);
    }
}
