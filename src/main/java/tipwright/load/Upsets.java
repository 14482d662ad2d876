// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Filled;
import tipwright.geometry.Plane;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/** Loads that come about only if something goes wrong: frozen, full of rainwater, blocked on the way. */
final class Upsets {
    private static final int PARTS = 8;
    private static final int HALVINGS = 6;
    private static final double UPRIGHT = 0.5;

    private final Design design;
    private final Contents contents;
    private final Weights weights;
    private final double[] tilts;

    Upsets(Design design, Contents contents, Weights weights, double[] tilts) {
        this.design = design;
        this.contents = contents;
        this.weights = weights;
        this.tilts = tilts;
    }

    LoadCase frozen() {
        double volume = contents.slurryVolume();
        LoadState block = weights.block(contents.liquid(contents.start(), volume, Double.NaN));
        return new LoadCase("frozen", LoadCase.NEVER, Collections.nCopies(tilts.length, block), volume);
    }

    /** Water added up to the rim of an opening that faces up, else until the tank is full; null when no more goes in. */
    @Nullable
    LoadCase brim() {
        double slurry = contents.slurryVolume();
        double full = rim();
        if (full <= slurry * (1 + 1e-9)) {
            return null;
        }
        double mass =
                design.slurry().mixtureDensity() * slurry + design.slurry().liquidDensity() * (full - slurry);
        List<LoadState> states = new ArrayList<>(tilts.length);
        LevelGuess ahead = new LevelGuess();
        for (double tilt : tilts) {
            Filled filled = contents.liquid(tilt, full, ahead.at(tilt));
            ahead.found(tilt, filled.plane().level());
            states.add(weights.liquid(filled, mass / full));
        }
        return new LoadCase("brim", LoadCase.NEVER, states, full);
    }

    private double rim() {
        Vec3 up = contents.up(contents.start());
        double full = contents.capacity();
        for (Opening opening : design.tank().openings()) {
            boolean open = opening.door() == null && opening.opensAt() <= contents.start() + TiltGrid.SAME;
            if (open && facesUp(opening, up)) {
                Plane rim = new Plane(up, opening.lip(up));
                full = Math.min(full, contents.solid().below(rim).volume());
            }
        }
        return full;
    }

    /** By its normal; where only corners are given, by its plane and by lying over the middle of the tank. */
    private boolean facesUp(Opening opening, Vec3 up) {
        Vec3 out = opening.normal();
        if (out != null) {
            return out.unit().dot(up) > UPRIGHT;
        }
        Vec3 middle = contents.solid().whole().centroid();
        return up.dot(opening.middle().minus(middle)) > 0
                && Math.abs(opening.areaVector().unit().dot(up)) > UPRIGHT;
    }

    /**
     * The outlet blocks on the way: at each tilt what is left then is between all of the slurry and what has stayed in by running
     * out freely. Listed is what weighs most towards the dump side about the pivot; all of the slurry is the case held, and when
     * the block lets go it is the case draining.
     */
    @Nullable
    LoadCase bridged(LoadCase held, LoadCase draining) {
        double start = held.contents();
        if (!(draining.residual() < start * (1 - 1e-9))) {
            return null;
        }
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (int i = 0; i < tilts.length; i++) {
            states.add(worst(tilts[i], draining.states().get(i), held.states().get(i)));
        }
        return new LoadCase("bridged", LoadCase.NEVER, states, start);
    }

    private LoadState worst(double tilt, LoadState least, LoadState most) {
        Fill top = most.fill();
        if (top == null || least.volume() >= most.volume()) {
            return most;
        }
        Vec3 up = contents.up(tilt);
        Fill bottom = least.fill();
        double low = bottom == null
                ? contents.solid().extent(up).low()
                : bottom.surface().level();
        double high = top.surface().level();
        double best = low;
        LoadState worst = weigh(up, low);
        double step = (high - low) / PARTS;
        for (int k = 1; k <= PARTS; k++) {
            LoadState here = k == PARTS ? most : weigh(up, low + k * step);
            if (moment(here, tilt) > moment(worst, tilt)) {
                worst = here;
                best = low + k * step;
            }
        }
        for (int k = 0; k < HALVINGS; k++) {
            step *= 0.5;
            for (double level : new double[] {best - step, best + step}) {
                if (level > low && level < high) {
                    LoadState here = weigh(up, level);
                    if (moment(here, tilt) > moment(worst, tilt)) {
                        worst = here;
                        best = level;
                    }
                }
            }
        }
        return worst;
    }

    private LoadState weigh(Vec3 up, double level) {
        Solid solid = contents.solid();
        Plane plane = new Plane(up, level);
        return weights.liquid(new Filled(plane, solid.below(plane)));
    }

    private double moment(LoadState state, double tilt) {
        return state.moment(design.pivot().at(), contents.up(tilt));
    }
}
