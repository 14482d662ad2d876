// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import org.jspecify.annotations.Nullable;
import tipwright.analysis.Row;
import tipwright.geometry.Filled;
import tipwright.geometry.Level;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.Fill;
import tipwright.load.LoadState;

/**
 * What is in the tank at a tilt that need not be one of the steps.
 *
 * @param fill null: nothing that has a surface
 * @param mass of all that turns, kg
 * @param centroid of it, m, in the tank's axes as stowed
 */
record Inside(@Nullable Fill fill, double mass, Vec3 centroid) {
    /** m3. */
    double volume() {
        return fill == null ? 0 : fill.volume();
    }

    /** A volume of liquid, m3, of a density, kg/m3. */
    static Inside liquid(Contents contents, EmptyTank empty, double density, double tilt, double volume) {
        if (!(volume > 1e-9 * contents.capacity())) {
            return new Inside(null, empty.mass(), empty.centroid());
        }
        Filled filled = contents.liquid(tilt, volume, Double.NaN);
        double mass = empty.mass() + density * filled.moments().volume();
        Vec3 first = empty.centroid()
                .times(empty.mass())
                .plus(filled.moments().first().times(density));
        Fill fill = new Fill(Fill.Stuff.LIQUID, filled.plane(), filled.moments().volume());
        return new Inside(fill, mass, first.times(1 / mass));
    }

    /**
     * Between two rows of a load case.
     *
     * @param s share of the way from a to b, 0 to 1
     * @param tilt rad
     */
    static Inside between(Contents contents, Row a, Row b, double s, double tilt) {
        LoadState from = a.load();
        LoadState to = b.load();
        if (s <= 0 || letsGo(a, b)) {
            return new Inside(from.fill(), from.mass(), from.centroid());
        }
        if (s >= 1) {
            return new Inside(to.fill(), to.mass(), to.centroid());
        }
        double mass = (1 - s) * from.mass() + s * to.mass();
        Vec3 first =
                from.centroid().times((1 - s) * from.mass()).plus(to.centroid().times(s * to.mass()));
        return new Inside(fill(contents, from.fill(), to.fill(), s, tilt), mass, first.times(1 / mass));
    }

    /** Whether a stuck cake comes loose on the way: it is stuck until it does. */
    private static boolean letsGo(Row a, Row b) {
        Fill from = a.load().fill();
        Fill to = b.load().fill();
        if (from == null || to == null || from.stuff() == Fill.Stuff.LIQUID) {
            return from != null && to == null;
        }
        double turn =
                Math.acos(Math.min(1, from.surface().normal().dot(to.surface().normal())));
        return turn > 3 * (b.tilt() - a.tilt()) + 1e-9;
    }

    private static @Nullable Fill fill(
            Contents contents, @Nullable Fill from, @Nullable Fill to, double s, double tilt) {
        if (from == null || to == null) {
            return from;
        }
        Vec3 up = from.stuff() == Fill.Stuff.LIQUID
                ? contents.up(tilt)
                : from.surface()
                        .normal()
                        .times(1 - s)
                        .plus(to.surface().normal().times(s))
                        .unit();
        double volume = (1 - s) * from.volume() + s * to.volume();
        double guess = (1 - s) * from.surface().level() + s * to.surface().level();
        Filled filled = Level.filling(contents.solid(), up, volume, guess);
        return new Fill(from.stuff(), filled.plane(), volume);
    }
}
