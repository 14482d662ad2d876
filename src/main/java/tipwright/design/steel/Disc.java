// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A round plate.
 *
 * @param diameter m
 * @param hole diameter of a hole in its middle, m; null: none
 * @param thickness m
 * @param centre its middle, m, stowed
 * @param faces direction square to it, any length
 */
@Choice("disc")
public record Disc(
        @Note("Outside") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Of a hole in its middle") @Measured(value = Kind.LENGTH, atLeast = "0 mm") @Nullable Double hole,
        @Note("As bought: 16 ga, 3/16 plate, 5 mm") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                double thickness,
        @Note("Its middle, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Direction square to it: y for a piece that lies flat") @Measured(Kind.RATIO) Vec3 faces)
        implements Steel {
    private Sheet sheet() {
        return new Sheet(centre, faces, diameter, diameter, thickness);
    }

    @Override
    public double mass() {
        return DENSITY * Math.PI / 4 * (diameter * diameter - (hole == null ? 0 : hole * hole)) * thickness;
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
