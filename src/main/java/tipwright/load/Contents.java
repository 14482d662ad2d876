// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Filled;
import tipwright.geometry.Hollows;
import tipwright.geometry.Level;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/**
 * How liquid and settled solids lie in the tank at a tilt. All vectors are in the tank's axes as stowed: gravity turns, the tank
 * does not. Immutable.
 */
public final class Contents {
    /** Points along the rim of an opening, at least, to find what drains over the middle of a side. */
    private static final int POINTS = 64;

    private final Design design;
    private final Vessel vessel;
    private final Solid solid;
    private final Moments whole;
    private final Vec3 upStowed;
    private final Vec3 dumpwardStowed;
    private final double start;

    /** The contents of a design's tank. */
    public Contents(Design design) {
        this(design, Vessel.of(design));
    }

    /** The contents of a design's tank whose inside is known. */
    public Contents(Design design, Vessel vessel) {
        this.design = design;
        this.vessel = vessel;
        this.solid = vessel.solid();
        this.whole = solid.whole();
        this.upStowed = design.site().up();
        this.dumpwardStowed = new Vec3(upStowed.y(), -upStowed.x(), 0).unit();
        this.start = design.tilt().from();
    }

    /** The interior. */
    public Solid solid() {
        return solid;
    }

    Vessel vessel() {
        return vessel;
    }

    /** Volume of the interior, m3. */
    public double capacity() {
        return whole.volume();
    }

    /** Volume of the slurry before anything leaves, m3. */
    public double slurryVolume() {
        return Math.min(capacity(), design.slurry().volumeIn(capacity()));
    }

    /** Share of the interior that the slurry fills before anything leaves, 0 to 1. */
    public double fill() {
        return slurryVolume() / capacity();
    }

    /** Volume of the cake that settles out of all the slurry, m3. */
    public double cakeVolume() {
        return slurryVolume() * design.slurry().cakeShare();
    }

    /** Unit vector against gravity at a tilt, in the tank's axes. */
    public Vec3 up(double tilt) {
        return upStowed.tilted(-tilt);
    }

    /**
     * Unit normal of a heap's surface that slopes down towards the dump side.
     *
     * @param slope of the surface, rad
     */
    public Vec3 heapNormal(double tilt, double slope) {
        return up(tilt).times(Math.cos(slope)).plus(dumpwardStowed.tilted(-tilt).times(Math.sin(slope)));
    }

    /** The level surface of a volume of liquid, and what is below it. */
    public Filled liquid(double tilt, double volume, double guess) {
        return level(up(tilt), volume, guess);
    }

    /** The same with the normal of the surface given, in the tank's axes. */
    Filled level(Vec3 normal, double volume, double guess) {
        return Level.filling(solid, normal, volume, guess);
    }

    /** All that can stand in the tank below the lowest rim of the openings that are open; null when none is. */
    public @Nullable Filled liquidAtLip(double tilt) {
        return belowLip(tilt, up(tilt));
    }

    /**
     * Settled solids that keep the surface of rest: as settled, level at the first tilt, until it has tipped on by the angle of
     * repose, from there on at that slope. Source: angle of repose of a cohesionless heap; common practice, no source for the wet value.
     */
    public Filled heap(double tilt, double volume, double guess) {
        return heap(tilt, slope(tilt), volume, guess);
    }

    /** Solids whose surface slopes down to the dump side at an angle, rad. */
    Filled heap(double tilt, double slope, double volume, double guess) {
        return Level.filling(solid, heapNormal(tilt, slope), volume, guess);
    }

    /** Slope of the surface of solids that settled at the first tilt, rad: what it has tipped since, at most their repose. */
    public double slope(double tilt) {
        return Math.max(0, Math.min(tilt - start, design.slurry().repose()));
    }

    /** First tilt of the range, rad: how the tank stands while it is filled and its solids settle. */
    public double start() {
        return start;
    }

    /** The same for another normal of the surface, in the tank's axes. */
    @Nullable
    Filled belowLip(double tilt, Vec3 normal) {
        double lip = Double.POSITIVE_INFINITY;
        for (Opening opening : design.tank().openings()) {
            if (open(opening, tilt)) {
                lip = Math.min(lip, opening.lip(normal));
            }
        }
        if (lip == Double.POSITIVE_INFINITY) {
            return null;
        }
        Plane plane = new Plane(normal, lip);
        return new Filled(plane, solid.below(plane));
    }

    /**
     * What hollows of the inside keep that cannot get over their edge to an opening that is open, m3, with what is below its lip; 0 where
     * nothing is open or the inside has none.
     *
     * @param normal of the surface of what they keep, in the tank's axes
     * @param wetted whether anything has come to a place
     */
    double hollows(double tilt, Vec3 normal, Predicate<Vec3> wetted) {
        List<Opening> openings = design.tank().openings();
        if (solid.convex() || openings.stream().noneMatch(o -> open(o, tilt))) {
            return 0;
        }
        List<List<Vec3>> rims = openings.stream().map(Contents::along).toList();
        Hollows hollows = vessel.kept(Hollows.class, rims, () -> Hollows.of(solid.mesh(0), rims));
        return hollows.kept(normal, o -> open(openings.get(o), tilt), wetted);
    }

    /** Whether an opening is open at a tilt, rad. */
    static boolean open(Opening opening, double tilt) {
        return opening.opensAt() <= tilt + 1e-9;
    }

    /** Points along the sides of an opening. */
    private static List<Vec3> along(Opening opening) {
        List<Vec3> rim = opening.rimPoints();
        List<Vec3> all = new ArrayList<>();
        int parts = (POINTS + rim.size() - 1) / Math.max(1, rim.size());
        for (int i = 0; i < rim.size(); i++) {
            Vec3 side = rim.get((i + 1) % rim.size()).minus(rim.get(i));
            for (int k = 0; k < parts; k++) {
                all.add(rim.get(i).plus(side.times((double) k / parts)));
            }
        }
        return all;
    }
}
