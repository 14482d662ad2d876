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
import tipwright.load.Leaning;
import tipwright.load.LoadState;

/**
 * The steepest ground on which the unit stands, whichever way round: what is loose in the tank lies anew on each slope, so the
 * surface of a liquid is level there too. Of each load it looks at some tilts, and at the one that is worst with the contents as they
 * lie on the site's ground. A workspace.
 */
final class AnyWayRound {
    /** From one tilt that is looked at to the next, rad. */
    private static final double EVERY = Math.toRadians(15);
    /** Slope at which tilts are compared, rad. */
    private static final double USUAL = Math.toRadians(10);

    /** Of the largest share on the usual slope; what has less than this of it is not looked at on others. */
    private static final double NEAR = 0.8;

    /** The same with the contents as they lie on the site's ground. */
    private static final double FAR = 0.5;

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

    /** Moments about an edge by the unit vector against gravity on hard ground, with wind in N m. */
    interface About {
        Footprint.Moments over(Footprint.Edge edge, List<Footprint.Mass> masses, Vec3 up, double wind);
    }

    /** Moment about the ground of wind that blows straight over an edge, N m. */
    interface Blow {
        double over(Footprint.Edge edge, Pose pose);
    }

    static AnyWayRound of(
            Analysis analysis, Footprint footprint, @Nullable Vehicle vehicle, double factor, Blow blow, About about) {
        AnyWayRound round = new AnyWayRound(footprint, factor, blow, about);
        List<Stand> all = round.stands(analysis, vehicle);
        double worst = all.stream().mapToDouble(Stand::share).max().orElse(0);
        List<Stand> anew = all.stream()
                .filter(s -> !(s.share() < FAR * worst))
                .map(round::anew)
                .sorted((a, b) -> Double.compare(b.share(), a.share()))
                .toList();
        double near = NEAR * anew.get(0).share();
        anew.stream().filter(s -> !(s.share() < near)).forEach(round::look);
        return round;
    }

    /** Every load at some tilts over every edge, with the contents as they lie on the site's ground. */
    private List<Stand> stands(Analysis analysis, @Nullable Vehicle vehicle) {
        List<Stand> all = new ArrayList<>();
        WholeUnit unit = new WholeUnit(analysis);
        Leaning leaning = new Leaning(analysis.design(), analysis.vessel());
        Footprint.Mass stuck = unit.stuck();
        List<List<List<Footprint.Mass>>> lying = new ArrayList<>();
        for (CaseResult result : analysis.cases()) {
            List<List<Footprint.Mass>> byRow = new ArrayList<>();
            for (Row row : result.rows()) {
                byRow.add(masses(unit, row.load(), row.pose(), vehicle));
            }
            lying.add(byRow);
        }
        for (Footprint.Edge edge : footprint.edges()) {
            for (int c = 0; c < lying.size(); c++) {
                CaseResult result = analysis.cases().get(c);
                for (int i : looked(result.rows(), edge, lying.get(c))) {
                    Row row = result.rows().get(i);
                    List<Footprint.Mass> own = lying.get(c).get(i);
                    all.add(stand(
                            edge,
                            row.pose(),
                            result.name(),
                            own,
                            up -> masses(
                                    unit, leaning.at(result.load(), row.load(), row.tilt(), up), row.pose(), vehicle)));
                }
            }
            if (stuck != null) {
                for (Pose pose : analysis.poses()) {
                    List<Footprint.Mass> masses = unit.at(pose, stuck.kg(), stuck.at(), vehicle);
                    all.add(stand(edge, pose, CaseName.STUCK, masses, up -> masses));
                }
            }
        }
        return all;
    }

    /**
     * One load at one tilt over one edge.
     *
     * @param share overturning over restoring on the usual slope
     * @param masses of the unit, by the unit vector against gravity
     */
    private record Stand(
            Footprint.Edge edge,
            Pose pose,
            String name,
            double wind,
            double share,
            Function<Vec3, List<Footprint.Mass>> masses) {}

    private Stand stand(
            Footprint.Edge edge,
            Pose pose,
            String name,
            List<Footprint.Mass> own,
            Function<Vec3, List<Footprint.Mass>> masses) {
        double wind = blow.over(edge, pose);
        return new Stand(edge, pose, name, wind, share(edge, own, wind), masses);
    }

    private double share(Footprint.Edge edge, List<Footprint.Mass> masses, double wind) {
        return about.over(edge, masses, Footprint.up(edge, USUAL), wind).share();
    }

    /** With the contents as they lie on the usual slope. */
    private Stand anew(Stand s) {
        double share = share(s.edge(), s.masses().apply(Footprint.up(s.edge(), USUAL)), s.wind());
        return new Stand(s.edge(), s.pose(), s.name(), s.wind(), share, s.masses());
    }

    private static List<Footprint.Mass> masses(WholeUnit unit, LoadState state, Pose pose, @Nullable Vehicle vehicle) {
        return unit.at(pose, state.mass(), state.centroid(), vehicle);
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
    private List<Integer> looked(List<Row> rows, Footprint.Edge edge, List<List<Footprint.Mass>> masses) {
        List<Integer> looked = new ArrayList<>();
        Vec3 up = Footprint.up(edge, USUAL);
        int worst = 0;
        double most = Double.NEGATIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double share = footprint
                    .about(edge, masses.get(i), Gravity.G, up, blow.over(edge, row.pose()))
                    .share();
            if (share > most) {
                most = share;
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
        Slope kept = slope(s, keeps.found().value());
        Slope stood = tips == kept.angle() ? kept : slope(s, tips);
        boolean fails = kept.spare(factor) < 0;
        boolean overturns = stood.spare(1) < 0;
        if (!fails && !overturns) {
            return;
        }
        Slope level = slope(s, 0);
        if (fails) {
            keeps.offer(steepest(s, factor, level, kept), s.pose().tilt(), s.name(), null);
        }
        if (overturns) {
            tips = steepest(s, 1, level, stood);
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
        return new Slope(angle, about.over(s.edge(), s.masses().apply(up), up, s.wind()));
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
            // Illinois' rule of the false position, a little to the bad side, and halves where that does not help
            double aimed = between(low, atLow, high, atHigh) + CLOSE / 4;
            boolean halve = i % 4 == 3 || !(aimed > low.angle() && aimed < high.angle());
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
