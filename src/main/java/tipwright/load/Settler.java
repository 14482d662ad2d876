// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Filled;
import tipwright.geometry.Moments;
import tipwright.geometry.Vec3;

/** Works out the built-in load cases, one after the other, over rising tilts. */
final class Settler {
    private final Contents contents;
    private final Heap heap;
    private final EmptyTank empty;
    private final double[] tilts;
    private final double slurryDensity;
    private final double cakeDensity;
    private final double release;

    Settler(Design design, Contents contents, Heap heap, EmptyTank empty, double[] tilts) {
        this.contents = contents;
        this.heap = heap;
        this.empty = empty;
        this.tilts = tilts;
        this.slurryDensity = design.slurry().mixtureDensity();
        this.cakeDensity = design.slurry().cakeDensity();
        this.release = design.slurry().release();
    }

    LoadCase held() {
        double volume = contents.slurryVolume();
        List<LoadState> states = new ArrayList<>(tilts.length);
        double guess = Double.NaN;
        for (double tilt : tilts) {
            Filled filled = contents.liquid(tilt, volume, guess);
            guess = filled.plane().level();
            states.add(liquid(filled));
        }
        return new LoadCase(
                "held", "all the slurry stays in: the door is shut or the outlet is blocked", states, volume);
    }

    LoadCase draining() {
        double start = contents.slurryVolume();
        double volume = start;
        double guess = Double.NaN;
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            Filled filled = contents.liquidAtLip(tilt);
            if (filled == null || filled.moments().volume() >= volume) {
                filled = contents.liquid(tilt, volume, guess);
            }
            volume = Math.min(volume, filled.moments().volume());
            guess = filled.plane().level();
            states.add(liquid(filled));
        }
        return new LoadCase("draining", "the slurry runs out as soon as it can: the normal dump", states, start);
    }

    LoadCase heaped() {
        double start = contents.cakeVolume();
        double volume = start;
        double guess = Double.NaN;
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            Heap.Lying lying = heap.at(tilt, volume, guess);
            volume = Math.min(volume, lying.moments().volume());
            guess = lying.surface().level();
            states.add(cake(lying));
        }
        return new LoadCase(
                "heaped", "settled solids slide out at their angle of repose; the liquid is gone", states, start);
    }

    LoadCase caked(LoadCase heaped) {
        double volume = contents.cakeVolume();
        LoadState stuck = cake(heap.settled());
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (int i = 0; i < tilts.length; i++) {
            states.add(tilts[i] < release ? stuck : heaped.states().get(i));
        }
        return new LoadCase("caked", "settled solids stick where they lie; the liquid is gone", states, volume);
    }

    LoadCase empty() {
        return same("empty", "the tank alone", new LoadState(empty.mass(), empty.centroid(), null, 0));
    }

    LoadCase heel(LoadCase heaped) {
        LoadState last = heaped.states().get(tilts.length - 1);
        return same("heel", "the tank with what the settled solids leave behind, on the way back", last);
    }

    private LoadCase same(String name, String about, LoadState state) {
        return new LoadCase(name, about, Collections.nCopies(tilts.length, state), state.volume());
    }

    private LoadState cake(Heap.Lying lying) {
        Fill fill = new Fill(
                Fill.Stuff.CAKE, lying.surface(), lying.slope(), lying.moments().volume());
        return state(fill, lying.moments(), cakeDensity);
    }

    private LoadState liquid(Filled filled) {
        Fill fill = new Fill(Fill.Stuff.LIQUID, filled.plane(), filled.moments().volume());
        return state(fill, filled.moments(), slurryDensity);
    }

    private LoadState state(Fill fill, Moments part, double density) {
        if (!(part.volume() > 1e-12 * contents.capacity())) {
            return new LoadState(empty.mass(), empty.centroid(), null, 0);
        }
        double mass = empty.mass() + density * part.volume();
        Vec3 first = empty.centroid().times(empty.mass()).plus(part.first().times(density));
        return new LoadState(mass, first.times(1 / mass), fill, part.volume());
    }
}
