// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Cases;
import tipwright.design.Design;
import tipwright.design.Opening;
import tipwright.geometry.Vec3;

/**
 * The load cases of a design over its tilts that belong to the normal dump, at some tilt at least. It depends on the tank, the slurry, the site and the tilts, not on where the mounts
 * are.
 *
 * @param tilts rad, rising
 * @param cases those that the design does not skip
 * @param emptying what stays behind
 * @param notes what was left out and why, in plain words
 */
@SuppressWarnings("ArrayRecordComponent")
public record LoadTable(double[] tilts, List<LoadCase> cases, Emptying emptying, List<String> notes) {
    /** Less than this share of the tank is nothing. */
    private static final double SOME = 1e-9;

    /** Copies the lists. */
    public LoadTable {
        cases = List.copyOf(cases);
        notes = List.copyOf(notes);
    }

    /**
     * The table of a design.
     *
     * @param tilts rad, rising, at least one
     */
    public static LoadTable of(Design design, double[] tilts) {
        Contents contents = new Contents(design);
        EmptyTank empty = EmptyTank.of(design.tank(), contents.solid());
        Heap heap = new Heap(design, contents);
        Weights weights = new Weights(design, contents, empty);
        Settler settler = new Settler(design, contents, heap, weights, tilts);
        List<String> notes = new ArrayList<>();
        List<LoadCase> all = new ArrayList<>();
        double opens = opens(design);
        LoadCase held = settler.held(opens);
        all.add(held);
        LoadCase draining = settler.draining();
        all.add(draining);
        boolean solids = contents.cakeVolume() > SOME * contents.capacity();
        LoadCase heaped = null;
        if (solids) {
            heaped = settler.heaped();
            all.add(heaped);
            all.add(settler.caked(heaped));
        } else {
            notes.add("no solids in the slurry: the cases " + String.join(", ", Cases.OF_SOLIDS) + " do not arise");
        }
        all.add(settler.empty());
        if (heaped != null) {
            all.add(settler.heel(heaped));
            Bed bed = new Bed(contents.solid());
            Layers layers = new Layers(design, contents, weights, bed, heap.atRest(), tilts);
            all.add(layers.settled(opens));
            all.add(layers.slid(opens));
        }
        List<String> skip = design.cases().skip();
        all.removeIf(c -> skip.contains(c.name()));
        for (Cases.Own own : design.cases().add()) {
            all.add(fixed(own, empty, tilts.length));
        }
        if (!skip.isEmpty()) {
            notes.add("load cases left out by the design: " + String.join(", ", skip));
        }
        if (!contents.solid().convex()) {
            notes.add("the inside of the tank is not convex: a pocket could keep more than the residue shown");
        }
        return new LoadTable(tilts.clone(), all, Residues.of(design, contents, heap, tilts, draining, heaped), notes);
    }

    /**
     * The load cases of a design that come about only if something goes wrong, at every tilt; those that it does not skip.
     *
     * @param tilts rad, rising, at least one
     */
    public static List<LoadCase> upsets(Design design, double[] tilts) {
        Contents contents = new Contents(design);
        Weights weights = new Weights(design, contents, EmptyTank.of(design.tank(), contents.solid()));
        Heap heap = new Heap(design, contents);
        Settler settler = new Settler(design, contents, heap, weights, tilts);
        Upsets upsets = new Upsets(design, contents, weights, tilts);
        List<LoadCase> all = new ArrayList<>();
        if (contents.cakeVolume() > SOME * contents.capacity()) {
            all.addAll(HalfCake.of(design, weights, new Bed(contents.solid()), heap.atRest(), tilts));
        }
        if (contents.slurryVolume() > SOME * contents.capacity()) {
            all.add(upsets.frozen());
        }
        add(all, upsets.brim());
        add(all, upsets.bridged(settler.held(LoadCase.NEVER), settler.draining()));
        all.removeIf(c -> design.cases().skip().contains(c.name()));
        return all;
    }

    private static void add(List<LoadCase> all, @Nullable LoadCase load) {
        if (load != null) {
            all.add(load);
        }
    }

    /** Tilt at which the first outlet opens, rad; {@link LoadCase#ALWAYS}: none ever does. */
    private static double opens(Design design) {
        return design.tank().openings().stream()
                .mapToDouble(Opening::opensAt)
                .min()
                .orElse(LoadCase.ALWAYS);
    }

    private static LoadCase fixed(Cases.Own own, EmptyTank empty, int tilts) {
        double mass = empty.mass() + own.mass();
        Vec3 first = empty.centroid().times(empty.mass()).plus(own.centre().times(own.mass()));
        LoadState state = new LoadState(mass, mass > 0 ? first.times(1 / mass) : own.centre(), null, 0);
        List<LoadState> states = new ArrayList<>();
        for (int i = 0; i < tilts; i++) {
            states.add(state);
        }
        return new LoadCase(own.name(), "a fixed load of the design's own", LoadCase.ALWAYS, states, 0);
    }
}
