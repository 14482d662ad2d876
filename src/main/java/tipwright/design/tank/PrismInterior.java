// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
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
}
