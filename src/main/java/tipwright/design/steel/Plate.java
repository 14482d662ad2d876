// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A rectangular plate or sheet.
 *
 * @param size in the side view and along the pivot, m
 * @param thickness m
 * @param open share of it that is holes; null: none
 * @param centre its middle, m, stowed
 * @param faces direction square to it, any length
 */
@Choice("plate")
public record Plate(
        @Note("Two sizes: in the side view and along the pivot; of a piece that faces z along x and y")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(value = Kind.LENGTH, above = "0 mm")
                List<Double> size,
        @Note("As bought: 16 ga, 3/16 plate, 5 mm") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                double thickness,
        @Note("Share that is holes, of a perforated plate")
                @Measured(value = Kind.RATIO, atLeast = "0 %", atMost = "95 %")
                @Nullable
                Double open,
        @Note("Its middle, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Direction square to it: y for a piece that lies flat") @Measured(Kind.RATIO) Vec3 faces)
        implements Steel {
    private Sheet sheet() {
        return new Sheet(centre, faces, size.get(0), size.get(1), thickness);
    }

    @Override
    public double mass() {
        return DENSITY * size.get(0) * size.get(1) * thickness * (open == null ? 1 : 1 - open);
    }

    @Override
    public List<Vec2> outline() {
        return sheet().outline();
    }

    @Override
    public List<Double> across() {
        return sheet().zRange();
    }
}
