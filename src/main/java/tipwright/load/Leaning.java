// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Filled;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/**
 * What is in the tank when gravity points elsewhere than on the design's own ground: a slope any way round, or a unit that leans. The
 * surface of a liquid is found anew, square to that gravity. Solids that are stuck stay as they are; loose ones stand no steeper
 * against it than they do on the design's ground, or than their angle of repose. A workspace for one design.
 */
public final class Leaning {
    private final Design design;
    private final Contents contents;
    private final EmptyTank empty;
    private final Weights weights;
    private final Bed bed;
    private final OpenDoors doors;

    /**
     * For the contents of a design.
     *
     * @param vessel its tank's
     */
    public Leaning(Design design, Vessel vessel) {
        this.design = design;
        this.contents = new Contents(design, vessel);
        this.empty = vessel.empty(design);
        this.weights = new Weights(design, contents, empty);
        this.bed = new Bed(vessel);
        this.doors = new OpenDoors(design);
    }

    /**
     * Tank and contents.
     *
     * @param load which of the design's load cases
     * @param own its state at this tilt on the design's own ground
     * @param tilt rad
     * @param up unit vector against gravity, in the axes of the machine as it stands (x to the dump side, y square to its
     *     ground, z along the pivot)
     */
    public LoadState at(LoadCase load, LoadState own, double tilt, Vec3 up) {
        Vec3 inTank = up.tilted(-tilt);
        LoadState inside = inside(load, own, tilt, inTank);
        Vec3 hung = doors.moved(load.name(), tilt, inTank);
        return inside == null ? own.moved(hung.minus(doors.moved(load.name(), tilt))) : inside.moved(hung);
    }

    /** Tank and contents, its doors shut; null: nothing in it moves. */
    private @Nullable LoadState inside(LoadCase load, LoadState own, double tilt, Vec3 inTank) {
        Fill fill = own.fill();
        if (fill == null) {
            return null;
        }
        if (fill.bed() != null) {
            return layers(load, fill, fill.bed(), tilt, inTank);
        }
        if (fill.stuff() == Fill.Stuff.CAKE) {
            return fill.slope() == null && loose(load, tilt)
                    ? cake(fill, inTank, design.slurry().repose())
                    : null;
        }
        double density = (own.mass() - empty.mass()) / fill.volume();
        if (load.name().equals("draining")) {
            Filled lip = contents.belowLip(tilt, inTank);
            if (lip != null && lip.moments().volume() < fill.volume()) {
                return weights.liquid(lip, density);
            }
        }
        return weights.liquid(contents.level(inTank, fill.volume(), turned(fill.surface(), inTank)), density);
    }

    private boolean loose(LoadCase load, double tilt) {
        boolean released = tilt >= design.slurry().release() - TiltGrid.SAME;
        return switch (load.name()) {
            case "heaped", "heel", "slid" -> true;
            case "caked", "settled" -> released;
            default -> false;
        };
    }

    private LoadState cake(Fill fill, Vec3 up, double steepest) {
        Filled lying = lying(fill.surface(), fill.volume(), up, steepest);
        return weights.cake(lying.plane(), null, lying.moments());
    }

    private LoadState layers(LoadCase load, Fill fill, Plane surface, double tilt, Vec3 up) {
        Filled cake = new Filled(surface, contents.solid().below(surface));
        if (loose(load, tilt)) {
            double now = angle(surface.normal(), contents.up(tilt));
            cake = lying(surface, cake.moments().volume(), up, Math.max(now, Layers.WET));
        }
        double water = Math.max(0, fill.volume() - cake.moments().volume());
        Filled over = bed.water(cake, up, water, turned(fill.surface(), up));
        return weights.layers(cake, over, design.slurry().liquidDensity());
    }

    /** Where a surface comes to lie, nearly, that turns about its point next to the middle of the tank: its level, m. */
    private double turned(Plane surface, Vec3 normal) {
        Vec3 middle = contents.solid().whole().centroid();
        return normal.dot(middle.minus(surface.normal().times(surface.height(middle))));
    }

    /** Solids under their surface, made as flat as they must be. */
    private Filled lying(Plane surface, double volume, Vec3 up, double steepest) {
        Vec3 normal = flattened(surface.normal(), up, steepest);
        return normal == null
                ? new Filled(surface, contents.solid().below(surface))
                : contents.level(normal, volume, turned(surface, normal));
    }

    /** The normal turned towards up until it stands no steeper; null: it does not as it is. */
    private static @Nullable Vec3 flattened(Vec3 normal, Vec3 up, double steepest) {
        if (angle(normal, up) <= steepest + TiltGrid.SAME) {
            return null;
        }
        Vec3 side = normal.minus(up.times(normal.dot(up)));
        double length = side.norm();
        return length < 1e-9 ? up : up.times(Math.cos(steepest)).plus(side.times(Math.sin(steepest) / length));
    }

    private static double angle(Vec3 a, Vec3 b) {
        return Math.atan2(a.cross(b).norm(), a.dot(b));
    }
}
