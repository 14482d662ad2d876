// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Filled;

/**
 * Settled solids with the liquid still on top, the outlet shut: stuck where they settled, or run against the dump end. Pore water
 * belongs to the cake. A cake that has run stands at its angle of repose; under water that is {@link #WET} or the given one. Both ends
 * are looked at: as flat as that it weighs most to the dump side, which is the case slid; the steeper it stands the less, down to the
 * cake that has not run, and the case settled has it stuck, and from its release on at the given angle. Where the design leaves that case out,
 * slid is whichever of the two weighs more about the pivot at that tilt. Source: sand filled with water stands at 15 to 30 degrees (a
 * table of angles of repose).
 */
final class Layers {
    /** The flattest that wet solids come to rest at, rad. */
    static final double WET = Math.toRadians(15);

    private final Design design;
    private final Contents contents;
    private final Weights weights;
    private final Bed bed;
    private final Filled settled;
    private final double[] tilts;
    private final double water;

    Layers(Design design, Contents contents, Weights weights, Bed bed, Filled settled, double[] tilts) {
        this.design = design;
        this.contents = contents;
        this.weights = weights;
        this.bed = bed;
        this.settled = settled;
        this.tilts = tilts;
        this.water = Math.max(0, contents.slurryVolume() - contents.cakeVolume());
    }

    LoadCase settled(double normalTo) {
        double release = design.slurry().release();
        double repose = design.slurry().repose();
        Guess guess = new Guess();
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            boolean stuck = tilt < release - TiltGrid.SAME;
            states.add(at(tilt, stuck ? settled : run(tilt, repose, guess), guess));
        }
        return new LoadCase("settled", normalTo, states, contents.slurryVolume());
    }

    LoadCase slid(double normalTo) {
        double steep = design.slurry().repose();
        double flat = Math.min(WET, steep);
        boolean both = design.cases().skip().contains("settled");
        Guess guess = new Guess();
        Guess other = new Guess();
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (double tilt : tilts) {
            LoadState one = at(tilt, run(tilt, flat, guess), guess);
            if (both && tilt - contents.start() > flat) {
                LoadState two = at(tilt, run(tilt, steep, other), other);
                one = LoadState.worse(one, two, design.pivot().at(), contents.up(tilt));
            }
            states.add(one);
        }
        return new LoadCase("slid", normalTo, states, contents.slurryVolume());
    }

    /** Levels of the tilt before. */
    private static final class Guess {
        private final LevelGuess cake = new LevelGuess();
        private final LevelGuess water = new LevelGuess();
    }

    private Filled run(double tilt, double repose, Guess guess) {
        double slope = Math.max(0, Math.min(tilt - contents.start(), repose));
        if (slope == 0) {
            return settled;
        }
        Filled cake = contents.heap(tilt, slope, settled.moments().volume(), guess.cake.at(tilt));
        guess.cake.found(tilt, cake.plane().level());
        return cake;
    }

    private LoadState at(double tilt, Filled cake, Guess guess) {
        Filled over = bed.water(cake, contents.up(tilt), water, guess.water.at(tilt));
        guess.water.found(tilt, over.plane().level());
        return weights.layers(cake, over, design.slurry().liquidDensity());
    }
}
