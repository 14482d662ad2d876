// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * What the machine stands on.
 *
 * @param outline feet, wheels or outriggers seen from above: x and z, m
 * @param y height of their undersides, m; null: that of the ground
 * @param slope that it must bear whichever way it stands, rad; null: none is asked for
 * @param rating of one support and the ground under it, N; null when not known
 * @param vehicle that the frame is fixed to; null when there is none
 * @param stiffness of each support, in the order of the outline, or one for all, N/m; empty: hard ground and no springs
 * @param soft share of its stiffness that a support has left which has gone soft
 * @param friction of what it stands on
 */
public record Footing(
        @Note("Feet, wheels or outriggers from above: [x, z]") @Counted(atLeast = 3, atMost = 40) @Measured(Kind.LENGTH)
                List<Vec2> outline,
        @Note("Height of their undersides; left out: the ground") @Measured(Kind.LENGTH) @Nullable Double y,
        @Note("Slope that it must bear whichever way it stands")
                @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "45 deg")
                @Nullable
                Double slope,
        @Note("What one support, and the ground under it, bears") @Measured(value = Kind.FORCE, above = "0 N") @Nullable
                Double rating,
        @Note("Truck or trailer that the frame is fixed to") @Nullable Vehicle vehicle,
        @Note(
                        "How hard each foot, or tyre with its spring, is, in the order of the outline, or one for all; left out: hard")
                @Counted(atMost = 40)
                @Measured(value = Kind.STIFFNESS, above = "0 N/mm")
                @Preset
                List<Double> stiffness,
        @Note("Share of its stiffness that a tyre or spring gone soft has left, under the side where load sticks")
                @Measured(value = Kind.RATIO, preset = "50 %", above = "0 %", atMost = "100 %")
                double soft,
        @Note("Friction of its feet or braked wheels on wet ground")
                @Measured(value = Kind.RATIO, preset = "0.4", above = "0", atMost = "1.5")
                double friction) {
    /** Stiffness of each support, N/m; empty: they do not give. */
    public List<Double> springs() {
        return stiffness.size() == 1 ? Collections.nCopies(outline.size(), stiffness.get(0)) : stiffness;
    }

    /**
     * The same with those on one side gone soft.
     *
     * @param side 1: beyond the middle towards +z, -1: towards -z
     */
    public Footing softOn(int side) {
        double middle = outline.stream().mapToDouble(Vec2::y).average().orElse(0);
        List<Double> all = new ArrayList<>(springs());
        for (int i = 0; i < all.size(); i++) {
            all.set(i, side * (outline.get(i).y() - middle) > 0 ? soft * all.get(i) : all.get(i));
        }
        return new Footing(outline, y, slope, rating, vehicle, all, soft, friction);
    }
}
