// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.steel.Steel;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A part that turns with the tank.
 *
 * @param mass kg
 * @param centre centre of mass, m, stowed
 * @param outline in the side view, m, stowed; empty: it has no size
 * @param z from and to along the pivot axis, m; empty: all the way across
 * @param steel what it is made of; empty: given by mass and centre
 */
@ExactlyOne({"mass", "steel"})
@ExactlyOne({"centre", "steel"})
public record Attached(
        @Note("What it is") String name,
        @Note("What it weighs") @Measured(value = Kind.MASS, atLeast = "0 kg", given = true) double mass,
        @Note("Its centre of mass, tank stowed") @Measured(value = Kind.LENGTH, given = true) Vec3 centre,
        @Note("Corners of its outline in the side view, to keep it clear")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                @Preset
                List<Vec2> outline,
        @Note("Where it begins and ends along the pivot; left out: all the way across")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(Kind.LENGTH)
                @Preset
                List<Double> z,
        @Note("The steel that it is made of, which gives mass and centre") @Counted(atMost = 50) @Preset
                List<Steel> steel) {

    /**
     * One solid piece of it in the side view.
     *
     * @param outline m, stowed
     * @param z from and to along the pivot axis, m; empty: all the way across
     */
    public record Side(List<Vec2> outline, List<Double> z) {}

    /** Works mass and centre out from the steel. */
    public Attached {
        if (Double.isNaN(mass) && !steel.isEmpty()) {
            mass = steel.stream().mapToDouble(Steel::mass).sum();
            Vec3 first = Vec3.ZERO;
            for (Steel piece : steel) {
                first = first.plus(piece.centre().times(piece.mass()));
            }
            centre = first.times(1 / mass);
        }
    }

    /** Its outline; without one, those of the pieces of steel that it is made of; empty when neither is given. */
    public List<Side> sides() {
        return outline.isEmpty()
                ? steel.stream().map(s -> new Side(s.outline(), s.across())).toList()
                : List.of(new Side(outline, z));
    }

    /** As weighed. */
    public Attached(String name, double mass, Vec3 centre, List<Vec2> outline, List<Double> z) {
        this(name, mass, centre, outline, z, List.of());
    }
}
