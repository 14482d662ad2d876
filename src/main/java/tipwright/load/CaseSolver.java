// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Filled;

/** Works out the built-in load cases, one after the other, over rising tilts. */
final class CaseSolver {
    private final Contents contents;
    private final Heap heap;
    private final Weights weights;
    private final double[] tilts;
    private final double release;

    CaseSolver(Design design, Contents contents, Heap heap, Weights weights, double[] tilts) {
        this.contents = contents;
        this.heap = heap;
        this.weights = weights;
        this.tilts = tilts;
        this.release = design.slurry().release();
    }

    LoadCase held(double normalTo) {
        double volume = contents.slurryVolume();
        List<LoadState> states = new ArrayList<>(tilts.length);
        LevelGuess ahead = new LevelGuess();
        for (double tilt : tilts) {
            Filled filled = contents.liquid(tilt, volume, ahead.at(tilt));
            ahead.found(tilt, filled.plane().level());
            states.add(weights.liquid(filled));
        }
        return new LoadCase("held", normalTo, states, volume);
    }

    LoadCase draining() {
        double start = contents.slurryVolume();
        double volume = start;
        LevelGuess ahead = new LevelGuess();
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            Filled filled = contents.liquidAtLip(tilt);
            if (filled == null || filled.moments().volume() >= volume) {
                filled = contents.liquid(tilt, volume, ahead.at(tilt));
            }
            volume = Math.min(volume, filled.moments().volume());
            ahead.found(tilt, filled.plane().level());
            states.add(weights.liquid(filled));
        }
        return new LoadCase("draining", LoadCase.ALWAYS, states, start);
    }

    LoadCase heaped() {
        double start = contents.cakeVolume();
        double volume = start;
        LevelGuess ahead = new LevelGuess();
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            Heap.Lying lying = heap.at(tilt, volume, ahead.at(tilt));
            volume = Math.min(volume, lying.moments().volume());
            ahead.found(tilt, lying.surface().level());
            states.add(cake(lying));
        }
        return new LoadCase("heaped", LoadCase.ALWAYS, states, start);
    }

    LoadCase caked(LoadCase heaped) {
        double volume = contents.cakeVolume();
        LoadState stuck = cake(heap.settled());
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (int i = 0; i < tilts.length; i++) {
            states.add(
                    tilts[i] < release - TiltGrid.SAME ? stuck : heaped.states().get(i));
        }
        return new LoadCase("caked", LoadCase.ALWAYS, states, volume);
    }

    LoadCase empty() {
        return same("empty", weights.none());
    }

    LoadCase heel(LoadCase heaped) {
        LoadState last = heaped.states().get(tilts.length - 1);
        return same("heel", last);
    }

    private LoadCase same(String name, LoadState state) {
        return new LoadCase(name, LoadCase.ALWAYS, Collections.nCopies(tilts.length, state), state.volume());
    }

    private LoadState cake(Heap.Lying lying) {
        return weights.cake(lying.surface(), lying.slope(), lying.moments());
    }
}
