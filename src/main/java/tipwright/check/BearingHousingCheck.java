// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.Comparator;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.design.BallInsert;
import tipwright.design.HousingStrength;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/** Bearing housings by the direction of the load against their base. */
final class BearingHousingCheck implements Check {
    @Override
    public String id() {
        return "bearing-housing";
    }

    @Override
    public String title() {
        return "Bearing housing";
    }

    @Override
    public String rule() {
        return "The radial load on each housing is within the maker's figure for its direction against the base, taken"
                + " between the two nearest angles given. A load that pulls off the base goes into housing and bolts.";
    }

    @Override
    public String formula() {
        return "Fr / (F_housing(angle to base) / factor)";
    }

    @Override
    public String source() {
        return "maker's figures; no generic derating by angle is given in a standard";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return BearingParts.each(
                this, analysis, BallInsert.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing));
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, BallInsert insert) {
        if (insert.housing().isEmpty()) {
            return make.missing(part, "bearing.housing missing: the maker's figures by direction of load");
        }
        Vec2 base = analysis.design().pivot().bearings().get(i).base().unit();
        List<HousingStrength> figures = insert.housing().stream()
                .sorted(Comparator.comparingDouble(HousingStrength::angle))
                .toList();
        double[] at = new double[3];
        Findings.Worst worst = Sweep.rows(analysis, row -> {
            double most = 0;
            for (Balance b : Sweep.balances(row)) {
                Vec2 load = b.bearings().get(i).xy();
                double angle = angle(load, base);
                double share = load.norm() / strength(figures, angle);
                most = Math.max(most, share);
                if (share > at[0]) {
                    at[0] = share;
                    at[1] = load.norm();
                    at[2] = angle;
                }
            }
            return most;
        });
        double factor = analysis.design().factors().bearingHousing();
        String note = String.format(
                java.util.Locale.ROOT, "load %.0f deg off the direction into the base", Math.toDegrees(at[2]));
        return make.compare(part, at[1], strength(figures, at[2]), factor, Kind.FORCE, worst, note);
    }

    /** Angle between a load and the direction into the base, rad. */
    static double angle(Vec2 load, Vec2 base) {
        return load.norm() > 0 ? Math.abs(Math.atan2(base.cross(load), base.dot(load))) : 0;
    }

    /** Strength at an angle, N: linear between the figures, the nearest beyond them. */
    static double strength(List<HousingStrength> sorted, double angle) {
        HousingStrength before = sorted.get(0);
        for (HousingStrength next : sorted) {
            if (angle <= next.angle()) {
                double span = next.angle() - before.angle();
                double share = span > 0 ? (angle - before.angle()) / span : 1;
                return before.load() + Math.max(0, share) * (next.load() - before.load());
            }
            before = next;
        }
        return before.load();
    }
}
