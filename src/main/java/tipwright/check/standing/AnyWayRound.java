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
import tipwright.geometry.Bisection;
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
    private static final double EVERY = Math.toRadians(10);
    /** Slope at which tilts are compared, rad. */
    private static final double USUAL = Math.toRadians(10);

    private static final double CLOSE = 1e-6;

    private final Footprint footprint;
    private final double factor;
    private final Blow blow;
    private final Extreme.Search keeps = Extreme.Search.below(Footprint.STEEPEST);
    private double tips = Footprint.STEEPEST;

    private AnyWayRound(Footprint footprint, double factor, Blow blow) {
        this.footprint = footprint;
        this.factor = factor;
        this.blow = blow;
    }

    /** Moment about the ground of wind that blows straight over an edge, N m. */
    interface Blow {
        double over(Footprint.Edge edge, Pose pose);
    }

    static AnyWayRound of(
            Analysis analysis, Footprint footprint, @Nullable Vehicle vehicle, double factor, Blow blow) {
        AnyWayRound round = new AnyWayRound(footprint, factor, blow);
        WholeUnit unit = new WholeUnit(analysis);
        Leaning leaning = new Leaning(analysis.design());
        for (CaseResult result : analysis.cases()) {
            List<Row> rows = result.rows();
            for (Footprint.Edge edge : footprint.edges()) {
                for (Row row : round.looked(rows, edge, r -> round.masses(unit, r.load(), r.pose(), vehicle))) {
                    round.stand(edge, row.pose(), result.name(), up -> round.masses(
                            unit, leaning.at(result.load(), row.load(), row.tilt(), up), row.pose(), vehicle));
                }
            }
        }
        Footprint.Mass stuck = unit.stuck();
        if (stuck != null) {
            for (Pose pose : analysis.poses()) {
                List<Footprint.Mass> masses = unit.at(pose, stuck.kg(), stuck.at(), vehicle);
                footprint.edges().forEach(edge -> round.stand(edge, pose, WholeUnit.STUCK, up -> masses));
            }
        }
        return round;
    }

    private List<Footprint.Mass> masses(WholeUnit unit, LoadState state, Pose pose, @Nullable Vehicle vehicle) {
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

    private List<Row> looked(List<Row> rows, Footprint.Edge edge, Function<Row, List<Footprint.Mass>> masses) {
        List<Row> looked = new ArrayList<>();
        Row worst = rows.get(0);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double share = footprint
                    .about(edge, masses.apply(row), Gravity.G, Footprint.up(edge, USUAL), blow.over(edge, row.pose()))
                    .share();
            if (share > most) {
                most = share;
                worst = row;
            }
            boolean last = i == rows.size() - 1;
            if (looked.isEmpty() || last || row.tilt() - looked.get(looked.size() - 1).tilt() > EVERY - CLOSE) {
                looked.add(row);
            }
        }
        if (!looked.contains(worst)) {
            looked.add(0, worst);
        }
        return looked;
    }

    private void stand(Footprint.Edge edge, Pose pose, String name, Function<Vec3, List<Footprint.Mass>> masses) {
        double wind = blow.over(edge, pose);
        double kept = keeps.found().value();
        if (!bears(edge, masses, wind, factor, kept)) {
            keeps.offer(steepest(edge, masses, wind, factor, kept), pose.tilt(), name, null);
        }
        if (!bears(edge, masses, wind, 1, tips)) {
            tips = steepest(edge, masses, wind, 1, tips);
        }
    }

    private double steepest(
            Footprint.Edge edge, Function<Vec3, List<Footprint.Mass>> masses, double wind, double f, double bad) {
        if (!bears(edge, masses, wind, f, 0)) {
            return 0;
        }
        String what = "the steepest ground, rad, on which it stands";
        return Bisection.between(0, bad, CLOSE, what, slope -> bears(edge, masses, wind, f, slope))
                .good();
    }

    private boolean bears(
            Footprint.Edge edge, Function<Vec3, List<Footprint.Mass>> masses, double wind, double f, double slope) {
        List<Footprint.Mass> there = masses.apply(Footprint.up(edge, slope));
        return footprint.bears(edge, there, Gravity.G, wind, f, slope);
    }
}
