// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * An outline in the side view, pulled out along z: skip, V-hopper, tub.
 *
 * @param outline m, stowed, either way round
 * @param width along z, m
 * @param z middle of the width, m
 */
@Choice("prism")
public record PrismInterior(
        @Note("Corners in the side view, in order, inside, tank stowed")
                @Counted(atLeast = 3, atMost = 500)
                @Measured(Kind.LENGTH)
                List<Vec2> outline,
        @Note("Along the pivot, inside") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Middle of the width") @Measured(value = Kind.LENGTH, preset = "0 mm") double z)
        implements Interior {
    /** Corners nearer to one level than this are level, m. */
    private static final double LEVEL = 1e-6;

    /** A side faces a way when it is within 20 deg of square to it: a rim that the tape shows a little out of level is one. */
    private static final double FACING = Math.cos(Math.toRadians(20));

    private static final double FLAT = 0.1;

    /** Whether a side of it turned round, or the width went, as the wall was taken off the outside. */
    public boolean turnedBy(PrismInterior outside) {
        int n = outline.size();
        for (int i = 0; i < n; i++) {
            Vec2 inner = outline.get((i + 1) % n).minus(outline.get(i));
            Vec2 outer = outside.outline.get((i + 1) % n).minus(outside.outline.get(i));
            if (!(inner.dot(outer) > 0) && outer.norm() > 0) {
                return true;
            }
        }
        return !(width > 0);
    }

    @Override
    public Solid solid() {
        return Polyhedron.prism(outline, width, z);
    }

    @Override
    public Interior inside(double wall, boolean outside) {
        return outside ? new PrismInterior(Inset.of(outline, wall), width - 2 * wall, z) : this;
    }

    @Override
    public @Nullable Opening open(Tank.Open side) {
        int edge = openEdge(side);
        if (edge < 0) {
            return null;
        }
        Vec2 one = corner(edge);
        Vec2 other = corner(edge + 1);
        Vec2 middle = one.plus(other).times(0.5);
        Vec2 out = Opening.out(side).xy();
        return Math.abs(out.dot(other.minus(one))) < LEVEL
                ? Opening.side(side, width, other.minus(one).norm(), new Vec3(middle.x(), middle.y(), z))
                : Opening.corners(side, List.of(at(one, -1), at(other, -1), at(other, 1), at(one, 1)));
    }

    @Override
    public Interior withoutWall(Tank.Open side, double wall) {
        int edge = openEdge(side);
        Vec2 out = outwards(edge);
        int n = outline.size();
        List<Vec2> moved = new ArrayList<>(outline);
        moved.set(edge, along(corner(edge), corner(edge + n - 1), out, wall));
        moved.set((edge + 1) % n, along(corner(edge + 1), corner(edge + 2), out, wall));
        return new PrismInterior(moved, width, z);
    }

    /** A corner moved on along its other side until it is so far out. */
    private static Vec2 along(Vec2 corner, Vec2 before, Vec2 out, double wall) {
        Vec2 way = corner.minus(before).unit();
        double slope = way.dot(out);
        return corner.plus(slope > FLAT ? way.times(wall / slope) : out.times(wall));
    }

    /** Number of the side that faces that way, of those the one farthest out; -1: none does, or two do alike. */
    private int openEdge(Tank.Open side) {
        Vec2 out = Opening.out(side).xy();
        int found = -1;
        double far = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            double middle = out.dot(corner(i).plus(corner(i + 1))) / 2;
            if (outwards(i).dot(out) > FACING && middle > far - LEVEL) {
                found = middle > far + LEVEL ? i : -1;
                far = Math.max(far, middle);
            }
        }
        return found;
    }

    /** Square to a side, out of the tank. */
    private Vec2 outwards(int edge) {
        double area = 0;
        for (int i = 0; i < outline.size(); i++) {
            area += corner(i).cross(corner(i + 1));
        }
        Vec2 way = corner(edge + 1).minus(corner(edge)).unit();
        return new Vec2(way.y(), -way.x()).times(Math.signum(area));
    }

    private Vec2 corner(int number) {
        return outline.get(number % outline.size());
    }

    private Vec3 at(Vec2 corner, int sign) {
        return new Vec3(corner.x(), corner.y(), z + sign * width / 2);
    }
}
