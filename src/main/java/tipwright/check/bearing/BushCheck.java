// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Pressure in plain bushes. */
public final class BushCheck implements Check {
    private static final String SPEED = "-speed";
    private static final double SHORT = 1e-4;

    @Override
    public String id() {
        return "bush";
    }

    @Override
    public String title() {
        return "Bushing: pressure";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.endsWith(" speed")
                        ? "Bushing, " + part.substring(0, part.length() - 6) + ": pressure times speed"
                        : "Bushing, " + part + ": pressure";
    }

    @Override
    public String rule() {
        return "The mean pressure in each plain bush is within what its material bears; a tank turns so slowly that pressure"
                + " governs; pressure times speed is looked at where the maker gives a limit for it: the largest pressure times"
                + " the fastest turning of the normal dump and of the others.";
    }

    @Override
    public String formula() {
        return "p = F / (d b); pV = p omega d/2";
    }

    @Override
    public String source() {
        return "projected-area pressure (R. L. Mott, Machine Elements in Mechanical Design, plain bearings); maker's limit";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(
                Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK, Trait.MORE_IN_TIME);
    }

    @Override
    public String part(Finding finding) {
        return "bearing " + (Findings.number(finding) + 1);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("larger bearings{}, or bearings further apart", finding, limits);
    }

    @Override
    public String bound(String id) {
        return "plain bush";
    }

    @Override
    public String opener() {
        return "{more} area of the plain bushes, with {actuator}";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        if (finding.id().endsWith(SPEED)) {
            return "";
        }
        int index = Findings.number(finding);
        if (analysis.design().pivot().bearings().get(index).bearing() instanceof PlainBush bush) {
            return new WorkedFormula(analysis, finding, units).bush(index, bush.bore(), bush.length());
        }
        return "";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return BearingParts.each(
                this, analysis, PlainBush.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing));
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        List<Finding> all = new ArrayList<>(run(analysis));
        Findings make = new Findings(this, analysis.design());
        List<Support> supports = analysis.design().pivot().bearings();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).bearing() instanceof PlainBush bush) {
                Double limit = bush.pressureVelocity();
                if (limit != null) {
                    all.add(sliding(make, "bearing " + (i + 1) + " speed", analysis, timing, i, bush, limit));
                }
            }
        }
        return all;
    }

    private static Finding sliding(
            Findings make, String part, Analysis analysis, Timing timing, int i, PlainBush bush, double limit) {
        if (timing.missing() != null) {
            return make.untimed(part, timing);
        }
        double slide = fastest(timing) * turning(analysis) * bush.bore() / 2;
        Extreme worst = pressure(analysis, i, bush);
        return make.compare(
                part,
                worst.value() * slide,
                limit,
                analysis.design().factors().bush(),
                Kind.PRESSURE_VELOCITY,
                worst,
                "largest pressure times the fastest that the shaft slides in it");
    }

    /** Fastest tilting of all dumps, rad/s. */
    private static double fastest(Timing timing) {
        double most = 0;
        for (Cycle cycle : timing.cycles()) {
            for (int k = 1; k < cycle.moments().size(); k++) {
                Moment before = cycle.moments().get(k - 1);
                Moment now = cycle.moments().get(k);
                double time = now.time() - before.time();
                if (time > SHORT) {
                    most = Math.max(most, Math.abs(now.tilt() - before.tilt()) / time);
                }
            }
        }
        return most;
    }

    /** How much the pivot turns in its bearings for each turn of the tank, at the most. */
    private static double turning(Analysis analysis) {
        JointPlan pivot = analysis.mechanism().joints().get(analysis.mechanism().pivot());
        double most = 0;
        for (int k = 1; k < analysis.poses().size(); k++) {
            Pose before = analysis.poses().get(k - 1);
            Pose now = analysis.poses().get(k);
            double turned = turn(now, pivot) - turn(before, pivot);
            most = Math.max(most, Math.abs(turned / (now.tilt() - before.tilt())));
        }
        return most;
    }

    private static double turn(Pose pose, JointPlan pivot) {
        return pose.bodies().get(pivot.b()).turn()
                - pose.bodies().get(pivot.a()).turn();
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, PlainBush bush) {
        Double allowed = bush.pressure();
        if (allowed == null) {
            return make.missing(part, "bearing.pressure missing");
        }
        return make.atLargest(
                part,
                analysis,
                (row, b) -> b.bearings().get(i).xy().norm(),
                load -> usage(load, bush, allowed, analysis.design().factors()),
                Text.words("mean pressure, load over d b"));
    }

    /** A bush under a load in N; the pressure that it bears in Pa. */
    public static Usage usage(Vec2 load, PlainBush bush, double allowed, Factors factors) {
        return usage(load.norm(), bush, allowed, factors);
    }

    private static Usage usage(double load, PlainBush bush, double allowed, Factors factors) {
        return new Usage(load / (bush.bore() * bush.length()), allowed, factors.bush(), Kind.PRESSURE);
    }

    private static Extreme pressure(Analysis analysis, int i, PlainBush bush) {
        double area = bush.bore() * bush.length();
        return Extreme.largest(
                analysis.cases(), (row, b) -> b.bearings().get(i).xy().norm() / area);
    }
}
