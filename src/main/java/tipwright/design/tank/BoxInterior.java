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

    @Override
    public Opening open(Tank.Open side) {
        return side == Tank.Open.TOP
                ? Opening.side(side, size.z(), size.x(), centre.plus(new Vec3(0, size.y() / 2, 0)))
                : Opening.side(side, size.z(), size.y(), centre.plus(new Vec3(size.x() / 2, 0, 0)));
    }

    @Override
    public Interior withoutWall(Tank.Open side, double wall) {
        Vec3 way = Opening.out(side);
        return new BoxInterior(size.plus(way.times(wall)), centre.plus(way.times(wall / 2)));
    }
}
