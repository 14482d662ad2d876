// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.HousingStrength;
import tipwright.design.joint.Support;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Bearing housings by the direction of the load against their base. */
public final class BearingHousingCheck implements Check {
    private static final double SAME = 1e-6;

    /** Difference of cosines up to which the angles themselves are compared. */
    private static final double NEAR = 1e-5;

    /** More than rounding takes off a bound. */
    private static final double ROUNDED_UP = 1 + 1e-12;

    /** Figures further apart than this are not gone between in a straight line, rad; common practice, no source. */
    private static final double WIDE = Math.PI / 2;

    @Override
    public String id() {
        return "bearing-housing";
    }

    @Override
    public String title() {
        return "Bearing housing: breaking";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Housing of " + part + ": breaking";
    }

    @Override
    public String rule() {
        return "The radial load on each housing is within the maker's figure for its direction against the base, taken"
                + " between the two nearest angles given; where these are more than 90 deg apart and the lower of them is not enough,"
                + " this check cannot tell. A load that pulls off the base goes into housing and bolts. Beyond the last angle the maker gives, this check cannot tell.";
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
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public String part(Finding finding) {
        return "housing of " + NameId.words(finding.partId());
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("a stronger housing{}, or its base turned so that the load presses onto it", finding, limits);
    }

    @Override
    public String bound(String id) {
        return "bearing housing";
    }

    @Override
    public String opener() {
        return "{more} strength of the bearing housings, with {actuator}";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        List<Finding> all = new ArrayList<>(BearingParts.each(
                this, analysis, BallInsert.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing)));
        Findings make = new Findings(this, analysis.design());
        List<Support> supports = analysis.design().pivot().bearings();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).bearing() instanceof BallInsert insert
                    && !insert.housing().isEmpty()) {
                Stream.of(beyond(make, analysis, i, insert), between(make, analysis, i, insert))
                        .filter(Objects::nonNull)
                        .forEach(all::add);
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
        if (last + SAME >= Math.PI) {
            return null; // no load points further off
        }
        double cosine = Math.cos(last + SAME);
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> {
            Vec2 load = b.bearings().get(i).xy();
            double most = load.norm();
            double inside = base.dot(load) - most * cosine;
            // an angle takes long, and most loads are far from the limit
            boolean beyond = Math.abs(inside) > NEAR * most ? inside < 0 : angle(load, base) > last + SAME;
            return beyond ? most : 0;
        });
        if (!(worst.value() > 0)) {
            return null;
        }
        double off = Extreme.largest(
                        analysis.cases(), (row, b) -> angle(b.bearings().get(i).xy(), base))
                .value();
        return make.missing(
                "bearing " + (i + 1) + " beyond the figures",
                Text.of(
                        "bearing.housing has no figure past {}; loads up to {} point as far as {} off its base",
                        Text.degrees(last, 0),
                        Text.amount(worst.value(), Kind.FORCE, "kN", 2),
                        Text.degrees(off, 0)));
    }

    /**
     * Says so when a load points between two figures that are too far apart to go straight from one to the other, and is too much for the
     * lower of them; null when none is.
     */
    private static @Nullable Finding between(Findings make, Analysis analysis, int i, BallInsert insert) {
        List<HousingStrength> sorted = sorted(insert);
        Vec2 base = analysis.design().pivot().bearings().get(i).base().unit();
        Factors factors = analysis.design().factors();
        for (int k = 1; k < sorted.size(); k++) {
            HousingStrength from = sorted.get(k - 1);
            HousingStrength to = sorted.get(k);
            if (to.angle() - from.angle() <= WIDE + SAME) {
                continue;
            }
            double lower = Math.min(from.load(), to.load());
            Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> {
                Vec2 load = b.bearings().get(i).xy();
                double angle = angle(load, base);
                boolean inside = angle > from.angle() + SAME && angle < to.angle() - SAME;
                double used = inside ? usage(load.norm(), lower, factors).utilisation() : 0;
                return used > 1 && usage(load, base, sorted, factors).utilisation() <= 1 ? load.norm() : 0;
            });
            if (worst.value() > 0) {
                return make.missing(
                        "bearing " + (i + 1) + " between the figures",
                        Text.of(
                                "bearing.housing has no figure between {} and {}; for the lower of the two a load of {} is too much,"
                                        + " and across the base many housings are weaker than straight off it",
                                Text.degrees(from.angle(), 0),
                                Text.degrees(to.angle(), 0),
                                Text.amount(worst.value(), Kind.FORCE, "kN", 2)));
            }
        }
        return null;
    }

    private static List<HousingStrength> sorted(BallInsert insert) {
        return insert.housing().stream()
                .sorted((a, b) -> Double.compare(a.angle(), b.angle()))
                .toList();
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, BallInsert insert) {
        if (insert.housing().isEmpty()) {
            return make.missing(part, "bearing.housing missing: the maker's figures by direction of load");
        }
        Vec2 base = analysis.design().pivot().bearings().get(i).base().unit();
        List<HousingStrength> figures = sorted(insert);
        Findings.Rule rule = (row, b) ->
                usage(b.bearings().get(i).xy(), base, figures, analysis.design().factors());
        double least = figures.stream().mapToDouble(HousingStrength::load).min().orElse(0);
        Extreme worst = Extreme.largest(
                analysis.cases(),
                (row, b) -> usage(
                                        b.bearings().get(i).xy().norm(),
                                        least,
                                        analysis.design().factors())
                                .utilisation()
                        * ROUNDED_UP,
                (row, b) -> rule.of(row, b).utilisation());
        Balance there = worst.balance(analysis.cases());
        double angle = there == null ? 0 : angle(there.bearings().get(i).xy(), base);
        Text note = Text.of("load {} off the direction into the base", Text.degrees(angle, 0));
        return make.compare(part, Findings.at(analysis, worst, rule), worst, note);
    }

    /**
     * A housing under a load in N.
     *
     * @param base direction into it, unit vector
     * @param sorted figures by angle
     */
    static Usage usage(Vec2 load, Vec2 base, List<HousingStrength> sorted, Factors factors) {
        return usage(load.norm(), strength(sorted, angle(load, base)), factors);
    }

    private static Usage usage(double load, double strength, Factors factors) {
        return new Usage(load, strength, factors.bearingHousing(), Kind.FORCE);
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
