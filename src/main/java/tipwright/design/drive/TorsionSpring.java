// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * A torsion spring around a pin. Its moment turns the pin's second body (at the pivot: the tank) the way that tips, and weakens
 * linearly with that turn. Past its free angle its legs leave what they lean on and it does nothing, unless both are fixed.
 * Source: helical torsion springs in any text on machine elements (from memory).
 *
 * @param pin name of the pin
 * @param moment with the tank stowed, N m; positive turns the second body clockwise, as a tipping tank turns
 * @param rate N m per rad
 * @param bothLegsFixed whether its legs are held both ways, so that it also pushes back
 * @param windRange how far it may be wound from its free angle, rad; null: not known
 * @param rated greatest moment that it is made for, N m; null: not known
 */
@Choice("torsion-spring")
public record TorsionSpring(
        @Note("What it is called") String name,
        @Note("Name of the pin it sits on, such as pivot") String pin,
        @Note("Moment with the tank stowed; positive helps the tank to tip") @Measured(Kind.MOMENT) double moment,
        @Note("Moment per angle that it is wound") @Measured(value = Kind.ANGULAR_STIFFNESS, atLeast = "0 N m/deg")
                double rate,
        @Note("Both legs are fixed, so that it pushes back past its free angle; else it is slack there")
                @Preset("false")
                boolean bothLegsFixed,
        @Note("How far it may be wound from its free angle") @Measured(value = Kind.ANGLE, above = "0 deg") @Nullable
                Double windRange,
        @Note("Greatest moment that it is made for") @Measured(value = Kind.MOMENT, above = "0 N m") @Nullable
                Double rated)
        implements Assist {
    /** Moment at a turn of the pin from stowed, N m, positive clockwise; the turn in rad, positive clockwise. */
    public double momentAt(double turn) {
        double wound = moment - rate * turn;
        return slack(wound) ? 0 : wound;
    }

    /** Energy stored at a turn from stowed, J, against none when stowed. */
    public double energy(double turn) {
        return slack(moment - rate * turn) ? -moment * moment / (2 * rate) : -moment * turn + rate * turn * turn / 2;
    }

    /** How far it is wound from its free angle at a turn from stowed, rad; 0 where it is slack, NaN where it has no free angle. */
    public double wound(double turn) {
        return rate > 0 ? Math.abs(momentAt(turn)) / rate : Double.NaN;
    }

    /** One that is free as stowed is wound by the turn, whichever way. */
    private boolean slack(double wound) {
        return !bothLegsFixed && wound * moment < 0;
    }
}
