// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Filled;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.OpenDoors;

/**
 * Slurry with a level surface that runs out through the openings as fast as they let it, while the tank tips.
 *
 * <p>Force: the balance at rest is exact for every tilt and volume; what friction adds is read from a table over the tilt and three
 * volumes between all of the slurry and what the lip would keep. A workspace: it remembers the last level as the next guess.
 */
final class Liquid implements Load {
    private static final int LEVELS = 3;

    private final Contents contents;
    private final EmptyTank empty;
    private final OpenDoors doors;
    private final String name;
    private final double density;
    private final LinkageCurve mechanism;
    private final @Nullable Outlet outlet;
    private final double start;
    private final double[] kept;
    private final double[][] friction;
    private double guess = Double.NaN;
    private boolean dry;

    /**
     * The slurry of a design.
     *
     * @param outlet null: nothing leaves
     */
    Liquid(Design design, Contents contents, LinkageCurve mechanism, @Nullable Outlet outlet) {
        this.contents = contents;
        this.mechanism = mechanism;
        this.outlet = outlet;
        empty = EmptyTank.of(design, contents.solid());
        doors = new OpenDoors(design);
        name = (outlet == null ? CaseName.HELD : CaseName.DRAINING).key();
        density = design.slurry().mixtureDensity();
        start = contents.slurryVolume();
        Grid grid = mechanism.grid();
        kept = new double[grid.size()];
        friction = new double[LEVELS][grid.size()];
        double least = start;
        for (int i = 0; i < grid.size(); i++) {
            least = Math.min(least, lip(grid.tilt(i)));
            kept[i] = least;
            for (int k = 0; k < LEVELS; k++) {
                double volume = least + (start - least) * k / (LEVELS - 1);
                friction[k][i] = k > 0 && least == start ? friction[0][i] : friction(i, volume);
            }
        }
    }

    private double friction(int i, double volume) {
        double tilt = mechanism.grid().tilt(i);
        Weight w = raised(tilt, contents.liquid(tilt, volume, guess));
        double moving = mechanism.forces().force(i, w.mass(), w.centroid(), 1);
        double rest = mechanism.forces().force(i, w.mass(), w.centroid(), 0);
        return Double.isFinite(moving) ? moving - rest : 0;
    }

    /** Tank and contents. */
    private record Weight(double mass, Vec3 centroid) {}

    private Weight raised(double tilt, Filled filled) {
        return weight(doors.raised(name, empty, tilt), filled);
    }

    private Weight lowered(double tilt, Filled filled) {
        return weight(doors.lowered(name, empty, tilt), filled);
    }

    private Weight weight(EmptyTank alone, Filled filled) {
        guess = filled.plane().level();
        double mass = alone.mass() + density * filled.moments().volume();
        Vec3 first = alone.centroid()
                .times(alone.mass())
                .plus(filled.moments().first().times(density));
        return new Weight(mass, mass > 0 ? first.times(1 / mass) : Vec3.ZERO);
    }

    @Override
    public void runDry() {
        dry = true;
    }

    /** Volume before anything leaves, m3. */
    double start() {
        return start;
    }

    /** What stays in at a tilt however long one waits, m3; infinite when nothing is open. */
    double lip(double tilt) {
        Filled filled = outlet == null ? null : contents.liquidAtLip(tilt);
        return filled == null ? Double.POSITIVE_INFINITY : filled.moments().volume();
    }

    @Override
    public double excess(double tilt, double volume) {
        return Math.max(0, volume - lip(tilt));
    }

    @Override
    public double slide(double tilt) {
        return 0;
    }

    @Override
    public Standing at(double tilt, double volume) {
        double left = Math.max(0, volume);
        Filled filled = contents.liquid(tilt, left, guess);
        Weight w = raised(tilt, filled);
        double rest = mechanism.rest(tilt, w.mass(), w.centroid());
        Outlet.Flow flow = outlet == null || dry
                ? Outlet.Flow.NONE
                : outlet.at(tilt, contents.up(tilt), filled.plane().level());
        double level = filled.plane().level();
        return new Standing(rest + friction(tilt, volume), rest, left, flow.rate(), flow.vacuum(), level);
    }

    /** What friction adds while tipping, N: a parabola through the three volumes, straight between tilts. */
    private double friction(double tilt, double volume) {
        Grid grid = mechanism.grid();
        double least = grid.linear(kept, tilt);
        double span = start - least;
        double u = span > 1e-9 * start ? Math.max(0, Math.min(1, (volume - least) / span)) : 1;
        double low = grid.linear(friction[0], tilt);
        double middle = grid.linear(friction[1], tilt);
        double high = grid.linear(friction[2], tilt);
        return low * (1 - u) * (1 - 2 * u) + middle * 4 * u * (1 - u) + high * u * (2 * u - 1);
    }

    /** The same contents on the way back, with this volume left and nothing running out. */
    Load lowering(double left) {
        double volume = Math.max(0, left);
        Grid grid = mechanism.grid();
        double[] force = new double[grid.size()];
        double[] rest = new double[grid.size()];
        double[] volumes = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            Weight w = lowered(grid.tilt(i), contents.liquid(grid.tilt(i), volume, guess));
            rest[i] = mechanism.forces().force(i, w.mass(), w.centroid(), 0);
            double moving = mechanism.forces().force(i, w.mass(), w.centroid(), -1);
            force[i] = Double.isFinite(moving) ? moving : rest[i];
            volumes[i] = volume;
        }
        return new Listed(grid, force, rest, volumes);
    }
}
