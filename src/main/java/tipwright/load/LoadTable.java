// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import tipwright.design.Design;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec3;

/**
 * Every load case of a design over its tilts. It depends on the tank, the slurry, the site and the tilts, not on where the mounts
 * are.
 *
 * @param tilts rad, rising
 * @param cases those that the design does not skip
 * @param emptying what stays behind
 * @param notes what was left out and why, in plain words
 */
@SuppressWarnings("ArrayRecordComponent")
public record LoadTable(double[] tilts, List<LoadCase> cases, Emptying emptying, List<String> notes) {
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
        Settler settler = new Settler(design, contents, heap, empty, tilts);
        List<String> notes = new ArrayList<>();
        List<LoadCase> all = new ArrayList<>();
        all.add(settler.held());
        LoadCase draining = settler.draining();
        all.add(draining);
        boolean solids = contents.cakeVolume() > 1e-9 * contents.capacity();
        LoadCase heaped = null;
        if (solids) {
            heaped = settler.heaped();
            all.add(heaped);
            all.add(settler.caked(heaped));
        } else {
            notes.add("no solids in the slurry: the cases heaped, caked and heel do not arise");
        }
        all.add(settler.empty());
        if (heaped != null) {
            all.add(settler.heel(heaped));
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
     * The same at some of its tilts.
     *
     * @param which their places among the tilts, rising
     */
    public LoadTable at(int[] which) {
        double[] some = new double[which.length];
        Arrays.setAll(some, i -> tilts[which[i]]);
        return new LoadTable(
                some, changed(c -> IntStream.of(which).mapToObj(c.states()::get).toList()), emptying, notes);
    }

    /**
     * The same with a heavier empty tank, what it carries left as it is.
     *
     * @param share of the empty tank's weight that is added, where it is; negative: taken off
     */
    public LoadTable withHeavierTank(Design design, double share) {
        EmptyTank empty = EmptyTank.of(design.tank(), new Contents(design).solid());
        double more = share * empty.mass();
        return new LoadTable(
                tilts,
                changed(c -> c.states().stream()
                        .map(s -> s.plus(more, empty.centroid()))
                        .toList()),
                emptying,
                notes);
    }

    private List<LoadCase> changed(Function<LoadCase, List<LoadState>> states) {
        return cases.stream()
                .map(c -> new LoadCase(c.name(), c.about(), states.apply(c), c.contents()))
                .toList();
    }

    private static LoadCase fixed(Cases.Own own, EmptyTank empty, int tilts) {
        double mass = empty.mass() + own.mass();
        Vec3 first = empty.centroid().times(empty.mass()).plus(own.centre().times(own.mass()));
        LoadState state = new LoadState(mass, mass > 0 ? first.times(1 / mass) : own.centre(), null, 0);
        List<LoadState> states = new ArrayList<>();
        for (int i = 0; i < tilts; i++) {
            states.add(state);
        }
        return new LoadCase(own.name(), "a fixed load of the design's own", states, 0);
    }
}
