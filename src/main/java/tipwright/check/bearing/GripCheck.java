// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.joint.BallInsert;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.InsertGrip;

/** Whether the bearing that locates the tank along the pivot stays on its shaft. */
public final class GripCheck implements Check {
    @Override
    public String id() {
        return "grip";
    }

    @Override
    public String title() {
        return "Bearings: grip on the shaft";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": grip on its shaft";
    }

    @Override
    public String rule() {
        return "The load along the pivot, from a cross slope or from actuators off the middle, is held by the set screws of the ball insert that locates the tank: within the maker's figure, or, where there is none, within a fifth of the dynamic rating on a shaft that is not hardened, screws at full torque.";
    }

    @Override
    public String formula() {
        return "Fa <= axial rating, or 0.2 C";
    }

    @Override
    public String source() {
        return "one maker's pages on ball bearing units (read); a rule of thumb";
    }

    @Override
    public String shortly(Finding finding) {
        return "grip of the bearings";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.ASKED_LATE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.BEARING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a shoulder on the shaft against the bearing, a larger bearing, or its maker's figure");
    }

    @Override
    public String bound(String id) {
        return "grip of a bearing";
    }

    @Override
    public String part(Finding finding) {
        return "grip of bearing " + (Findings.number(finding) + 1);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return BearingParts.each(
                this, analysis, BallInsert.class, (make, part, i, insert) -> one(make, part, analysis, i, insert));
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, BallInsert insert) {
        Extreme most = Extreme.largest(
                analysis.cases(), (row, b) -> Math.abs(b.bearings().get(i).z()));
        Double grip = InsertGrip.of(insert);
        if (grip == null && most.value() > 0) {
            return make.missing(
                    part,
                    Text.of(
                            "bearing.axial or bearing.c missing; up to {} along the shaft",
                            Text.amount(most.value(), Kind.FORCE)));
        }
        return make.compare(
                part,
                most.value(),
                grip == null ? 1 : grip,
                1,
                Kind.FORCE,
                most,
                insert.axial() == null
                        ? "along the shaft, against 20 % of C, since its maker gives no rating that way"
                        : "along the shaft");
    }
}
