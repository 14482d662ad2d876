// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A welded wire mesh.
 *
 * @param size in the side view and along the pivot, m
 * @param wire diameter, m
 * @param spacing of the wires, both ways, m
 * @param centre its middle, m, stowed
 * @param faces direction square to it, any length
 */
@Choice("mesh")
public record WireMesh(
        @Note("Two sizes: in the side view and along the pivot; of a piece that faces z along x and y")
                @Counted(atLeast = 2, atMost = 2)
                @Measured(value = Kind.LENGTH, above = "0 mm")
                List<Double> size,
        @Note("Diameter of the wire") @Measured(value = Kind.LENGTH, above = "0 mm") double wire,
        @Note("From wire to wire, both ways") @Measured(value = Kind.LENGTH, above = "0 mm") double spacing,
        @Note("Its middle, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Direction square to it: y for a piece that lies flat") @Measured(Kind.RATIO) Vec3 faces)
        implements Steel {
    private Sheet sheet() {
        return new Sheet(centre, faces, size.get(0), size.get(1), 2 * wire);
    }

    @Override
    public double mass() {
        return DENSITY * size.get(0) * size.get(1) * 2 * Math.PI / 4 * wire * wire / spacing;
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
