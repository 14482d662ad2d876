// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A torsion spring around a pin. Its moment turns the pin's second body (at the pivot: the tank) the way that tips, and weakens
 * linearly with that turn. Source: helical torsion springs in any text on machine elements (from memory).
 *
 * @param pin name of the pin
 * @param moment with the tank stowed, N m; positive turns the second body clockwise, as a tipping tank turns
 * @param rate N m per rad
 */
@Choice("torsion-spring")
public record TorsionSpring(
        @Note("What it is called") String name,
        @Note("Name of the pin it sits on, such as pivot") String pin,
        @Note("Moment with the tank stowed; positive helps the tank to tip") @Measured(Kind.MOMENT) double moment,
        @Note("Moment per angle that it is wound") @Measured(value = Kind.ANGULAR_STIFFNESS, atLeast = "0 N m/deg")
                double rate)
        implements Assist {
    /** Moment at a turn of the pin from stowed, N m, positive clockwise; the turn in rad, positive clockwise. */
    public double momentAt(double turn) {
        return moment - rate * turn;
    }

    /** Energy stored at a turn from stowed, J, against none when stowed. */
    public double energy(double turn) {
        return -moment * turn + rate * turn * turn / 2;
    }
}
