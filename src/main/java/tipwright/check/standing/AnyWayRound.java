// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.around.Vehicle;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/**
 * The steepest ground on which the unit stands, whichever way round: what is loose in the tank lies anew on each slope, so the
 * surface of a liquid is level there too. Of each load it looks at some tilts, and at the one that is worst with the contents as they
 * lie on the site's ground. A workspace.
 */
final class AnyWayRound {
    /** From one tilt that is looked at to the next, rad. */
    private static final double EVERY = Math.toRadians(15);
    /** Slope whose moments, beside those on level ground, tell how steep it may be while nothing in the tank shifts, rad. */
    private static final double USUAL = Math.toRadians(10);

    /**
     * By how much what shifts in the tank lowers that slope at most: what has a tangent of more than this times the least that was found,
     * and a little, is not the worst. Source: common practice, no source; held against all of them on random machines.
     */
    private static final double SHIFTS = 2;

    private static final double FAR = 0.05;
    private static final double CLOSE = 1e-8;
    private static final int LIMIT = 100;

    private final Footprint footprint;
    private final double factor;
    private final Blow blow;
    private final About about;
    private final Extreme.Search keeps = Extreme.Search.below(Footprint.STEEPEST);
    private double tips = Footprint.STEEPEST;

    private AnyWayRound(Footprint footprint, double factor, Blow blow, About about) {
        this.footprint = footprint;
        this.factor = factor;
        this.blow = blow;
        this.about = about;
    }

    /** Moments about an edge of masses that lie as gravity has them, by the unit vector against it on hard ground, with wind in N m. */
    interface About {
        Footprint.Moments over(Footprint.Edge edge, Function<Vec3, List<Footprint.Mass>> masses, Vec3 up, double wind);
    }

    /** Moment about the ground of wind that blows straight over an edge, N m. */
    interface Blow {
        double over(Footprint.Edge edge, Pose pose);
    }

    static AnyWayRound of(
            Analysis analysis, Footprint footprint, @Nullable Vehicle vehicle, double factor, Blow blow, About about) {
        AnyWayRound round = new AnyWayRound(footprint, factor, blow, about);
        List<Stand> all = new ArrayList<>(round.stands(analysis, vehicle));
        all.sort((a, b) -> Double.compare(a.limit(), b.limit()));
        for (Stand s : all) {
            round.look(s);
        }
        return round;
    }

    /** Every load at some tilts over every edge, with the contents as they lie on the site's ground. */
    private List<Stand> stands(Analysis analysis, @Nullable Vehicle vehicle) {
        List<Stand> all = new ArrayList<>();
        WholeUnit unit = new WholeUnit(analysis);
        Footprint.Mass stuck = unit.stuck();
        List<CaseResult> cases = unit.loads();
        List<List<WholeUnit.Load>> lying = new ArrayList<>();
        for (CaseResult result : cases) {
            lying.add(result.rows().stream()
                    .map(row -> unit.load(result, row, vehicle))
                    .toList());
        }
        for (Footprint.Edge edge : footprint.edges()) {
            for (int c = 0; c < lying.size(); c++) {
                CaseResult result = cases.get(c);
                for (int i : looked(result.rows(), edge, lying.get(c))) {
                    all.add(stand(
                            edge,
                            result.rows().get(i).pose(),
                            result.name(),
                            lying.get(c).get(i)));
                }
            }
            if (stuck != null) {
                for (Pose pose : analysis.poses()) {
                    all.add(stand(edge, pose, CaseName.STUCK, unit.load(stuck, pose, vehicle)));
                }
            }
        }
        return all;
    }

    /**
     * One load at one tilt over one edge.
     *
     * @param limit tangent of the slope on which the factor is just kept while nothing in the tank shifts
     * @param falls the same on which it just stands
     * @param masses of the unit, by the unit vector against gravity
     */
    private record Stand(
            Footprint.Edge edge,
            Pose pose,
            String name,
            double wind,
            double limit,
            double falls,
            Function<Vec3, List<Footprint.Mass>> masses) {}

    private Stand stand(Footprint.Edge edge, Pose pose, String name, WholeUnit.Load load) {
        double wind = blow.over(edge, pose);
        Function<Vec3, List<Footprint.Mass>> still = up -> load.own();
        Slope level = new Slope(0, about.over(edge, still, Footprint.up(edge, 0), wind));
        Slope usual = new Slope(USUAL, about.over(edge, still, Footprint.up(edge, USUAL), wind));
        return new Stand(edge, pose, name, wind, limit(level, usual, factor), limit(level, usual, 1), load.leaning());
    }

