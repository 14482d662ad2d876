// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.key.Copy;
import tipwright.geometry.NotConvergedException;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Motion;
import tipwright.linkage.SweepStop;
import tipwright.load.LoadCase;
import tipwright.load.LoadState;
import tipwright.load.LoadTable;
import tipwright.load.TiltGrid;
import tipwright.load.Vessel;

/** Computes a design over its whole tilt range. */
public final class Analyser {
    /** What of a design may change while the loads of its tank stay. */
    private static final List<String> MOVED = List.of("pivot", "drive", "assists", "links", "fastenings", "frame");

    private Analyser() {}

    /**
     * Every load case at every tilt that the linkage reaches.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     */
    public static Analysis analyse(Design design) throws CannotComputeException {
        return analyse(design, Vessel.of(design));
    }

    /**
     * The same.
     *
     * @param known the inside of a tank, which may be that of the design
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     */
    public static Analysis analyse(Design design, Vessel known) throws CannotComputeException {
        return analyse(design, tilts -> LoadTable.of(design, tilts, known.in(design)));
    }

    /**
     * The load cases that come about only if something goes wrong, over the tilts of an analysis and in its wind.
     *
     * @throws CannotComputeException when friction locks the linkage at one of these tilts
     */
    public static List<CaseResult> upsets(Analysis analysis) throws CannotComputeException {
        Design design = analysis.design();
        double[] tilts = tilts(analysis);
        Linkage linkage = linkage(design);
        LoadTable table = LoadTable.of(
                design,
                tilts,
                LoadTable.upsets(design, tilts, analysis.vessel()),
                analysis.emptying(),
                List.of(),
                analysis.vessel());
        List<Configuration> configurations = linkage.sweep(tilts).configurations();
        return balance(design, linkage, analysis.mechanism(), configurations, table, null, analysis.wind())
                .cases();
    }

    /** Every load case: those of the analysis, then those that come about only if something goes wrong, if friction lets them balance. */
    public static List<CaseResult> all(Analysis analysis) {
        List<CaseResult> all = new ArrayList<>(analysis.cases());
        try {
            all.addAll(upsets(analysis));
        } catch (CannotComputeException locked) {
            // the linkage balances the cases of a normal dump alone; those are told
            return all;
        }
        return all;
    }

    /**
     * The same machine with the same loads in a wind.
     *
     * @param calm the same without
     * @throws CannotComputeException when friction locks the linkage
     */
    public static Analysis blown(Analysis calm, Wind wind) throws CannotComputeException {
        double[] tilts = tilts(calm);
        Linkage linkage = linkage(calm.design());
        List<LoadCase> cases = calm.cases().stream().map(CaseResult::load).toList();
        LoadTable table = LoadTable.of(calm.design(), tilts, cases, calm.emptying(), calm.warnings(), calm.vessel());
        List<Configuration> configurations = linkage.sweep(tilts).configurations();
        Analysis blown = balance(calm.design(), linkage, calm.mechanism(), configurations, table, null, wind);
        return new Analysis(
                calm.design(),
                calm.mechanism(),
                blown.poses(),
                blown.cases(),
                calm.emptying(),
                blown.stop() == null ? calm.stop() : blown.stop(),
                calm.warnings(),
                wind,
                calm.vessel());
    }

    /**
     * The same in the wind of an earlier analysis, with its loads where they are the same: when only the mechanism has been moved.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     */
    public static Analysis again(Design design, Analysis before) throws CannotComputeException {
        Design old = before.design();
        boolean same = Copy.alikeBut(old, design, MOVED);
        Analysis again = analyse(design, TiltGrid.of(design), true, tilts -> {
            LoadTable had = same ? loads(before, tilts) : null;
            return had == null ? LoadTable.of(design, tilts, before.vessel().in(design)) : had.about(design);
        });
        return blownAs(again, before);
    }

    /**
     * A machine that is calm in the wind of another analysis, if there is any.
     *
     * @throws CannotComputeException when friction locks the linkage
     */
    public static Analysis blownAs(Analysis calm, Analysis other) throws CannotComputeException {
        Wind wind = other.wind();
        return wind == null ? calm : blown(calm, wind);
    }

    /**
     * The same, with loads that are known: they do not depend on the mechanism, and are told anew about another pivot.
     *
     * @param loads of the same tank at the design's tilts
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     */
    public static Analysis analyse(Design design, LoadTable loads) throws CannotComputeException {
        return analyse(design, loads.tilts(), false, tilts -> loads.about(design));
    }

    /**
     * The same as {@link #analyse(Design)}, with other loads than the design's own.
     *
     * @param loads at tilts
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     */
    public static Analysis analyse(Design design, Function<double[], LoadTable> loads) throws CannotComputeException {
        return analyse(design, TiltGrid.of(design), true, loads);
    }

    /**
     * The loads of a design's tank at the tilts that its contents ask for.
     *
     * @throws CannotComputeException when what is in the tank cannot be told
     */
    public static LoadTable loads(Design design) throws CannotComputeException {
        try {
            return LoadTable.of(design, TiltGrid.of(design));
        } catch (NotConvergedException lost) {
            throw CannotComputeException.of(design, lost);
        }
    }

