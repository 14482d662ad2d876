// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Range;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * The tank.
 *
 * @param wall how thick the wall is; null when the empty mass is given
 * @param mass the empty mass as weighed; null when it follows from the wall
 * @param outline of its outside in the side view, m, stowed; empty: follows from the inside and the wall
 * @param sizes which side of the wall was measured; null: inside
 * @param weighed pulls of a hook scale
 * @param open the side that has no wall, which becomes the last of the openings; then null. Not null: the inside has no such side
 * @param suction vacuum inside while it is filled, Pa; null: none
 */
@ExactlyOne({"wall", "mass"})
public record Tank(
        @Note("The inside of the tank, where the slurry goes") Interior interior,
        @Note("Wall, to work out the empty mass; or give mass") @Nullable Wall wall,
        @Note("Empty mass as weighed, without the attached parts; or give wall") @Nullable Weighed mass,
        @Note("Whatever turns with the tank: door, cradle, hoses, half the actuator") @Counted(atMost = 200) @Preset
                List<Attached> attached,
        @Note("Where it empties") @Counted(atMost = 20) @Preset List<Opening> openings,
        @Note("Where air gets in while a closed tank drains; left out: it is open to the air") @Nullable Vent vent,
        @Note("Corners of its outside in the side view; left out: the inside plus the wall")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                @Preset
                List<Vec2> outline,
        @Note("What the tank's sizes are: inside, or outside with the wall taken off") @Nullable Sizes sizes,
        @Note("Pulls of a hook scale that hold the empty tank, which correct its centre") @Counted(atMost = 20) @Preset
                List<HookReading> weighed,
        @Note("Vacuum that it is filled by; left out: none")
                @Measured(value = Kind.PRESSURE, above = "0 Pa", atMost = "101.325 kPa")
                @Nullable
                Double suction,
        @Note("The side without a wall: top or front, the dump end; its rim is the lip") @Nullable Open open) {

    /**
     * Whether nothing shuts it: no opening has a door or opens later, and the lowest edge of each lies above the middle of the inside,
     * tank stowed. The load then leaves over a lip alone.
     */
    public boolean pours() {
        if (openings.isEmpty() || openings.stream().anyMatch(o -> o.door() != null || o.opensAt() > 0)) {
            return false;
        }
        Vec3 up = new Vec3(0, 1, 0);
        Range height = interior.solid().extent(up);
        double middle = (height.low() + height.high()) / 2;
        return openings.stream().allMatch(o -> o.lip(up) > middle);
    }

    /** Which side of the wall was measured. */
    public enum Sizes {
        INSIDE,
        OUTSIDE
    }

    /** A side without a wall. */
    public enum Open {
        TOP,
        FRONT
    }

    /**
     * Takes the wall off sizes that are outside, and away from the open side; the mouth of an open drawing is the opening where none
     * is given. Each opening faces out of the tank.
     */
    public Tank {
        if (openings.isEmpty() && !interior.mouth().isEmpty()) {
            openings = List.of(Opening.mouth(interior.mouth()));
        }
        double thickness = thickness(wall, mass);
        boolean outside = sizes == Sizes.OUTSIDE;
        if (!Double.isNaN(thickness) && (outside || interior.needsWall())) {
            interior = interior.inside(thickness, outside);
            sizes = Sizes.INSIDE;
        } else if (!outside && !interior.needsWall()) {
            interior = interior.inside(0, false);
        }
        Opening rim = open == null ? null : interior.open(open);
        if (open != null && rim != null) {
            if (outside && !Double.isNaN(thickness)) {
                interior = interior.withoutWall(open, thickness);
                rim = interior.open(open);
            }
            List<Opening> all = new ArrayList<>(openings);
            all.add(rim);
            openings = List.copyOf(all);
            open = null;
        }
        Interior closed = interior;
        openings = openings.stream().map(o -> o.of(closed)).toList();
    }

    /** With its sizes inside. */
    public Tank(
            Interior interior,
            @Nullable Wall wall,
            @Nullable Weighed mass,
            List<Attached> attached,
            List<Opening> openings,
            @Nullable Vent vent,
            List<Vec2> outline) {
        this(interior, wall, mass, attached, openings, vent, outline, null, List.of(), null, null);
    }

    private static double thickness(@Nullable Wall wall, @Nullable Weighed mass) {
        if (wall != null) {
            return wall.thickness();
        }
        Double told = mass == null ? null : mass.thickness();
        return told == null ? Double.NaN : told;
    }

    /** Whether sizes of the outside are given and no thickness of the wall. */
    public boolean lacksThickness() {
        return Double.isNaN(thickness(wall, mass)) && (sizes == Sizes.OUTSIDE || interior.needsWall());
    }
}
