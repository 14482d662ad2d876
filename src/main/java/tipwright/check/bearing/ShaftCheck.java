// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.Beam;
import tipwright.strength.PinStress;

/** Pivot shaft or stubs between bearing and tank. */
public final class ShaftCheck implements Check {
    @Override
    public String id() {
        return "shaft";
    }

    @Override
    public String title() {
        return "Pivot shaft: bending and shear";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Pivot shaft " + part + ": bending and shear";
    }

    @Override
    public String rule() {
        return "At each bearing the shaft bears its load over the overhang from the bearing's middle to where the tank grips"
                + " it, in bending and shear together. A shaft that goes through both bearings bends as a beam between bearings"
                + " and grips.";
    }

    @Override
    public String formula() {
        return "M = F overhang; sigma = 32 M / (pi d^3); tau = 4 F / (3 A); sqrt(sigma^2 + 3 tau^2) <= yield / factor";
    }

    @Override
    public String source() {
        return "beam theory and von Mises (Shigley, Mechanical Engineering Design)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.SHAFT);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a thicker or harder shaft or pin, or less overhang and gap");
    }

    @Override
    public String bound(String id) {
        return "pivot shaft";
    }

    @Override
    public String opener() {
        return "{more} strength of the pivot shaft, with {actuator}";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        Shaft shaft = analysis.design().pivot().shaft();
        if (shaft == null || !shaft.carriedAt().isEmpty()) {
            return "";
        }
        int index = Findings.number(finding);
        WorkedFormula worked = new WorkedFormula(analysis, finding, units);
        return worked.balance()
                .map(b -> b.bearings().get(index).xy().norm())
                .map(load -> worked.bar(shaft.diameter(), load * shaft.overhang(), load))
                .orElse("");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        Shaft shaft = analysis.design().pivot().shaft();
        if (shaft == null) {
            return List.of(make.missing("", "pivot.shaft missing"));
        }
        if (!shaft.carriedAt().isEmpty()) {
            return List.of(through(make, analysis, shaft));
        }
        List<Finding> all = new ArrayList<>();
        for (int k = 0; k < analysis.design().pivot().bearings().size(); k++) {
            int i = k;
            all.add(make.atLargest(
                    "at bearing " + (i + 1),
                    analysis,
                    (row, b) -> b.bearings().get(i).xy().norm(),
                    load -> usage(load, shaft, analysis.design().factors()),
                    Text.words("combined stress against yield")));
        }
        return all;
    }

    /** One shaft through both bearings: a beam that the bearings push on and that rests where the tank grips it. */
    private static Finding through(Findings make, Analysis analysis, Shaft shaft) {
        Beam beam = new Beam(shaft.carriedAt().get(0), shaft.carriedAt().get(1));
        double[] bearings = analysis.design().pivot().bearings().stream()
                .mapToDouble(Support::z)
                .toArray();
        return make.worst(
                "through both bearings",
                analysis,
                (row, b) -> usage(
                        b.bearings(), bearings, beam, shaft, analysis.design().factors()),
                Text.words("largest bending with largest shear, against yield"));
    }

    /** A stub that bears a load in N over its overhang. */
    public static Usage usage(double load, Shaft shaft, Factors factors) {
        return usage(load * shaft.overhang(), load, shaft, factors);
    }

    /**
     * A shaft through both bearings.
     *
     * @param loads of the bearings, N [bearing]
     * @param bearings their places along it, m [bearing]; not modified
     * @param beam between the places where the tank grips it
     */
    static Usage usage(List<Vec3> loads, double[] bearings, Beam beam, Shaft shaft, Factors factors) {
        double[] x = loads.stream().mapToDouble(Vec3::x).toArray();
        double[] y = loads.stream().mapToDouble(Vec3::y).toArray();
        double moment = 0;
        double shear = 0;
        for (double at : new double[] {bearings[0], bearings[1], beam.from(), beam.to()}) {
            moment = Math.max(moment, new Vec2(beam.moment(at, bearings, x), beam.moment(at, bearings, y)).norm());
            shear = Math.max(shear, new Vec2(beam.shear(at, bearings, x), beam.shear(at, bearings, y)).norm());
        }
        return usage(moment, shear, shaft, factors);
    }

    private static Usage usage(double moment, double shear, Shaft shaft, Factors factors) {
        return new Usage(
                PinStress.combined(shaft.diameter(), moment, shear), shaft.yield(), factors.shaft(), Kind.PRESSURE);
    }
}
