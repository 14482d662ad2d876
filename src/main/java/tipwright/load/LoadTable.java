// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import tipwright.design.Design;
import tipwright.design.tank.Cases;

/**
 * The load cases of a design over its tilts that belong to the normal dump, at some tilt at least. They depend on the tank, the
 * slurry, the site and the tilts, not on where the mounts are ('slid' looks at the pivot, to tell which of two is worse).
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
        CaseMaker maker = new CaseMaker(design, Vessel.of(design), tilts);
        CaseMaker.Normal normal = maker.normal();
        return new LoadTable(tilts.clone(), cases(maker, normal), maker.emptying(normal), notes(design, maker));
    }

    /**
     * The load cases of a design that come about only if something goes wrong, at every tilt; those that it does not skip.
     *
     * @param tilts rad, rising, at least one
     */
    public static List<LoadCase> upsets(Design design, double[] tilts) {
        CaseMaker maker = new CaseMaker(design, Vessel.of(design), tilts);
        return maker.wanted(maker.upsets());
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
        EmptyTank empty = EmptyTank.of(design, new Contents(design).solid());
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
                .map(c -> new LoadCase(c.name(), c.about(), c.normalTo(), states.apply(c), c.contents()))
                .toList();
    }

    static List<LoadCase> cases(CaseMaker maker, CaseMaker.Normal normal) {
        List<LoadCase> all = new ArrayList<>(maker.wanted(normal.all()));
        all.addAll(maker.own());
        return all;
    }

    private static List<String> notes(Design design, CaseMaker maker) {
        List<String> notes = new ArrayList<>();
        if (!maker.solids()) {
            notes.add("no solids in the slurry: the cases " + String.join(", ", Cases.OF_SOLIDS) + " do not arise");
        }
        if (!design.cases().skip().isEmpty()) {
            notes.add("load cases left out by the design: "
                    + String.join(", ", design.cases().skip()));
        }
        if (!maker.convex()) {
            notes.add("the inside of the tank is not convex: a pocket could keep more than the residue shown");
        }
        return notes;
    }
}
