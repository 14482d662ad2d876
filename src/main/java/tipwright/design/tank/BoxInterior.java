// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A box along the axes.
 *
 * @param size m
 * @param centre m, stowed
 */
@Choice("box")
public record BoxInterior(
        @Note("Along x, y and z, inside") @Measured(value = Kind.LENGTH, above = "0 mm", within = true) Vec3 size,
        @Note("Its middle, tank stowed") @Measured(Kind.LENGTH) Vec3 centre)
        implements Interior {
    @Override
    public Solid solid() {
        return Polyhedron.box(size, centre);
    }

    @Override
    public Interior inside(double wall, boolean outside) {
        Vec3 walls = new Vec3(2 * wall, 2 * wall, 2 * wall);
        return outside ? new BoxInterior(size.minus(walls), centre) : this;
    }
}
