// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.geometry.MadeOnce;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The load cases of a design over its tilts that belong to the normal dump, at some tilt at least. They depend on the tank, the
 * slurry, the site and the tilts, not on where the mounts are, but for the pivot: about it, the worse of two ways to lie is told, and a
 * hook scale's pulls tell the centre of the empty tank. {@link #about} tells both anew.
 *
 * @param tilts rad, rising
 * @param cases those that the design does not skip
 * @param emptying what stays behind
 * @param notes what was left out and why, in plain words
 * @param pivot that they are told about, m
 * @param drawn the empty tank by its wall and parts alone; null: no hook scale has held it
 * @param vessel the inside of the tank
 */
@SuppressWarnings("ArrayRecordComponent")
public record LoadTable(
        double[] tilts,
        List<LoadCase> cases,
        Emptying emptying,
        List<String> notes,
        Vec2 pivot,
        @Nullable EmptyTank drawn,
        Vessel vessel) {
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
        return of(design, tilts, Vessel.of(design));
    }

    /**
     * The table of a design whose tank's inside is known.
     *
     * @param tilts rad, rising, at least one
     */
    public static LoadTable of(Design design, double[] tilts, Vessel vessel) {
        return of(design, tilts, vessel, alone -> {});
    }

    /**
     * The same.
     *
     * @param helper gets a part of the work that another thread may do meanwhile; what nobody has begun is done by who asks
     */
    public static LoadTable of(Design design, double[] tilts, Vessel vessel, Executor helper) {
        CaseMaker maker = new CaseMaker(design, vessel, tilts);
        MadeOnce<List<LoadCase>> layers = new MadeOnce<>(maker::layers);
        helper.execute(layers::get);
        CaseMaker.Normal normal = maker.normal();
        Emptying emptying = maker.emptying(normal);
        return of(design, tilts, cases(maker, normal, layers.get()), emptying, notes(design, maker), vessel);
    }

    /** What stays behind in a design's tank, by the tilts of a dump, rad, rising. */
    public static Emptying emptying(Design design, double[] tilts, Vessel vessel) {
        CaseMaker maker = new CaseMaker(design, vessel, tilts);
        return maker.emptying(maker.normal());
    }

    /** Of a design, with cases that are known. */
    public static LoadTable of(
            Design design, double[] tilts, List<LoadCase> cases, Emptying emptying, List<String> notes, Vessel vessel) {
        EmptyTank drawn = design.tank().weighed().isEmpty() ? null : EmptyTank.drawn(design.tank(), vessel.solid());
        return new LoadTable(
                tilts.clone(), cases, emptying, notes, design.pivot().at(), drawn, vessel);
    }

    /**
     * The same about the pivot of a design.
     *
     * @param moved the same tank
     */
    public LoadTable about(Design moved) {
        Vec2 at = moved.pivot().at();
        if (at.equals(pivot)) {
            return this;
        }
        double mass = drawn == null ? 0 : drawn.mass();
        Vec3 by = drawn == null ? Vec3.ZERO : centre(drawn, moved, at).minus(centre(drawn, moved, pivot));
        return changed(moved, at, s -> mass > 0 ? s.shifted(mass, by) : s);
    }

    private static Vec3 centre(EmptyTank drawn, Design design, Vec2 pivot) {
        return HookScale.corrected(drawn, design.tank().weighed(), pivot).centroid();
    }

    /**
     * The load cases of a design that come about only if something goes wrong, at every tilt; those that it does not skip.
     *
     * @param tilts rad, rising, at least one
     */
    public static List<LoadCase> upsets(Design design, double[] tilts, Vessel vessel) {
        CaseMaker maker = new CaseMaker(design, vessel, tilts);
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
        List<LoadCase> fewer = cases.stream()
                .map(c -> c.with(IntStream.of(which).mapToObj(c.states()::get).toList()))
                .toList();
        return new LoadTable(some, fewer, emptying, notes, pivot, drawn, vessel);
    }

    /**
     * The same with a heavier empty tank, what it carries left as it is.
     *
     * @param share of the empty tank's weight that is added, where it is; negative: taken off
     */
    public LoadTable withHeavierTank(Design design, double share) {
        EmptyTank empty = vessel.in(design).empty(design);
        double more = share * empty.mass();
        return changed(design, pivot, s -> s.plus(more, empty.centroid()));
    }

    /** Every state changed, and told anew which of two weighs more about a pivot. */
    private LoadTable changed(Design design, Vec2 about, UnaryOperator<LoadState> state) {
        Vec3 up = design.site().up();
        List<LoadCase> all = new ArrayList<>(cases.size());
        for (LoadCase load : cases) {
            List<LoadState> states = new ArrayList<>(tilts.length);
            for (int i = 0; i < tilts.length; i++) {
                states.add(state.apply(load.states().get(i)).about(about, up.tilted(-tilts[i])));
            }
            all.add(load.with(states));
        }
        return new LoadTable(tilts, all, emptying, notes, about, drawn, vessel);
    }

    static List<LoadCase> cases(CaseMaker maker, CaseMaker.Normal normal, List<LoadCase> layers) {
        List<LoadCase> all = new ArrayList<>(maker.wanted(normal.all()));
        all.addAll(maker.wanted(layers));
        all.addAll(maker.own());
        return all;
    }

    private static List<String> notes(Design design, CaseMaker maker) {
        List<String> notes = new ArrayList<>();
        if (!maker.solids()) {
            notes.add("no solids in the slurry, so there is no grit or cake to check");
        }
        if (!design.cases().skip().isEmpty()) {
            notes.add("load cases not looked at, because the file says so: "
                    + design.cases().skip().stream()
                            .map(name -> CaseName.shown(name, design.tank()))
                            .collect(Collectors.joining(", ")));
        }
        if (!maker.convex()) {
            notes.add(
                    "the inside of the tank is not convex: what a pocket keeps counts in what stays in, but not in the forces");
        }
        return notes;
    }
}
