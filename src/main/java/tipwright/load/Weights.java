// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Filled;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/** Weighs the empty tank with what is in it. */
final class Weights {
    private final Contents contents;
    private final EmptyTank empty;
    private final double slurryDensity;
    private final double cakeDensity;

    Weights(Design design, Contents contents, EmptyTank empty) {
        this.contents = contents;
        this.empty = empty;
        this.slurryDensity = design.slurry().mixtureDensity();
        this.cakeDensity = design.slurry().cakeDensity();
    }

    /** Tank and slurry below its level. */
    LoadState liquid(Filled filled) {
        return liquid(filled, slurryDensity);
    }

    /** Tank and a liquid of another density, kg/m3. */
    LoadState liquid(Filled filled, double density) {
        Fill fill = new Fill(Fill.Stuff.LIQUID, filled.plane(), filled.moments().volume());
        return state(fill, filled.moments(), density);
    }

    /** Tank and all of the slurry as one rigid block. */
    LoadState block(Filled filled) {
        Fill fill = new Fill(Fill.Stuff.CAKE, filled.plane(), filled.moments().volume());
        return state(fill, filled.moments(), slurryDensity);
    }

    /** Tank and cake below a surface and, unless null, a second plane. */
    LoadState cake(Plane surface, @Nullable Plane slope, Moments part) {
        return state(new Fill(Fill.Stuff.CAKE, surface, slope, part.volume()), part, cakeDensity);
    }

    /**
     * Tank, cake and the free water over it. Nothing has left, so all weighs what the slurry did.
     *
     * @param cake its surface and what is below
     * @param water its level and what is between
     */
    LoadState layers(Filled cake, Filled water, double liquidDensity) {
        double volume = cake.moments().volume() + water.moments().volume();
        double total = slurryDensity * volume;
        double ofWater = liquidDensity * water.moments().volume();
        double density = (total - ofWater) / cake.moments().volume();
        Vec3 first = empty.centroid()
                .times(empty.mass())
                .plus(cake.moments().first().times(density))
                .plus(water.moments().first().times(liquidDensity));
        double mass = empty.mass() + total;
        Fill fill = new Fill(Fill.Stuff.LIQUID, water.plane(), null, cake.plane(), volume);
        return new LoadState(mass, first.times(1 / mass), fill, volume);
    }

    /** The tank alone. */
    LoadState none() {
        return new LoadState(empty.mass(), empty.centroid(), null, 0);
    }

    private LoadState state(Fill fill, Moments part, double density) {
        if (!(part.volume() > 1e-12 * contents.capacity())) {
            return none();
        }
        double mass = empty.mass() + density * part.volume();
        Vec3 first = empty.centroid().times(empty.mass()).plus(part.first().times(density));
        return new LoadState(mass, first.times(1 / mass), fill, part.volume());
    }
}
