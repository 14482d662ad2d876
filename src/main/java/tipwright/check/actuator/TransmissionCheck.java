// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Limits;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Angle between the actuator and the arm of its moving pin. */
public final class TransmissionCheck implements Check {
    /** Angles that differ by less are the same: a push along a guide is square at every tilt but for rounding, rad. */
    private static final double ALIKE = 1e-6;

    @Override
    public String id() {
        return "transmission";
    }

    @Override
    public String title() {
        return "Actuator: pushing angle";
    }

    @Override
    public String rule() {
        return "The angle between the actuator's line and the arm about which its moving pin turns does not get small. The closer the actuator points at the pivot, the more force it takes: much force"
                + " moves little.";
    }

    @Override
    public String formula() {
        return "sin(angle) = |dL/dtilt| / |d pin/dtilt|, with a straight drive |dL/dtilt| / arm; below 10 deg fails, below 25 deg is close, unless limits: says otherwise";
    }

    @Override
    public String source() {
        return "limits: common practice, no source; sin(angle) from the cosine rule";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(Fix.ARM);
    }

    @Override
    public String bound(String id) {
        return "pushing angle";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        Pose pose = finding.worst().pose(analysis);
        WorkedFormula worked = new WorkedFormula(analysis, finding, units);
        double speed = Math.abs(pose.arm()) / Math.sin(pose.transmission());
        return "sin(angle) = " + worked.show(Math.abs(pose.arm()), Kind.LENGTH) + " / "
                + worked.show(speed, Kind.LENGTH) + " = " + Quantities.number(Math.sin(pose.transmission()));
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Limits limits = analysis.design().limits();
        Extreme worst = Extreme.smallest(analysis, ALIKE, Pose::transmission);
        double angle = worst.value();
        Verdict verdict = angle < limits.transmissionFail()
                ? Verdict.FAIL
                : angle < limits.transmissionWarn() ? Verdict.CLOSE : Verdict.PASS;
        String note = verdict == Verdict.PASS
                ? "the actuator pushes well across its arm"
                : "the actuator points almost at the pivot; move a mount so that it pushes more across the arm";
        return List.of(new Findings(this, analysis.design())
                .atLeast(
                        "",
                        angle,
                        limits.transmissionFail(),
                        Kind.ANGLE,
                        utilisation(angle, limits),
                        worst,
                        verdict,
                        Text.words(note)));
    }

    /** What an angle in rad makes of the limit: over 1 it is too small. */
    public static double utilisation(double angle, Limits limits) {
        return limits.transmissionFail() / angle;
    }
}
