// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Loaded;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.MeshInside;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A triangle mesh from an STL file: the inside, an open shell with one flat mouth, or the tank's steel as a solid.
 *
 * @param file beside the design
 * @param unit of length of the file's numbers
 * @param at where the mesh's origin is, m, stowed
 * @param inside what the file holds, scaled and placed
 */
@Choice("mesh")
public record MeshInterior(
        @Note("The STL file, beside this file") String file,
        @Note("Unit of length of the numbers in the STL file: mm, in, ...") String unit,
        @Note("Where the mesh's origin is, tank stowed") @Measured(value = Kind.LENGTH) Vec3 at,
        @Loaded MeshInside inside)
        implements Interior {
    @Override
    public Solid solid() {
        return inside.solid();
    }

    @Override
    public List<Vec3> mouth() {
        return inside.mouth();
    }
}
