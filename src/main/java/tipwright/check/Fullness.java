// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.FutureTask;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/**
 * Finds how full the tank may be: the largest fill up to which every fill passes every check that looks at the load; and the bands of
 * fills that do not. Where a fill passes and the next one fails, a straight line through the utilisations tells where to look. What
 * comes of it is held against the dump in time, which takes much longer, and looked for with it only when that fails.
 */
final class Fullness {
    private static final double COARSEST = Math.toRadians(2);
    private static final double CLOSE = 0.002;
    private static final double CLOSE_IN_TIME = 0.006;
    private static final double CLOSE_BAND = 0.01;
    private static final double DENSITY_CLOSE = 5;
    private static final double DENSITY_CLOSE_IN_TIME = 15;
    private static final int ROUNDS = 4;
    static final List<Check> TIMED = Checks.with(Trait.DEPENDS_ON_FILL).stream()
            .filter(c -> c.traits().contains(Trait.NEEDS_TIME) || c.traits().contains(Trait.BETTER_IN_TIME))
            .toList();

    private final FillSweep sweep;
    private final Design design;

    private final Stated stated;
    private final boolean dense;
    private final OpenRuns runs;
    private final double failing;
    /** By fill. */
    private final Map<Double, Dump> dumps = new ConcurrentHashMap<>();

    /** A dump in time. */
    private record Dump(Analysis analysis, Timing timing) {}

    /** What the checks that look at the dump in time find with the fill that the design states. */
    interface Stated {
        List<Finding> findings() throws CannotComputeException;
    }

    private Fullness(FillSweep sweep, Design design, Stated stated, boolean dense, OpenRuns runs, double failing) {
        this.sweep = sweep;
        this.design = design;
        this.stated = stated;
        this.dense = dense;
        this.runs = runs;
        this.failing = failing;
    }

    /**
     * The answer for a design; null when not even the empty tank passes.
     *
     * @param stated asked only where the fullest tank fails in time: a stated fill that passes is near the answer, and known
     * @param dense whether the densest slurry is asked for too
     * @param runs where another thread may help; they end with the answer
     * @param failing a fill with which something is known to fail in time or if something goes wrong; NaN: none is known
     */
    static @Nullable HowFull of(
            FillSweep sweep, Design design, Stated stated, boolean dense, OpenRuns runs, double failing)
            throws CannotComputeException {
        return new Fullness(sweep, design, stated, dense, runs, failing).answer();
    }

    private @Nullable HowFull answer() throws CannotComputeException {
        List<FillSweep.At> all = sweep.all();
        if (all.get(0).failure() != null) {
            return null;
        }
        List<HowFull.Band> bands = bands(all);
        double most = bands.isEmpty() ? 1 : bands.get(0).from();
        String limit = bands.isEmpty() ? null : bands.get(0).limit();
        boolean brim = bands.isEmpty() || bands.get(bands.size() - 1).to() < 1;
        double density = dense ? densest(brim).good() : Double.NaN;
        return inTime(most, limit, density, bands);
    }

    /** Neighbouring grid fills that fail, with the fills between which they lie. */
    private List<HowFull.Band> bands(List<FillSweep.At> all) throws CannotComputeException {
        List<HowFull.Band> bands = new ArrayList<>();
        int i = 0;
        while (i < all.size()) {
            Finding fails = all.get(i).failure();
            if (fails == null) {
                i++;
                continue;
            }
            int last = i;
            while (last + 1 < all.size() && all.get(last + 1).failure() != null) {
                last++;
            }
            Finding middle = all.get((i + last) / 2).failure();
            double from = first(all.get(i - 1), all.get(i), bands.isEmpty() ? CLOSE : CLOSE_BAND);
            double to = last + 1 == all.size() ? 1 : first(all.get(last + 1), all.get(last), CLOSE_BAND);
            Finding limit =
                    bands.isEmpty() ? sweep.at(Math.min(1, from + CLOSE)).failure() : middle;
            bands.add(new HowFull.Band(from, to, (limit == null ? fails : limit).named()));
            i = last + 1;
        }
        return bands;
    }

