// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Filled;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Vec3;

/**
 * Settled solids in the tank. They settle flat. Up to the angle of repose they lie as they settled, but a slope at that angle, rising
 * from the point of the rim where they leave, is all that stays beside an open end. Beyond it the whole surface stands at that angle.
 * All planes are in the tank's axes as stowed.
 *
 * <p>Source: angle of repose of a cohesionless heap; common practice, no source for the value of wet grit.
 */
public final class Heap {
    /** How much the rim point where the solids leave is preferred to lie on the dump side, rad. */
    private static final double LEAN = Math.toRadians(2);

    private final Design design;
    private final Contents contents;
    private final double repose;
    private final Filled settled;
    /** The tank's inside with flat faces, and the volume of the settled solids in that. */
    private @Nullable Body body;

    private record Body(Polyhedron inside, double settled) {}

    /** The solids that settle out of all the slurry of a design. */
    public Heap(Design design, Contents contents) {
        this.design = design;
        this.contents = contents;
        this.repose = design.slurry().repose();
        this.settled = contents.heap(contents.start(), contents.cakeVolume(), Double.NaN);
    }

    /**
     * Solids as they lie.
     *
     * @param surface they are below this plane
     * @param slope and below this one; null: that is no limit
     * @param moments of what is left
     */
    public record Lying(Plane surface, @Nullable Plane slope, Moments moments) {}

    /** As they settled: the level surface, and what is below it. */
    Filled atRest() {
        return settled;
    }

    /** As they settled, before anything moves. */
    public Lying settled() {
        return new Lying(settled.plane(), null, settled.moments());
    }

    /**
     * How they lie at a tilt.
     *
     * @param before volume that was still there at a smaller tilt, m3
     * @param guess level of the surface at a tilt nearby, m, or NaN
     */
    public Lying at(double tilt, double before, double guess) {
        Plane slope = slopeAtLip(tilt);
        if (contents.slope(tilt) < repose) {
            return slope == null ? settled() : cut(slope);
        }
        if (slope != null) {
            Moments kept = contents.solid().below(slope);
            if (kept.volume() < before) {
                return new Lying(slope, null, kept);
            }
        }
        Filled heap = contents.heap(tilt, before, guess);
        return new Lying(heap.plane(), null, heap.moments());
    }

    /** The most that can stay in at a tilt, m3, whatever was there before. */
    public double kept(double tilt) {
        Plane slope = slopeAtLip(tilt);
        if (slope == null) {
            return Double.POSITIVE_INFINITY;
        }
        return contents.slope(tilt) < repose
                ? cut(slope).moments().volume()
                : contents.solid().below(slope).volume();
    }

    /** The plane at the angle of repose through the rim point where the solids leave; null when nothing is open. */
    private @Nullable Plane slopeAtLip(double tilt) {
        Vec3 lowest = contents.heapNormal(tilt, contents.slope(tilt) - LEAN);
        Vec3 lip = null;
        for (Opening opening : design.tank().openings()) {
            if (Contents.open(opening, tilt)) {
                Vec3 point = opening.lipPoint(lowest);
                lip = lip == null || lowest.dot(point) < lowest.dot(lip) ? point : lip;
            }
        }
        return lip == null ? null : Plane.through(lip, contents.heapNormal(tilt, repose));
    }

    private Lying cut(Plane slope) {
        Body cake = body();
        Moments part = cake.inside.below(settled.plane(), slope);
        if (!(part.volume() < cake.settled * (1 - 1e-9))) {
            return settled();
        }
        // The faces are flat: the volume is brought to that of the exact solid.
        double scale = settled.moments().volume() / cake.settled;
        return new Lying(
                settled.plane(),
                slope,
                new Moments(part.volume() * scale, part.first().times(scale), 0));
    }

    private Body body() {
        Body made = body;
        if (made == null) {
            Polyhedron inside = contents.vessel().fine();
            made = new Body(inside, inside.below(settled.plane()).volume());
            body = made;
        }
        return made;
    }
}
