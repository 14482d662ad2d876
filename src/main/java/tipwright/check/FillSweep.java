// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.tank.Slurry;
import tipwright.load.Contents;
import tipwright.load.Vessel;

/**
 * Every check that depends on the fill and needs no time, over fills from empty to full. What a check asks for is not monotone in
 * the fill, so a pass full and a pass empty say nothing about half full. It looks at ten fills at some tilts, and at the worst of
 * them, found by a parabola through three, at every tilt. A workspace: what has been worked out is kept.
 */
final class FillSweep {
    private static final int FILLS = 10;
    private static final int NEARER = 2;
    private static final double COARSEST = Math.toRadians(5);
    private static final double SAME = 1e-6;
    static final List<Check> RULES = Checks.with(Trait.DEPENDS_ON_FILL).stream()
            .filter(c -> !c.traits().contains(Trait.NEEDS_TIME) && !c.traits().contains(Trait.BETTER_IN_TIME))
            .toList();

    private final Analysis stated;
    private final Design design;
    private final Design rough;
    private final double fill;
    private final TreeMap<Double, At> known = new TreeMap<>();
    /** What is worst with less in the tank, by the fill. */
    private final TreeMap<Double, List<Finding>> lesser = new TreeMap<>();
    /** At every tilt, by the fill. */
    private final Map<Double, Analysis> calm;
    /** Of a few tilts, and of all. */
    private final Lazily coarse;

    private final Lazily fine;

    private Set<String> always = Set.of();

    private FillSweep(Analysis stated, Design rough, double fill, Map<Double, Analysis> calm) {
        this.stated = stated;
        this.design = stated.design();
        this.rough = rough;
        this.fill = fill;
        this.calm = calm;
        coarse = new Lazily(rough);
        fine = new Lazily(design);
    }

    /** One that knows the same, for another thread. */
    FillSweep copy() {
        FillSweep copy = new FillSweep(stated, rough, fill, calm);
        copy.known.putAll(known);
        copy.always = always;
        return copy;
    }

    /** The conditions of a design, made when they are first asked for. */
    private final class Lazily {
        private final Design of;
        private @Nullable Conditions made;

        Lazily(Design of) {
            this.of = of;
        }

        Conditions get() throws CannotComputeException {
            Conditions known = made;
            if (known == null) {
                known = new Conditions(of, stated.emptying(), stated.vessel());
                made = known;
            }
            return known;
        }
    }

    /**
     * What was found with one fill.
     *
     * @param fill share of the interior
     * @param findings of all rules
     */
    record At(double fill, List<Finding> findings) {
        /** The first that fails; null: it passes. */
        @Nullable
        Finding failure() {
            return FillSweep.failure(findings);
        }

        /** The worst of an id; null: there is none. */
        @Nullable
        Finding of(String id) {
            Finding worst = null;
            for (Finding f : findings) {
                worst = f.id().equals(id) && (worst == null || f.worseThan(worst)) ? f : worst;
            }
            return worst;
        }

        /** How much of the actuators is used. */
        double drive() {
            return LessFull.DRIVE.stream().mapToDouble(this::used).max().orElse(0);
        }

        /** How much of a check is used; 0 where it does not say. */
        double used(String id) {
            return findings.stream()
                    .filter(f -> f.id().equals(id) && f.verdict() != Verdict.NOT_CHECKED)
                    .mapToDouble(Finding::utilisation)
                    .max()
                    .orElse(0);
        }
    }

    static @Nullable Finding failure(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .max(Finding.BY_USE)
                .orElse(null);
    }