    /** The passing end of where passing turns to failing, at every tilt. */
    private double first(FillSweep.At good, FillSweep.At bad, double close) throws CannotComputeException {
        Border border =
                Border.between(good.fill(), good.findings(), bad.fill(), bad.findings(), close, share -> sweep.at(share)
                        .findings());
        double share = border.good();
        double step = Math.signum(good.fill() - bad.fill()) * close;
        while (close == CLOSE && share > 0 && sweep.finely(share).failure() != null) {
            share = Math.max(0, share + step);
        }
        return share;
    }

    /** The densest slurry of a tank filled to the brim, at rest: between plain liquid and nothing but settled cake. */
    private Border densest(boolean passesAsItIs) throws CannotComputeException {
        Slurry full = design.slurry().withFill(1);
        double own = full.mixtureDensity();
        double good = passesAsItIs ? own : full.liquidDensity();
        double bad = passesAsItIs ? full.cakeDensity() : own;
        List<Finding> low = sweep.with(full.withDensity(good));
        if (FillSweep.failure(low) != null) {
            return new Border(Double.NaN, List.of(), bad);
        }
        List<Finding> high = sweep.with(full.withDensity(bad));
        if (FillSweep.failure(high) == null) {
            return new Border(bad, high, bad);
        }
        return Border.between(good, low, bad, high, DENSITY_CLOSE, d -> sweep.with(full.withDensity(d)));
    }

    private HowFull inTime(double most, @Nullable String limit, double atRest, List<HowFull.Band> bands)
            throws CannotComputeException {
        List<Finding> first = filled(most, TIMED);
        Double hardest = failing < most ? Double.valueOf(failing) : sweep.hardestBelow(most);
        List<Finding> less = hardest == null ? List.of() : filled(hardest, TIMED);
        boolean fails = FillSweep.failure(first) != null || FillSweep.failure(less) != null;
        double density = atRest;
        if (!fails && Double.isNaN(density)) {
            return told(most, density, limit, bands);
        }
        List<Finding> own =
                fails ? asStated(FillSweep.failure(less) == null || hardest == null ? most : hardest) : List.of();
        boolean near = !own.isEmpty();
        // What fails with an empty tank too is not for the fill to mend.
        List<Finding> none = !fails || near ? List.of() : filled(0, TIMED);
        Set<String> always = failing(none);
        double least = near ? sweep.stated() : 0;
        double fill = most;
        String stops = limit;
        List<Finding> counted = counted(first, always);
        List<HowFull.Band> told = bands;
        List<Finding> found = counted;
        List<Finding> passing = near ? own : counted(none, always);
        if (hardest != null && FillSweep.failure(counted(less, always)) != null) {
            fill = hardest;
            found = counted(less, always);
        }
        for (int i = 0; i < ROUNDS && FillSweep.failure(found) != null; i++) {
            List<Check> deciding = deciding(found);
            stops = Objects.requireNonNull(FillSweep.failure(found)).named();
            fill = Border.byTwo(
                            least, passing, fill, found, CLOSE_IN_TIME, pair(s -> counted(filled(s, deciding), always)))
                    .good();
            told = List.of(new HowFull.Band(fill, 1, stops));
            // with less in it another check may fail
            found = counted(filled(fill, TIMED), always);
        }
        fill = FillSweep.failure(found) == null ? fill : 0;
        if (!Double.isNaN(density)) {
            density = denseInTime(density, most == 1 ? counted : List.of(), always);
        }
        return told(fill, density, stops, told);
    }

    /** What is found in time with the stated fill; empty where that is no less than another, or something fails with it. */
    private List<Finding> asStated(double most) throws CannotComputeException {
        if (sweep.stated() >= most) {
            return List.of();
        }
        List<Finding> found = stated.findings().stream()
                .filter(f -> TIMED.stream().anyMatch(c -> c.owns(f)))
                .toList();
        return FillSweep.failure(found) == null ? found : List.of();
    }

