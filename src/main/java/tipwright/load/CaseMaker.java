// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Cases;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;

/** Works out the load cases of one fill of a design. */
final class CaseMaker {
    /** Less than this share of the tank is nothing. */
    private static final double SOME = 1e-9;

    private final Design design;
    private final double[] tilts;
    private final Bed bed;
    private final EmptyTank empty;
    private final Contents contents;
    private final Heap heap;
    private final Weights weights;
    private final CaseSolver settler;
    private final OpenDoors doors;

    CaseMaker(Design design, Vessel vessel, double[] tilts) {
        this.design = design;
        this.tilts = tilts;
        this.bed = new Bed(vessel);
        this.empty = vessel.empty(design);
        this.contents = new Contents(design, vessel);
        this.heap = new Heap(design, contents);
        this.weights = new Weights(design, contents, empty);
        this.settler = new CaseSolver(design, contents, heap, weights, tilts);
        this.doors = new OpenDoors(design);
    }

    boolean solids() {
        return contents.cakeVolume() > SOME * contents.capacity();
    }

    boolean convex() {
        return contents.solid().convex();
    }

    /**
     * Cases of a normal dump, before any is skipped, without {@link #layers}.
     *
     * @param draining the case of that name
     * @param heaped likewise; null: no solids settle
     * @param all in order, with these
     */
    record Normal(LoadCase draining, @Nullable LoadCase heaped, List<LoadCase> all) {}

    Normal normal() {
        double opens = opens();
        LoadCase draining = settler.draining();
        List<LoadCase> all = new ArrayList<>();
        all.add(settler.held(opens));
        all.add(draining);
        LoadCase heaped = solids() ? settler.heaped() : null;
        if (heaped != null) {
            all.add(heaped);
            all.add(settler.caked(heaped));
        }
        all.add(settler.empty());
        if (heaped != null) {
            all.add(settler.heel(heaped));
        }
        all.replaceAll(this::opened);
        return new Normal(draining, heaped, all);
    }

    private LoadCase opened(LoadCase shut) {
        return doors.in(shut, tilts);
    }

    /** Cases of a normal dump with free water over settled solids, which come last; another thread may make them meanwhile. */
    List<LoadCase> layers() {
        if (!solids()) {
            return List.of();
        }
        double opens = opens();
        Layers layers = new Layers(design, contents, weights, bed, heap.atRest(), tilts);
        return List.of(layers.settled(opens), layers.slid(opens));
    }

    /** Those of a list that the design does not skip. */
    List<LoadCase> wanted(List<LoadCase> all) {
        List<String> skip = design.cases().skip();
        return all.stream().filter(c -> !skip.contains(c.name())).toList();
    }

    /** Fixed loads of the design's own. */
    List<LoadCase> own() {
        List<LoadCase> all = new ArrayList<>();
        for (Cases.Own own : design.cases().add()) {
            double mass = empty.mass() + own.mass();
            Vec3 first = empty.centroid().times(empty.mass()).plus(own.centre().times(own.mass()));
            LoadState state = new LoadState(mass, mass > 0 ? first.times(1 / mass) : own.centre(), null, 0);
            all.add(opened(new LoadCase(own.name(), LoadCase.ALWAYS, Collections.nCopies(tilts.length, state), 0)));
        }
        return all;
    }

    /** Cases that come about only if something goes wrong, before any is skipped. */
    List<LoadCase> upsets() {
        Upsets upsets = new Upsets(design, contents, weights, tilts);
        List<LoadCase> all = new ArrayList<>();
        if (solids()) {
            all.addAll(HalfCake.of(design, weights, bed, heap.atRest(), tilts));
        }
        if (contents.slurryVolume() > SOME * contents.capacity()) {
            all.add(upsets.frozen());
        }
        LoadCase brim = upsets.brim();
        if (brim != null) {
            all.add(brim);
        }
        LoadCase bridged = upsets.bridged(settler.held(LoadCase.NEVER), settler.draining());
        if (bridged != null) {
            all.add(bridged);
        }
        all.replaceAll(this::opened);
        return all;
    }

    Emptying emptying(Normal normal) {
        return Residues.of(design, contents, heap, tilts, normal.draining(), normal.heaped());
    }

    /** Tilt at which the first outlet opens, rad; {@link LoadCase#ALWAYS}: none ever does. */
    private double opens() {
        return design.tank().openings().stream()
                .mapToDouble(Opening::opensAt)
                .min()
                .orElse(LoadCase.ALWAYS);
    }
}
