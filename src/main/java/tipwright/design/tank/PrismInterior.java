// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

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
        Vec3 out = Opening.out(side);
        double far = outline.stream().mapToDouble(p -> out.xy().dot(p)).max().orElse(0);
        List<Vec2> edge =
                outline.stream().filter(p -> out.xy().dot(p) > far - LEVEL).toList();
        if (edge.size() != 2) {
            return null;
        }
        Vec2 middle = edge.get(0).plus(edge.get(1)).times(0.5);
        return Opening.side(side, width, edge.get(1).minus(edge.get(0)).norm(), new Vec3(middle.x(), middle.y(), z));
    }

    @Override
    public Interior withoutWall(Tank.Open side, double wall) {
        Vec2 out = Opening.out(side).xy();
        double far = outline.stream().mapToDouble(out::dot).max().orElse(0);
        return new PrismInterior(
                outline.stream()
                        .map(p -> out.dot(p) > far - LEVEL ? p.plus(out.times(wall)) : p)
                        .toList(),
                width,
                z);
    }
}