    /** The densest slurry with which the tank passes in time too, kg/m3. */
    private double denseInTime(double atRest, List<Finding> asItIs, Set<String> always) throws CannotComputeException {
        Slurry full = design.slurry().withFill(1);
        List<Finding> found = counted(timed(dump(full.withDensity(atRest)), TIMED), always);
        if (FillSweep.failure(found) == null) {
            return atRest;
        }
        List<Check> deciding = deciding(found);
        double own = full.mixtureDensity();
        boolean passes = own < atRest && !asItIs.isEmpty() && FillSweep.failure(asItIs) == null;
        double good = passes ? own : full.liquidDensity();
        List<Finding> low = passes ? asItIs : counted(timed(dump(full.withDensity(good)), deciding), always);
        if (FillSweep.failure(low) != null) {
            return Double.NaN;
        }
        return Border.byTwo(
                        good,
                        low,
                        atRest,
                        found,
                        DENSITY_CLOSE_IN_TIME,
                        pair(d -> counted(timed(dump(full.withDensity(d)), deciding), always)))
                .good();
    }

    /** Two values side by side, where another thread may help; what it has begun when the first fails is of no use. */
    private Border.Pair pair(Border.Findings look) {
        return (first, second) -> {
            FutureTask<List<Finding>> other = new FutureTask<>(() -> look.of(second));
            runs.offer(other);
            List<Finding> found = look.of(first);
            if (FillSweep.failure(found) != null) {
                other.cancel(false);
                return List.of(found);
            }
            other.run();
            return List.of(found, SharedTasks.answer(other));
        };
    }

    /** Checks of which something fails: while a border is looked for, the others have no say. */
    private static List<Check> deciding(List<Finding> found) {
        return TIMED.stream()
                .filter(c -> found.stream().anyMatch(f -> f.verdict() == Verdict.FAIL && c.owns(f)))
                .toList();
    }

    /** What some checks find with a fill of the slurry as it is; a dump that was worked out for fewer of them is not worked out anew. */
    private List<Finding> filled(double fill, List<Check> rules) throws CannotComputeException {
        Dump dump = dumps.get(fill);
        if (dump == null) {
            dump = dump(design.slurry().withFill(fill));
            dumps.put(fill, dump);
        }
        return timed(dump, rules);
    }

    /** At steps that are no finer than needed. */
    private Dump dump(Slurry slurry) throws CannotComputeException {
        TiltRange t = design.tilt();
        double step = Math.max(t.step(), Math.min(COARSEST, t.to() - t.from()));
        Design there = design.withSlurry(slurry).withTilt(new TiltRange(t.from(), t.to(), step));
        Analysis analysis = Analyser.analyse(there, sweep.vessel());
        return new Dump(analysis, CycleTimer.time(analysis));
    }

    private List<Finding> timed(Dump dump, List<Check> rules) throws CannotComputeException {
        return Conditions.inTime(
                dump.analysis, runs.findings(new SharedRun(rules, dump.analysis, dump::timing)), rules);
    }

    private static List<Finding> counted(List<Finding> findings, Set<String> always) {
        return findings.stream().filter(f -> !always.contains(f.id())).toList();
    }

    private static Set<String> failing(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .collect(Collectors.toSet());
    }

    private HowFull told(double fill, double density, @Nullable String limit, List<HowFull.Band> bands) {
        Design filled = design.withSlurry(design.slurry().withFill(fill));
        Contents contents = new Contents(filled);
        double volume = contents.slurryVolume();
        Vec3 up = contents.up(contents.start());
        Range extent = contents.solid().extent(up);
        double level =
                contents.liquid(contents.start(), volume, Double.NaN).plane().level() - extent.low();
        return new HowFull(fill, volume, volume * design.slurry().mixtureDensity(), level, density, limit, bands);
    }
}
