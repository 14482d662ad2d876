// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sweep;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.HousingStrength;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/** Bearing housings by the direction of the load against their base. */
public final class BearingHousingCheck implements Check {
    private static final double SAME = 1e-6;

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
                + " between the two nearest angles given. A load that pulls off the base goes into housing and bolts. Past the last angle"
                + " given nothing is known.";
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
        List<Finding> all = new ArrayList<>(BearingParts.each(
                this, analysis, BallInsert.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing)));
        Findings make = new Findings(this, analysis.design().limits());
        List<Support> supports = analysis.design().pivot().bearings();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).bearing() instanceof BallInsert insert
                    && !insert.housing().isEmpty()) {
                Finding open = beyond(make, analysis, i, insert);
                if (open != null) {
                    all.add(open);
                }
            }
        }
        return all;
    }

    /** Says so when a load points further off the base than any figure is for; null when none does. */
    private static @Nullable Finding beyond(Findings make, Analysis analysis, int i, BallInsert insert) {
        Vec2 base = analysis.design().pivot().bearings().get(i).base().unit();
        double last = insert.housing().stream()
                .mapToDouble(HousingStrength::angle)
                .max()
                .orElse(Math.PI);
        double[] off = new double[1];
        Findings.Worst worst = Sweep.balances(analysis, b -> {
            Vec2 load = b.bearings().get(i).xy();
            double angle = angle(load, base);
            off[0] = angle > last + SAME ? Math.max(off[0], angle) : off[0];
            return angle > last + SAME ? load.norm() : 0;
        });
        if (!(worst.value() > 0)) {
            return null;
        }
        return make.missing(
                "bearing " + (i + 1) + " beyond the figures",
                String.format(
                        Locale.ROOT,
                        "bearing.housing has no figure past %.0f deg; loads up to %.2f kN point as far as %.0f deg off its"
                                + " base",
                        Math.toDegrees(last),
                        worst.value() / 1000,
                        Math.toDegrees(off[0])));
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
        String note =
                String.format(Locale.ROOT, "load %.0f deg off the direction into the base", Math.toDegrees(at[2]));
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
