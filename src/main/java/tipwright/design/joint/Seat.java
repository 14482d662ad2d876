// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Where a bracket, lug or cradle sits on the wall of a round tank.
 *
 * @param at its middle, m, stowed; only its place along the tank and its direction from the tank's axis count
 * @param along the tank, m
 * @param around the tank, m
 * @param pad plate between bracket and wall; null: none
 */
public record Seat(
        @Note("Middle of where it sits on the tank's wall, tank stowed") @Measured(Kind.LENGTH) Vec3 at,
        @Note("How long it is along the tank") @Measured(value = Kind.LENGTH, above = "0 mm") double along,
        @Note("How long it is around the tank") @Measured(value = Kind.LENGTH, above = "0 mm") double around,
        @Note("Pad plate between bracket and wall; left out: none") @Nullable Pad pad) {
    /** The same elsewhere, moved by so much, m. */
    Seat movedBy(Vec3 by) {
        return new Seat(at.plus(by), along, around, pad);
    }

    /**
     * A pad plate welded all round, in the middle under the bracket.
     *
     * @param thickness m
     * @param along m
     * @param around m
     */
    public record Pad(
            @Note("Of the plate") @Measured(value = Kind.LENGTH, above = "0 mm") double thickness,
            @Note("How long it is along the tank") @Measured(value = Kind.LENGTH, above = "0 mm") double along,
            @Note("How long it is around the tank") @Measured(value = Kind.LENGTH, above = "0 mm") double around) {}
}
