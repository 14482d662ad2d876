// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.joint.BallInsert;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.EquivalentLoad;

/** Static safety of ball inserts. */
public final class BearingStaticCheck implements Check {
    @Override
    public String id() {
        return "bearing-static";
    }

    @Override
    public String title() {
        return "Pillow-block bearing: load";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Pillow-block " + part + ": load";
    }

    @Override
    public String rule() {
        return "The static equivalent load of each ball insert, at rest and moving, keeps the wanted static safety.";
    }

    @Override
    public String formula() {
        return "P0 = max(0.6 Fr + 0.5 Fa, Fr); s0 = C0 / P0";
    }

    @Override
    public String source() {
        return "ISO 76:2006 (P0 and s0)";
    }

    @Override
    public boolean ratesBearing(int bearing, Finding finding) {
        return finding.id().endsWith("bearing-" + (bearing + 1));
    }

    @Override
    public Text says(Finding finding) {
        return Text.of(
                "{} must carry {} and is good for {}",
                Text.words(finding.title().replaceAll("^Pillow-block |: load$", "")),
                Text.amount(finding.needs(), Kind.FORCE),
                Text.amount(finding.has(), Kind.FORCE));
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(
                Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK, Trait.TELLS_RATING);
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
        return "bearing";
    }

    @Override
    public String opener() {
        return "{more} C0 in the pivot bearings, with {actuator}";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return new WorkedFormula(analysis, finding, units).bearing(Findings.number(finding));
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return BearingParts.each(
                this, analysis, BallInsert.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing));
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, BallInsert insert) {
        Double c0 = insert.c0();
        if (c0 == null) {
            return make.missing(part, "bearing.c0 missing");
        }
        return make.atLargest(
                part,
                analysis,
                (row, b) -> equivalent(b.bearings().get(i)),
                load -> usage(load, c0, analysis.design().factors()),
                Text.words("static equivalent load against C0"));
    }

    /** A ball insert under a load in N, in the axes of the pivot. */
    public static Usage usage(Vec3 load, double c0, Factors factors) {
        return usage(equivalent(load), c0, factors);
    }

    private static double equivalent(Vec3 load) {
        return EquivalentLoad.ofRest(load.xy().norm(), Math.abs(load.z()));
    }

    private static Usage usage(double equivalent, double c0, Factors factors) {
        return new Usage(equivalent, c0, factors.bearingStatic(), Kind.FORCE);
    }
}
