// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Filled;
import tipwright.geometry.Level;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/**
 * The inside of a tank cut by two planes: free water over settled solids, or a part of them. A workspace. A curved tank is cut as a fine mesh;
 * what comes of it is brought to the volume and the centroid that the exact solid has for all that is on that side of the cake.
 */
final class Bed {
    private final Vessel vessel;
    private final Solid solid;
    private @Nullable Plane lastOver;
    private Moments lastRough = Moments.NOTHING;

    Bed(Vessel vessel) {
        this.vessel = vessel;
        this.solid = vessel.solid();
    }

    /** The part of the cake that is below another plane, in exact step with the whole cake. */
    Moments part(Filled cake, Plane plane) {
        Polyhedron body = vessel.rough();
        return matched(body.below(plane, cake.plane()), body.below(cake.plane()), cake.moments());
    }

    /**
     * Free water over a cake.
     *
     * @param up unit vector against gravity, in the tank's axes
     * @param volume of the water, m3
     * @param guess level of its surface nearby, m, or NaN
     */
    Filled water(Filled cake, Vec3 up, double volume, double guess) {
        Polyhedron body = vessel.rough();
        Moments whole = solid.whole();
        Moments room = new Moments(
                whole.volume() - cake.moments().volume(),
                whole.first().minus(cake.moments().first()),
                0);
        Plane over = new Plane(cake.plane().normal().times(-1), -cake.plane().level());
        Moments rough = rough(body, over);
        Range range = solid.extent(up);
        return Level.filling(p -> matched(body.below(p, over), rough, room), range, room, up, volume, guess);
    }

    /** What the mesh holds over a cake; a stuck one is asked for at every tilt. */
    private Moments rough(Polyhedron body, Plane over) {
        if (lastOver == null || !over.same(lastOver)) {
            lastRough = body.below(over);
            lastOver = over;
        }
        return lastRough;
    }

    /** A part of a rough body as the same share of the exact one. */
    private static Moments matched(Moments part, Moments rough, Moments exact) {
        if (!(rough.volume() > 0)) {
            return Moments.NOTHING;
        }
        double scale = exact.volume() / rough.volume();
        double share = part.volume() / rough.volume();
        Vec3 off = exact.first().minus(rough.first().times(scale));
        return new Moments(
                part.volume() * scale, part.first().times(scale).plus(off.times(share)), part.section() * scale);
    }
}