    /** Tangent of the slope that just bears: of masses that lie still what is left over is a straight line over the tangent. */
    private static double limit(Slope level, Slope usual, double factor) {
        double less = level.spare(factor) - usual.spare(factor);
        return less > 0 && Double.isFinite(less) ? Math.tan(USUAL) * level.spare(factor) / less : -1;
    }

    /** Steepest ground on which the factor is kept, rad, and where. */
    Extreme keeps() {
        return keeps.found();
    }

    /** Steepest ground on which it stands at all, rad. */
    double tips() {
        return tips;
    }

    /** Numbers of the rows to look at, the worst one first unless it is one of those at the usual tilts. */
    private List<Integer> looked(List<Row> rows, Footprint.Edge edge, List<WholeUnit.Load> loads) {
        List<Integer> looked = new ArrayList<>();
        int worst = 0;
        double least = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            List<Footprint.Mass> own = loads.get(i).own();
            double wind = blow.over(edge, row.pose());
            double limit = limit(
                    new Slope(0, footprint.about(edge, own, Gravity.G, Footprint.up(edge, 0), wind)),
                    new Slope(USUAL, footprint.about(edge, own, Gravity.G, Footprint.up(edge, USUAL), wind)),
                    factor);
            if (limit < least) {
                least = limit;
                worst = i;
            }
            if (i == rows.size() - 1 || row.tilt() - last > EVERY - CLOSE) {
                looked.add(i);
                last = row.tilt();
            }
        }
        double governs = rows.get(worst).tilt();
        if (looked.stream().noneMatch(i -> rows.get(i).tilt() == governs)) {
            looked.add(0, worst);
        }
        return looked;
    }

    private void look(Stand s) {
        double kept = keeps.found().value();
        if (s.limit() <= SHIFTS * Math.tan(kept) + FAR) {
            Slope there = slope(s, kept);
            if (there.spare(factor) < 0) {
                keeps.offer(steepest(s, factor, slope(s, 0), there), s.pose().tilt(), s.name(), null);
            }
        }
        if (s.falls() <= SHIFTS * Math.tan(tips) + FAR) {
            Slope there = slope(s, tips);
            if (there.spare(1) < 0) {
                tips = steepest(s, 1, slope(s, 0), there);
            }
        }
    }

    /**
     * Moments on ground that slopes straight down over an edge.
     *
     * @param angle rad
     */
    private record Slope(double angle, Footprint.Moments moments) {
        /**
         * What restoring is left over beside overturning times a factor, over the cosine, N m; below 0: it does not bear. Of
         * masses that lie still it is a straight line over the tangent.
         */
        double spare(double factor) {
            return moments.restoring() > 0
                    ? (moments.restoring() - factor * moments.overturning()) / Math.cos(angle)
                    : Double.NEGATIVE_INFINITY;
        }
    }

    private Slope slope(Stand s, double angle) {
        Vec3 up = Footprint.up(s.edge(), angle);
        return new Slope(angle, about.over(s.edge(), s.masses(), up, s.wind()));
    }

    /** The steepest slope that bears, between a level that may and a slope that does not, rad. */
    private double steepest(Stand s, double f, Slope level, Slope bad) {
        Slope low = level;
        Slope high = bad;
        double atLow = low.spare(f);
        double atHigh = high.spare(f);
        if (!(atLow >= 0)) {
            return 0;
        }
        for (int i = 0; high.angle() - low.angle() > CLOSE && i < LIMIT; i++) {
            // Illinois' rule of the false position, not nearer to either side than tells them apart, and halves where
            // that does not help
            double aimed = Math.max(
                    low.angle() + CLOSE / 2, Math.min(high.angle() - CLOSE / 2, between(low, atLow, high, atHigh)));
            boolean halve = i % 4 == 3 || Double.isNaN(aimed);
            Slope next = slope(s, halve ? 0.5 * (low.angle() + high.angle()) : aimed);
            double at = next.spare(f);
            if (at >= 0) {
                low = next;
                atLow = at;
                atHigh *= halve ? 1 : 0.5;
            } else {
                high = next;
                atHigh = at;
                atLow *= halve ? 1 : 0.5;
            }
        }
        double exactly = between(low, low.spare(f), high, high.spare(f));
        return exactly > low.angle() && exactly < high.angle() ? exactly : low.angle();
    }

    /** Where a straight line over the tangents is zero, rad. */
    private static double between(Slope low, double atLow, Slope high, double atHigh) {
        double from = Math.tan(low.angle());
        double to = Math.tan(high.angle());
        return Math.atan((from * atHigh - to * atLow) / (atHigh - atLow));
    }
}