    /**
     * Whether something about the mechanism changes at once between the tilts of an analysis; {@link #analyse(Design)} then looks at
     * both sides of that too.
     */
    public static boolean changes(Analysis analysis) {
        return Changes.any(analysis);
    }

    private static Analysis analyse(Design design, double[] grid, boolean refine, Function<double[], LoadTable> loads)
            throws CannotComputeException {
        try {
            return analysed(design, grid, refine, loads);
        } catch (NotConvergedException lost) {
            throw CannotComputeException.of(design, lost);
        }
    }

    private static Analysis analysed(Design design, double[] grid, boolean refine, Function<double[], LoadTable> loads)
            throws CannotComputeException {
        Linkage linkage = linkage(design);
        Mechanism mechanism = Mechanism.of(linkage.skeleton());
        if (mechanism.pivot() < 0) {
            throw new CannotComputeException(
                    design.name() + ": drive: no pin is named 'pivot'; it sits in the bearings");
        }
        Motion motion = linkage.sweep(grid);
        if (refine) {
            double[] changes = Changes.of(design, linkage, motion.configurations());
            motion = changes.length == 0 ? motion : linkage.sweep(Changes.with(grid, changes));
        }
        List<Configuration> configurations = motion.configurations();
        SweepStop sweepStop = motion.stop();
        if (configurations.isEmpty()) {
            throw new CannotComputeException(design.name() + ": " + Stops.atTheStart(sweepStop));
        }
        double[] tilts =
                configurations.stream().mapToDouble(Configuration::tilt).toArray();
        return balance(design, linkage, mechanism, configurations, loads.apply(tilts), sweepStop, null);
    }

    /** The loads of an earlier analysis; null when it was not at the same tilts. */
    private static @Nullable LoadTable loads(Analysis before, double[] tilts) {
        if (!Arrays.equals(tilts(before), tilts)) {
            return null;
        }
        List<LoadCase> cases = before.cases().stream().map(CaseResult::load).toList();
        return LoadTable.of(before.design(), tilts, cases, before.emptying(), before.warnings(), before.vessel());
    }

    private static double[] tilts(Analysis analysis) {
        return analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
    }

    static Linkage linkage(Design design) throws CannotComputeException {
        try {
            return Linkage.of(design.drive().skeleton(design.pivot().at()));
        } catch (LinkageException e) {
            throw new CannotComputeException(design.name() + ": drive: " + e.getMessage(), e);
        }
    }

    static Analysis balance(
            Design design,
            Linkage linkage,
            Mechanism mechanism,
            List<Configuration> configurations,
            LoadTable table,
            @Nullable SweepStop sweepStop,
            @Nullable Wind wind)
            throws CannotComputeException {
        int cases = table.cases().size();
        List<List<Row>> rows = new ArrayList<>(cases);
        for (int c = 0; c < cases; c++) {
            rows.add(new ArrayList<>(configurations.size()));
        }
        List<Pose> poses = new ArrayList<>(configurations.size());
        Stop stop = Stops.of(sweepStop);
        Balancer balancer = new Balancer(design, linkage, mechanism, wind);
        for (int i = 0; i < configurations.size(); i++) {
            Configuration configuration = configurations.get(i);
            Pose pose = pose(configuration, mechanism);
            List<Row> here = balancer.moveTo(configuration) ? rowsAt(balancer, pose, table, i) : List.of();
            if (here.size() < cases) {
                stop = Stops.locked(configuration.tilt(), stop);
                break;
            }
            poses.add(pose);
            for (int c = 0; c < cases; c++) {
                rows.get(c).add(here.get(c));
            }
        }
        if (poses.isEmpty()) {
            throw new CannotComputeException(design.name() + ": "
                    + Stops.locked(configurations.get(0).tilt(), null).why());
        }
        List<CaseResult> results = new ArrayList<>(cases);
        for (int c = 0; c < cases; c++) {
            results.add(new CaseResult(table.cases().get(c), rows.get(c)));
        }
        return new Analysis(
                design, mechanism, poses, results, table.emptying(), stop, table.notes(), wind, table.vessel());
    }

    private static List<Row> rowsAt(Balancer balancer, Pose pose, LoadTable table, int tilt) {
        List<Row> rows = new ArrayList<>(table.cases().size());
        for (LoadCase load : table.cases()) {
            LoadState state = load.states().get(tilt);
            Vec3 c = state.centroid();
            Balance rest = balancer.balance(state.mass(), c, 0);
            Balance raise = balancer.balance(state.mass(), c, 1);
            Balance lower = balancer.balance(state.mass(), c, -1);
            if (rest != null && raise != null && lower != null) {
                rows.add(new Row(pose, state, pose.place(c), rest, raise, lower));
            }
        }
        return rows;
    }

    static Pose pose(Configuration p, Mechanism mechanism) {
        double swing =
                Math.atan2(p.onB().y() - p.onA().y(), p.onB().x() - p.onA().x());
        List<BodyPosition> bodies = new ArrayList<>(mechanism.bodies().size());
        for (int i = 0; i < mechanism.bodies().size(); i++) {
            bodies.add(new BodyPosition(mechanism.bodies().get(i), p.place(i, Vec2.ZERO), p.turn(i)));
        }
        return new Pose(
                p.tilt(), p.length(), p.arm(), p.transmission(), swing, p.onA(), p.onB(), bodies, mechanism.tank());
    }
}