    /** The fills to look at, for threads that share them. */
    static SharedFills fills(Analysis stated) {
        Design design = stated.design();
        TiltRange t = design.tilt();
        double step = Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()));
        Design rough = design.withTilt(new TiltRange(t.from(), t.to(), step));
        return new SharedFills(stated, rough, RULES, shares(new Contents(design, stated.vessel()).fill()));
    }

    /** Fills from empty to full, as shares of the interior, and a machine's own. */
    static List<Double> shares(double own) {
        List<Double> shares = new ArrayList<>();
        for (int k = 0; k <= FILLS; k++) {
            shares.add((double) k / FILLS);
        }
        if (shares.stream().noneMatch(share -> Math.abs(share - own) <= SAME)) {
            shares.add(own);
        }
        return shares;
    }

    /**
     * Over the fills from empty to full.
     *
     * @param stated the design as it stands
     * @param fills that others may have looked at meanwhile
     */
    static FillSweep of(Analysis stated, SharedFills fills) throws CannotComputeException {
        Conditions coarse = fills.conditions();
        double own = new Contents(stated.design(), stated.vessel()).fill();
        FillSweep sweep = new FillSweep(stated, fills.rough(), own, new ConcurrentHashMap<>());
        sweep.coarse.made = coarse;
        List<List<Finding>> found = fills.findings(coarse);
        // What no load governs and fails empty too (where it runs over) is not for the fill to mend.
        sweep.always = found.get(0).stream()
                .filter(f -> f.verdict() == Verdict.FAIL && f.loadCase() == null)
                .map(Finding::id)
                .collect(Collectors.toSet());
        for (int k = 0; k < found.size(); k++) {
            double share = fills.shares().get(k);
            sweep.known.put(share, new At(share, sweep.counted(found.get(k))));
        }
        return sweep;
    }

    /** The inside of the tank. */
    Vessel vessel() {
        return stated.vessel();
    }

    /** The fill that the design states, as a share of the interior. */
    double stated() {
        return fill;
    }

    /** All fills that were worked out, the least first. */
    List<At> all() {
        return List.copyOf(known.values());
    }

    /** The findings with a fill at some of the tilts. */
    At at(double share) throws CannotComputeException {
        return at(share, RULES, known);
    }

    /** What some rules find with a fill at some of the tilts; kept with others of which they are known. */
    private At at(double share, List<Check> rules, NavigableMap<Double, At> kept) throws CannotComputeException {
        Map.Entry<Double, At> near = kept.ceilingEntry(share - SAME);
        if (near != null && near.getKey() <= share + SAME) {
            return near.getValue();
        }
        At made = new At(share, counted(coarse.get().find(slurry(share), rules)));
        kept.put(share, made);
        return made;
    }

    /** The findings with a fill at every tilt of the design. */
    At finely(double share) throws CannotComputeException {
        return finely(share, RULES);
    }

    private At finely(double share, List<Check> rules) throws CannotComputeException {
        Analysis there = calm(share);
        return new At(share, counted(fine.get().find(there, slurry(share), rules)));
    }

    private Analysis calm(double share) throws CannotComputeException {
        Analysis made = calm.get(share);
        if (made == null) {
            made = fine.get().calm(slurry(share));
            calm.put(share, made);
        }
        return made;
    }

    /** What rules find with another slurry at some of the tilts. */
    List<Finding> with(Slurry slurry) throws CannotComputeException {
        return counted(coarse.get().find(slurry, RULES));
    }

    private List<Finding> counted(List<Finding> found) {
        return found.stream().filter(f -> !always.contains(f.id())).toList();
    }

    private Slurry slurry(double share) {
        return design.slurry().withFill(share);
    }

    /**
     * Findings of the design as stated, with those put in their place that are worse in a tank that is less full, or under another
     * condition; behind them those of parts that bear something only there.
     *
     * @param asStated all findings
     * @param made the checks that made them
     */
    List<Finding> worst(List<Finding> asStated, List<Check> made) throws CannotComputeException {
        // the fullest first: what is the same with all of them is told of that one
        List<At> less = known.descendingMap().values().stream()
                .filter(a -> a.fill() > Math.min(SAME, fill - SAME) && a.fill() < fill + SAME)
                .toList();
        Map<String, Finding> own = new TreeMap<>();
        asStated.forEach(f -> own.merge(f.id(), f, (x, y) -> y.worseThan(x) ? y : x));
        Map<String, At> worse = new TreeMap<>();
        for (At at : less) {
            for (Finding f : at.findings()) {
                At had = worse.get(f.id());
                if (!(at.fill() < fill - SAME && surroundings(f))
                        && made.stream().anyMatch(c -> c.owns(f))
                        && isWorse(f, had == null ? own.get(f.id()) : had.of(f.id()))) {
                    worse.put(f.id(), at);
                }
            }
        }
        Map<Double, Finding> governing = new TreeMap<>();
        for (Map.Entry<String, At> e : worse.entrySet()) {
            Finding worst = Objects.requireNonNull(e.getValue().of(e.getKey()));
            governing.merge(e.getValue().fill(), worst, (x, y) -> y.worseThan(x) ? y : x);
        }
        List<Check> asked = owners(worse);
        List<Callable<List<At>>> looks = new ArrayList<>();
        governing.forEach((share, worst) -> {
            looks.add(() -> copy().nearer(share, worst.id(), asked));
            // what else is worst with that fill may not be where this one is
            looks.add(() -> List.of(copy().finely(share, asked)));
        });
        new SharedTasks<>(looks)
                .answersByTwo("worst fill").stream().flatMap(List::stream).forEach(at -> refine(at, worse));
        worse.forEach((id, at) -> {
            if (at.fill() < fill - SAME) {
                lesser.computeIfAbsent(at.fill(), share -> new ArrayList<>()).add(Objects.requireNonNull(at.of(id)));
            }
        });
        List<Finding> all = new ArrayList<>();
        asStated.forEach(f -> all.add(worse.containsKey(f.id()) ? told(f.id(), worse) : f));
        worse.keySet().stream().filter(id -> !own.containsKey(id)).forEach(id -> all.add(told(id, worse)));
        return all;
    }

    /** The checks of what is worst with some fills. */
    private static List<Check> owners(Map<String, At> worst) {
        List<Finding> found = new ArrayList<>();
        worst.forEach((id, at) -> found.add(Objects.requireNonNull(at.of(id))));
        return RULES.stream().filter(c -> found.stream().anyMatch(c::owns)).toList();
    }

    /** At every tilt with the fill near one at which something is worst where it is worse still; nothing when there is none. */
    private List<At> nearer(double share, String id, List<Check> rules) throws CannotComputeException {
        NavigableMap<Double, At> near = new TreeMap<>(known);
        At first = at(share);
        At best = first;
        for (int i = 0; i < NEARER; i++) {
            At next = at(top(best, id, near), rules, near);
            best = next.used(id) > best.used(id) ? next : best;
        }
        return best.fill() == share ? List.of() : List.of(finely(best.fill(), rules));
    }

    /** Puts what is worse at every tilt in place of what was found at some. */
    private static void refine(At at, Map<String, At> worse) {
        for (Finding f : at.findings()) {
            At had = worse.get(f.id());
            if (had != null && isWorse(f, had.of(f.id()))) {
                worse.put(f.id(), at);
            }
        }
    }

    /**
     * What is found in time and if something goes wrong, with what is worse in a tank that is less full in its place. After {@link #worst}
     * of the checks at rest.
     *
     * @param found with the stated fill
     */
    LessFull.Worst lessFull(List<Finding> found) throws CannotComputeException {
        double most = at(fill).drive();
        List<LessFull> all = new ArrayList<>();
        for (Map.Entry<Double, List<Finding>> less : lesser.entrySet()) {
            all.add(LessFull.of(calm(less.getKey()), less.getKey(), less.getValue(), most, words(less.getKey())));
        }
        return LessFull.worst(found, all);
    }

    /** The fill that asks most of the actuators, where it is less than one and asks clearly more than that; null: there is none. */
    @Nullable
    Double hardestBelow(double share) throws CannotComputeException {
        At hardest = at(share);
        for (At at : known.headMap(share - SAME).values()) {
            hardest = at.drive() > hardest.drive() * (1 + SAME) ? at : hardest;
        }
        return hardest.fill() < share - SAME ? hardest.fill() : null;
    }

    /** Whether a finding is told in place of another, or of none. */
    private static boolean isWorse(Finding found, @Nullable Finding had) {
        return had == null ? found.verdict() != Verdict.NOT_CHECKED : Conditions.takesOver(found, had);
    }

    /** Whether it is about where the load lands: with less in it than stated the jet comes down nearer, as is told of what runs over. */
    private static boolean surroundings(Finding finding) {
        return Checks.of(finding)
                .filter(c -> c.traits().contains(Trait.ABOUT_SURROUNDINGS))
                .isPresent();
    }

    /** The fill at the top of the parabola through a worst one and its neighbours. */
    private double top(At worst, String id, NavigableMap<Double, At> fills) {
        Map.Entry<Double, At> below = fills.lowerEntry(worst.fill());
        Map.Entry<Double, At> above = fills.higherEntry(worst.fill());
        if (below == null || above == null) {
            return worst.fill();
        }
        double a = worst.fill() - below.getKey();
        double b = above.getKey() - worst.fill();
        double before = (worst.used(id) - below.getValue().used(id)) / a;
        double after = (above.getValue().used(id) - worst.used(id)) / b;
        double bend = (before - after) / (a + b);
        double shift = bend > 0 ? (before - bend * a) / (2 * bend) : 0;
        shift = Double.isFinite(shift) ? Math.max(-a, Math.min(b, shift)) : 0;
        return Math.min(fill, rounded(worst.fill() + shift));
    }

    /** To a tenth of a percent, as it is told. */
    private static double rounded(double share) {
        return Math.rint(share * 1000) / 1000;
    }

    private Finding told(String id, Map<String, At> worse) {
        At at = Objects.requireNonNull(worse.get(id));
        Finding found = Objects.requireNonNull(at.of(id));
        return at.fill() > fill - SAME ? found : found.under(words(at.fill()));
    }

    private static String words(double share) {
        double percent = Math.rint(share * 1000) / 10;
        String number = percent == Math.rint(percent) ? Long.toString((long) percent) : Double.toString(percent);
        return number + " % full";
    }
}
