// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.PlaneAxes;

/**
 * Where a bracket touches what it stands on: a flat patch that is seen edge-on in the side view.
 *
 * @param at where u and v are measured from, m, stowed
 * @param axes u along the side view, v along the pivot, n square to both
 * @param side of the plane that the bracket is on: 1 where n points, -1 behind; 0: not known
 * @param low lowest u and v of it, m
 * @param high highest u and v of it, m
 */
record Foot(Vec3 at, PlaneAxes axes, int side, Vec2 low, Vec2 high) {
    /** So far, as a share, a plane may lean along the pivot and still be seen edge-on. */
    private static final double LEAN = 0.02;

    /** A pin that is farther from the plane than this, m, tells on which side of it the bracket is. */
    private static final double CLEAR = 0.003;

    /** Where the pin is that a fastening holds, m, stowed; null when the mechanism has none of that name. */
    static @Nullable Vec2 pin(Design design, Fastening fastening) {
        Vec2 pivot = design.pivot().at();
        return Fastening.BEARINGS.contains(fastening.joint())
                ? pivot
                : design.drive().places(pivot).get(fastening.joint());
    }

    /** The foot of a weld; null when its plane is not seen edge-on. */
    static @Nullable Foot of(FilletWeld weld, List<FilletWeld.Seam> seams, @Nullable Vec2 pin) {
        List<Vec2> ends = new ArrayList<>();
        for (FilletWeld.Seam seam : seams) {
            ends.add(seam.from());
            ends.add(seam.to());
        }
        return of(weld.at(), weld.normal(), pin, ends);
    }

    /** The foot of bolts; null when their plane is not seen edge-on. */
    static @Nullable Foot of(Bolts bolts, @Nullable Vec2 pin) {
        return of(bolts.at(), bolts.normal(), pin, bolts.positions());
    }

    private static @Nullable Foot of(Vec3 at, Vec3 normal, @Nullable Vec2 pin, List<Vec2> points) {
        PlaneAxes axes = PlaneAxes.of(normal);
        if (!(Math.abs(axes.n().z()) <= LEAN)) {
            return null;
        }
        double off = pin == null ? 0 : pin.minus(at.xy()).dot(axes.n().xy());
        Vec2 low = points.get(0);
        Vec2 high = low;
        for (Vec2 p : points) {
            low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
            high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
        }
        return new Foot(at, axes, Math.abs(off) > CLEAR ? (int) Math.signum(off) : 0, low, high);
    }

    /** Half its size along u or v about the point that they are measured from, m. */
    double half(boolean alongU) {
        return alongU
                ? Math.max(Math.abs(low.x()), Math.abs(high.x()))
                : Math.max(Math.abs(low.y()), Math.abs(high.y()));
    }
}
